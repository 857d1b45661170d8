import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { missedReadsOf, openShortfall } from '../../domain/makegoods/missed-reads.ts';
import type { MissedAndClaimed, MissedClaim } from '../../domain/makegoods/missed-reads.ts';
import { carriedValueOf, creditedValueOf, repairOptionsOf } from '../../domain/makegoods/repair-options.ts';
import type { RepairOption } from '../../domain/makegoods/repair-options.ts';
import { shortfallOfLine } from '../../domain/makegoods/shortfall-of-line.ts';
import { windowHeading } from '../../domain/planning/words/window.ts';
import type { LinePosition, Position } from '../../domain/sponsorship/position.ts';
import { readsOfLine } from '../../domain/sponsorship/slot-reads.ts';
import { PlannedGames } from '../../planning/planned-games.service.ts';
import type { PlannedGame } from '../../planning/planned-games.service.ts';
import { SignedCommitments } from '../../planning/signed-commitments.service.ts';
import type { SignedCommitment } from '../../planning/signed-commitments.service.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import { slotIdOf, unloggedOf, unmentionedOf, unreadOf } from './missed-rows.ts';
import { freePlacesOf, gamesLeft, isNotOver, placedLeft, roomLeft } from './room-left.ts';
import type { GameLeft } from './room-left.ts';
import type { LineShortfall, MissedReadView } from './shortfall.dto.ts';
import { ShortfallRows } from './shortfall-rows.service.ts';
import type { ClaimRow, KindRow, LoggedRow, MentionsRow, NightAndGame, TermRow, UnreadRow } from './shortfall-rows.service.ts';

/** Everything that shortfalls of some contracts are worked out from. */
interface Gathered {
  terms: TermRow[];
  positions: ReadonlyMap<string, Position>;
  commitments: ReadonlyMap<string, SignedCommitment>;
  games: ReadonlyMap<string, PlannedGame[]>;
  left: ReadonlyMap<string, GameLeft[]>;
  kinds: KindRow[];
  logged: LoggedRow[];
  unread: UnreadRow[];
  mentions: MentionsRow[];
  happened: ReadonlyMap<string, NightAndGame>;
  claims: ClaimRow[];
}

/** A line with all that concerns it. */
interface LineToJudge {
  row: TermRow;
  position: Position;
  line: LinePosition;
  commitment: SignedCommitment;
  games: readonly PlannedGame[];
  left: readonly GameLeft[];
}

