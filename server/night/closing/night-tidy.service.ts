import { Inject, Injectable } from '@nestjs/common';
import { mayUse } from '../../domain/access/rights.ts';
import type { Role } from '../../domain/access/rights.ts';
import { placementCueKey } from '../../domain/packet/night-for-packet.ts';
import { shortfallsOf } from '../../domain/night/shortfall.ts';
import type { CommitmentOwed, ProposedShortfall } from '../../domain/night/shortfall.ts';
import { hasEnded } from '../../domain/night/desk/requests/request-states.ts';
import { tidyOf } from '../../domain/night/tidy.ts';
import type { NightTidy, PlannedRead } from '../../domain/night/tidy.ts';
import { readsOfLine } from '../../domain/sponsorship/slot-reads.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { SignedCommitments } from '../../planning/signed-commitments.service.ts';
import type { SignedCommitment } from '../../planning/signed-commitments.service.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import { Amendments } from './amendment.service.ts';
import type { NightTidyView, SignedOffView } from './closing.dto.ts';
import { sentenceOfEntry } from '../log/log-sentence.ts';
import { NightCounting } from './night-counting.service.ts';
import type { CountedNight } from './night-counting.service.ts';
import { NightLog } from '../log/night-log.service.ts';
import type { LoggedEntry } from '../log/night-log.service.ts';
import { NightRequests } from '../requests/request.service.ts';

type Commitments = ReadonlyMap<string, SignedCommitment>;

/** The page for the morning after: everything of a night that is done, left over or still to be settled. Reads only. */
@Injectable()
export class NightTidying {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(NightLog) private readonly log: NightLog,
    @Inject(NightCounting) private readonly counting: NightCounting,
    @Inject(SignedCommitments) private readonly commitments: SignedCommitments,
    @Inject(TermLedger) private readonly ledger: TermLedger,
    @Inject(Amendments) private readonly amendments: Amendments,
    @Inject(NightRequests) private readonly requests: NightRequests,
  ) {}

  /** @param roles of whoever is signed in; none for the bearer of a link, who sees no contracts */
  async show(nightId: string, roles: readonly Role[]): Promise<NightTidyView> {
    const night = await this.log.night(nightId);
    const entries = await this.log.entries(nightId);
    const counted = await this.counting.count(nightId, entries, night.isSignedOff);
    const rows = await this.placements(nightId);
    const commitments = new Map([...(await this.commitments.byId(rows.map((row) => row.commitmentId))), ...counted.commitments]);
    const planned = rows.map((row) => plannedRead(row, commitments, counted));
    const { games, count, decisions } = counted;
    const tidy = tidyOf({ planned, games, entries: entries.map((entry) => withSentence(entry, entries)), count, decisions, commitments });
    return {
      ...tidy,
      state: night.isSignedOff ? 'signedOff' : 'open',
      signOff: await this.signOff(nightId),
      amendments: await this.amendments.of(nightId),
      requestsOpen: await this.requestsOpen(nightId),
      shortfalls: mayUse(roles, 'see contracts') ? await this.shortfalls(tidy, commitments, counted, night.isSignedOff) : [],
    };
  }

  private async placements(nightId: string): Promise<PlacementRow[]> {
    return this.work.sql<PlacementRow>(
      `select placement.id as "placementId", placement.commitment_id as "commitmentId", placement.game_id as "gameId", placement.window_key as "windowKey", placement.place,
           read_kind.name as "replacementKind"
         from placement left join makegood on makegood.department_id = $1 and makegood.id = placement.makegood_id
           left join read_kind on read_kind.department_id = $1 and read_kind.id = makegood.replacement_read_kind_id
        where placement.department_id = $1 and placement.night_id = $2 order by placement.game_id, placement.window_key, placement.place`,
      [nightId],
    );
  }

  /** Of the public form, of the office and asked at the table. */
  private async requestsOpen(nightId: string): Promise<number> {
    return (await this.requests.of(nightId)).filter(({ state }) => !hasEnded(state)).length;
  }

  private async signOff(nightId: string): Promise<SignedOffView | null> {
    const [row] = await this.work.sql<SignedOffView>(
      `select sign_off.recorded_at as at, coalesce(sign_off.signed_off_by_name, person.name) as "byName", attendance, book_agrees as "bookAgrees", book_words as "bookWords", note
         from sign_off left join person on person.id = sign_off.signed_off_by_person_id where sign_off.department_id = $1 and sign_off.night_id = $2`,
      [nightId],
    );
    return row ?? null;
  }

  private async shortfalls(tidy: NightTidy, commitments: Commitments, counted: CountedNight, isSignedOff: boolean): Promise<ProposedShortfall[]> {
    const ids = new Set([...tidy.leftOver, ...tidy.held].map((line) => line.commitmentId));
    const concerned = [...commitments.values()].filter((one) => ids.has(one.id));
    const positions = await this.ledger.positions([...new Set(concerned.map((one) => one.termId))]);
    const owed = concerned.map((one): [string, CommitmentOwed] => {
      const line = positions.get(one.termId)?.lines.find((it) => it.terms.lineId === one.id);
      const tonight = isSignedOff ? 0 : counted.count.reads.filter((read) => read.commitmentId === one.id && read.outcome === 'counts').length;
      const isOpen = !isSignedOff && one.counting === 'onOccurrence';
      return [one.id, { ...one, stillOwed: !line ? 0 : isOpen ? null : Math.max(0, readsOfLine(line).owed - tonight) }];
    });
    return shortfallsOf(tidy, new Map(owed));
  }
}

interface PlacementRow {
  placementId: string;
  commitmentId: string;
  gameId: string;
  windowKey: string;
  place: number;
  /** the kind of read it is, where it replaces a missed one */
  replacementKind: string | null;
}

function plannedRead({ place, replacementKind, ...row }: PlacementRow, commitments: Commitments, { games }: CountedNight): PlannedRead {
  const { sponsorName, readKindName } = commitments.get(row.commitmentId)!;
  return { ...row, sponsorName, readKindName: replacementKind ?? readKindName, cueKey: placementCueKey(row.gameId, row.windowKey, place), gameLabel: games.find((game) => game.id === row.gameId)?.label ?? '' };
}

function withSentence(entry: LoggedEntry, entries: readonly LoggedEntry[]) {
  return { ...entry, sentence: sentenceOfEntry(entry, entries.find((one) => one.id === entry.takesBackEntryId)?.number ?? null) };
}
