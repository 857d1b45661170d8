import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { Decisions } from '../../domain/night/count-outcome.ts';
import { happeningKey } from '../../domain/night/happening-key.ts';
import type { LogEntry } from '../../domain/night/log-entry.ts';
import { WITHOUT_HAPPENING } from '../../domain/night/mentions-to-count.ts';
import type { OccurrenceTerms } from '../../domain/night/occurrences.ts';
import { countNight } from '../../domain/night/reads-to-count.ts';
import type { NightCount } from '../../domain/night/reads-to-count.ts';
import { settledOf } from '../../domain/night/settle.ts';
import type { CountedClaim } from '../../domain/night/sign-off.ts';
import { covers } from '../../domain/sponsorship/covered-games.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { PlannedGames } from '../../planning/planned-games.service.ts';
import type { PlannedGame } from '../../planning/planned-games.service.ts';
import { SignedCommitments } from '../../planning/signed-commitments.service.ts';
import type { SignedCommitment } from '../../planning/signed-commitments.service.ts';
import { Settlements } from './settlement.service.ts';

export interface HeldClaim extends CountedClaim {
  id: string;
  eventId: string;
}

/** A placement of this kind counts for reads that were missed, not as one of the commitment's own. */
export interface MakegoodOfPlacement {
  placementId: string;
  makegoodId: string;
  commitmentId: string;
}

/** What a night comes to, with what it was counted from. */
export interface CountedNight {
  games: PlannedGame[];
  commitments: Map<string, SignedCommitment>;
  claims: HeldClaim[];
  count: NightCount;
  /** the makegood a placement was planned for, by the placement's id */
  makegoods: Map<string, MakegoodOfPlacement>;
  /** what persons said of single entries */
  decisions: Decisions;
}

/** Counts a night's log: the domain says what counts, this says over which games and for whom. */
@Injectable()
export class NightCounting {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(PlannedGames) private readonly games: PlannedGames,
    @Inject(SignedCommitments) private readonly commitments: SignedCommitments,
    @Inject(Settlements) private readonly settlements: Settlements,
  ) {}

  /**
   * What the log comes to by all that persons have settled so far.
   *
   * @param newIds entries that came after sign-off; what was counted before stays decided
   */
  async count(nightId: string, entries: readonly LogEntry[], isSignedOff: boolean, newIds: ReadonlySet<string> = new Set()): Promise<CountedNight> {
    const games = await this.games.ofNight(nightId);
    const onOccurrence = await this.occurring(games);
    const named = [...new Set(entries.flatMap((entry) => entry.commitmentId ?? []))];
    const commitments = await this.commitments.byId([...named, ...onOccurrence.map((one) => one.id)]);
    const claims = await this.claims(nightId);
    const countable = entries.map((entry) => withNamedHappening(entry, commitments));
    const { settings } = await this.departments.here();
    const { settled, decisions } = settledOf(await this.settlements.of(nightId));
    const decided = decidedOf(countable, decisions, claims, isSignedOff, newIds, settings.cutShortCounts);
    const count = countNight(countable, {
      decisions: decided,
      settled,
      occurrenceTerms: [...commitments.values()].filter((one) => one.counting === 'onOccurrence').map((one) => occurrenceTerms(one, games)),
      ourTeamIds: games.flatMap((game) => game.ourTeamIds),
    });
    return { games, commitments, claims, count, decisions, makegoods: await this.makegoods(nightId) };
  }

  private async occurring(games: readonly PlannedGame[]): Promise<SignedCommitment[]> {
    const days = games.map((game) => game.movedFromOn ?? game.playedOn).sort();
    if (days.length === 0) return [];
    const found = await this.commitments.onOccurrence(days[0]!, days.at(-1)!);
    return found.filter((one) => games.some((game) => covers(one, game)));
  }

  private async makegoods(nightId: string): Promise<Map<string, MakegoodOfPlacement>> {
    const rows = await this.work.sql<MakegoodOfPlacement>(
      `select placement.id as "placementId", makegood.id as "makegoodId", makegood.commitment_id as "commitmentId"
         from placement join makegood on makegood.department_id = $1 and makegood.id = placement.makegood_id
        where placement.department_id = $1 and placement.night_id = $2`,
      [nightId],
    );
    return new Map(rows.map((row) => [row.placementId, row]));
  }

  private async claims(nightId: string): Promise<HeldClaim[]> {
    return this.work.sql<HeldClaim>(
      `select id, game_id as "gameId", cue_key as "cueKey", occurrence, commitment_id as "commitmentId", entry_id as "entryId", event_id as "eventId"
         from counted_read where department_id = $1 and night_id = $2`,
      [nightId],
    );
  }
}

function occurrenceTerms(one: SignedCommitment, games: readonly PlannedGame[]): OccurrenceTerms {
  return {
    commitmentId: one.id,
    happening: happeningKey(one.occurrence ?? 'bankShot'),
    whose: one.whose,
    severalCountAsOne: one.severalCountAsOne,
    gameIds: games.filter((game) => covers(one, game)).map((game) => game.id),
  };
}

function withNamedHappening(entry: LogEntry, commitments: ReadonlyMap<string, SignedCommitment>): LogEntry {
  const name = entry.detail?.['happening'];
  if (entry.kind === 'happening' && typeof name === 'string') return { ...entry, detail: { ...entry.detail, happening: happeningKey(name) } };
  // What a closed term was owed is settled; its entries stay in the log and count nothing.
  const isClosed = entry.commitmentId !== null && commitments.get(entry.commitmentId)?.termState === 'closed';
  return isClosed ? { ...entry, commitmentId: null } : entry;
}

/** A person's word first; then what was counted at sign-off; then what the department chose for reads that were cut short. */
function decidedOf(
  entries: readonly LogEntry[],
  decisions: Decisions,
  claims: readonly CountedClaim[],
  isSignedOff: boolean,
  newIds: ReadonlySet<string>,
  cutShortCounts: boolean,
): Decisions {
  const claimOf = new Map(claims.map((claim) => [claim.entryId, claim]));
  const decided = new Map<string, 'counts' | 'doesNotCount'>();
  for (const entry of entries) {
    const said = decisions.get(entry.id);
    if (said !== undefined) decided.set(entry.id, said);
    else if (wasDecided(entry, claimOf.get(entry.id))) decided.set(entry.id, 'counts');
    else if (entry.outcome === 'cutShort' && cutShortCounts && (!isSignedOff || newIds.has(entry.id))) decided.set(entry.id, 'counts');
  }
  return decided;
}

/** A mention that answered a happening stands and falls with it; only a person counts one without. */
function wasDecided(entry: LogEntry, claim: CountedClaim | undefined): boolean {
  if (!claim) return false;
  return entry.kind === 'read' || entry.outcome === 'cutShort' || claim.occurrence >= WITHOUT_HAPPENING;
}