/** What of signed contracts can no longer be given as promised, night by night, and how it could be settled. Reads only. */
@Injectable()
export class Shortfalls {
  constructor(
    @Inject(ShortfallRows) private readonly rows: ShortfallRows,
    @Inject(PlannedGames) private readonly games: PlannedGames,
    @Inject(SignedCommitments) private readonly commitments: SignedCommitments,
    @Inject(TermLedger) private readonly ledger: TermLedger,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /**
   * Lines of reads of signed contracts, by contract; a handful of statements however many there are. Drafts and what is unknown are left out.
   *
   * @param known the positions by term, where the caller has folded them already
   */
  async ofContracts(contractIds: readonly string[], known?: ReadonlyMap<string, Position>): Promise<Map<string, LineShortfall[]>> {
    const gathered = await this.gather(contractIds, known);
    return new Map(gathered.terms.map((row) => [row.contractId, linesOf(row, gathered).map((line) => shortfallOf(line, gathered))]));
  }

  async ofContract(contractId: string): Promise<LineShortfall[]> {
    return (await this.ofContracts([contractId])).get(contractId) ?? [];
  }

  /** The remedies for so many reads of one commitment, whether or not they are short yet. */
  async optionsFor(contractId: string, commitmentId: string, reads: number): Promise<RepairOption[]> {
    const gathered = await this.gather([contractId]);
    const line = gathered.terms.flatMap((row) => linesOf(row, gathered)).find((one) => one.commitment.id === commitmentId);
    return line ? optionsOf(line, gathered, reads, 0) : [];
  }

  private async gather(contractIds: readonly string[], known?: ReadonlyMap<string, Position>): Promise<Gathered> {
    const terms = await this.rows.terms(contractIds);
    const ids = terms.flatMap((term) => term.commitmentIds);
    const positions = known ?? (await this.ledger.positions(terms.map((term) => term.termId)));
    const commitments = await this.commitments.byId(ids);
    const reach = await this.games.ofReach(terms.map((term) => term.seasonId), [...commitments.values()].flatMap((one) => one.teamIds));
    const games = new Map([...new Set(reach.map((game) => game.seasonId))].map((seasonId) => [seasonId, reach.filter((game) => game.seasonId === seasonId)]));
    const there = await this.rows.there([...games.values()].flat().filter(isNotOver).map((game) => game.id));
    const { settings } = await this.departments.here();
    const today = await this.departments.today();
    const left = new Map([...games].map(([seasonId, all]) => [seasonId, gamesLeft(all, there, today, settings)]));
    const byShots = ids.filter((id) => commitments.get(id)?.counting === 'onOccurrence');
    const fell = terms.flatMap(({ termId }) => Object.keys(positions.get(termId)?.occurrences ?? {}).map((id) => id.split('/')[0]!));
    return {
      terms, positions, commitments, games, left,
      kinds: await this.rows.kinds(),
      logged: await this.rows.logged(ids),
      unread: await this.rows.unread(ids),
      mentions: await this.rows.mentions(byShots),
      happened: await this.rows.happened([...new Set(fell)]),
      claims: await this.rows.claims(ids),
    };
  }
}

function linesOf(row: TermRow, { positions, commitments, games, left }: Gathered): LineToJudge[] {
  const position = positions.get(row.termId);
  return row.commitmentIds.flatMap((id) => {
    const line = position?.lines.find((one) => one.terms.lineId === id);
    const commitment = commitments.get(id);
    if (!position || !line || !commitment) return [];
    return [{ row, position, line, commitment, games: inReach(games, commitment), left: inReach(left, commitment) }];
  });
}

function shortfallOf(judged: LineToJudge, gathered: Gathered): LineShortfall {
  const { row, position, line, commitment, games, left } = judged;
  const slots = shortfallOfLine(line, roomLeft(commitment, left, gathered.logged));
  const claims = gathered.claims.filter((claim) => claim.commitmentId === commitment.id).map((claim): MissedClaim => ({ ...claim, slotId: slotIdOf(line, claim.slotId ?? claim.gameId, claim.nightId) }));
  const logged = commitment.counting === 'onOccurrence'
    ? unmentionedOf(line, position, gathered.happened, gathered.mentions.filter((mention) => mention.commitmentId === commitment.id))
    : unreadOf(line, gathered.unread.filter((unread) => unread.commitmentId === commitment.id));
  const missed = missedReadsOf({ slots, logged, claims, unlogged: unloggedOf(line, commitment, games, row.endsOn) });
  const open = openShortfall(slots, claims);
  const sum = (pick: (slot: (typeof slots)[number]) => number): number => slots.reduce((all, slot) => all + pick(slot), 0);
  return {
    contractId: row.contractId, termId: row.termId, commitmentId: commitment.id,
    readKindId: commitment.readKindId, readKindName: commitment.readKindName, counting: commitment.counting,
    owed: sum((slot) => slot.owed), awaiting: sum((slot) => slot.awaiting), shortfall: sum((slot) => slot.shortfall),
    proposed: claims.filter((claim) => claim.isPending).length,
    open,
    stillOwed: missed.filter((read) => read.isOpen).length,
    missed: viewsOf(missed, games),
    options: optionsOf(judged, gathered, open, sum((slot) => slot.shortfall)),
  };
}

/** @param short reads that no game is left for, which take none of the free places as they were promised */
function optionsOf({ row, position, line, commitment, left }: LineToJudge, { kinds }: Gathered, reads: number, short: number): RepairOption[] {
  if (reads <= 0 || line.terms.kind !== 'reads') return [];
  const toGive = (kind: KindRow) => ({ readKindId: kind.readKindId, readKindName: kind.readKindName, priceCents: kind.prices[row.seasonId] ?? null, freePlaces: freePlacesOf(kind, commitment, left) });
  const own = kinds.find((kind) => kind.readKindId === commitment.readKindId);
  const stillToPlace = Math.max(0, readsOfLine(line).owed - short - placedLeft(commitment.id, left).own);
  return repairOptionsOf({
    missed: reads,
    priceCents: line.terms.rateCents,
    kind: own ? { ...toGive(own), freePlaces: Math.max(0, freePlacesOf(own, commitment, left) - stillToPlace) } : null,
    others: kinds.filter((kind) => kind.readKindId !== commitment.readKindId).map(toGive),
    creditCents: creditedValueOf(position, commitment.id, reads),
    carriedCents: carriedValueOf(position, commitment.id, reads),
    isInKind: row.isInKind,
  });
}

/** By season; a commitment that names teams counts over theirs, whatever their season. */
function inReach<Game>(bySeason: ReadonlyMap<string, Game[]>, { teamIds, seasonId }: SignedCommitment): Game[] {
  return teamIds.length > 0 ? [...bySeason.values()].flat() : (bySeason.get(seasonId) ?? []);
}

function viewsOf(missed: readonly MissedAndClaimed[], games: readonly PlannedGame[]): MissedReadView[] {
  const labels = new Map(games.map((game) => [game.id, game.label]));
  const times = new Map<string, number>();
  return missed.map((read): MissedReadView => {
    const name = read.placementId ?? [read.slotId, read.nightId, read.gameId, read.because].filter(Boolean).join('/');
    const time = (times.get(name) ?? 0) + 1;
    times.set(name, time);
    return {
      ...read,
      key: read.placementId ?? `${name}#${time}`,
      gameLabel: read.gameId === null ? null : (labels.get(read.gameId) ?? null),
      windowName: read.windowKey === null ? null : windowHeading(read.windowKey),
    };
  });
}
