import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../domain/day.ts';
import type { CancelledGamePolicy, Counting } from '../domain/sponsorship/contract-terms.ts';
import type { Happening } from '../domain/sponsorship/happening.ts';
import type { Position } from '../domain/sponsorship/position.ts';
import { readsOfSlot } from '../domain/sponsorship/slot-reads.ts';
import type { Level } from '../domain/season/game.ts';
import { newId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Contract } from '../sponsorship/contract.entity.ts';
import { CoveredGames, coveredBy } from '../sponsorship/covered-games.service.ts';
import type { CommitmentOfTerm, GameOfSeason } from '../sponsorship/covered-games.service.ts';
import { reachesInto } from '../sponsorship/reaches-into.ts';
import { TermLedger } from '../sponsorship/term-ledger.service.ts';
import { MemoIssue } from '../billing/credits/memo-issue.service.ts';
import type { MayHaveCredited } from '../billing/credits/memo-issue.service.ts';

interface SignedByGame extends CommitmentOfTerm {
  termId: string;
  contractId: string;
  policy: CancelledGamePolicy;
  levels: Level[];
  counting: Counting;
}

/** Where the calendar stood before something was changed in it. */
export interface CalendarBefore {
  seasonIds: string[];
  /** these, and those that share a night by a commitment that names teams of both */
  reachIds: string[];
  games: GameOfSeason[];
}

/** What a game, or a night, is counted by, and the games that stand for it. */
type Slots = Map<string, Set<string>>;

/** What one commitment has of the calendar that it had not before, and the other way round. */
interface Change {
  commitment: SignedByGame;
  added: string[];
  /** games or nights that are called off */
  calledOff: string[];
  /** nights whose games are held on another night now */
  moved: string[];
}

const SIGNED = `select commitment.id, commitment.counting, commitment.reads, commitment.starts_on as "startsOn", commitment.ends_on as "endsOn",
    commitment.team_ids as "teamIds", commitment.levels, commitment.blackout_days as "blackoutDays", term.id as "termId", term.season_id as "seasonId", term.starts_on as "termStartsOn",
    term.ends_on as "termEndsOn", contract.id as "contractId", contract.cancelled_game_policy as policy
  from commitment
    join term on term.department_id = commitment.department_id and term.id = commitment.term_id
    join contract on contract.department_id = term.department_id and contract.id = term.contract_id
  where commitment.department_id = $1 and (term.season_id = any($2::uuid[]) or ${reachesInto('commitment.team_ids', '$2')}) and term.state = 'signed'
    and commitment.counting in ('perGame', 'perNight') and commitment.reads > 0 order by term.id, commitment.place`;

/** The seasons of all teams that commitments by the night name beside teams of these seasons: a night may hold games of several. */
const REACH = `select distinct team.season_id as "seasonId" from commitment
    join term on term.department_id = $1 and term.id = commitment.term_id and term.state = 'signed'
    join team on team.department_id = $1 and team.id = any(commitment.team_ids)
  where commitment.department_id = $1 and commitment.counting = 'perNight' and ${reachesInto('commitment.team_ids', '$2')}`;

/**
 * Signed commitments that count by game or by night follow the calendar: a game that is added promises more reads, one
 * that is called off is settled as the contract says, and one that moves takes its reads along.
 */
@Injectable()
export class GamePromises {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(CoveredGames) private readonly covered: CoveredGames,
    @Inject(TermLedger) private readonly ledger: TermLedger,
    @Inject(MemoIssue) private readonly memos: MemoIssue,
  ) {}

  async before(seasonIds: readonly string[]): Promise<CalendarBefore> {
    const named = await this.work.sql<{ seasonId: string }>(REACH, [seasonIds]);
    const reachIds = [...new Set([...seasonIds, ...named.map((row) => row.seasonId)])];
    return { seasonIds: [...seasonIds], reachIds, games: await this.covered.ofSeasons(reachIds) };
  }

  /** Tells every signed term what the calendar changed for it. */
  async settle(before: CalendarBefore, gameId: string | null, occurredOn: Day): Promise<void> {
    const commitments = await this.work.sql<SignedByGame>(SIGNED, [before.seasonIds]);
    if (commitments.length === 0) return;
    const after = await this.covered.ofSeasons(before.reachIds);
    const changes = commitments.map((commitment) => changeOf(commitment, before.games, after)).filter((change) => change !== null);
    const credited: MayHaveCredited[] = [];
    await this.work.lock(Contract, [...new Set(changes.map((change) => change.commitment.contractId))]);
    // Locked all at once, in the order of their ids, before anything is decided by where they stand.
    for (const { termId, position } of await this.ledger.open([...new Set(changes.map((change) => change.commitment.termId))])) {
      if (!position) continue;
      const ofTerm = changes.filter((change) => change.commitment.termId === termId);
      const happenings = [...addedIn(ofTerm), ...calledOffIn(ofTerm, position), ...movedIn(ofTerm, position)];
      if (happenings.length === 0) continue;
      const because = { cause: 'game', causeId: gameId, occurredOn };
      const booked = await this.ledger.happen(termId, happenings.map((happening) => ({ happening, because })));
      credited.push({ contractId: ofTerm[0]!.commitment.contractId, happenings, booked, issuedOn: occurredOn });
    }
    await this.memos.issueAll(credited);
  }
}

function slotsOf(commitment: SignedByGame, games: readonly GameOfSeason[]): Slots {
  const slots: Slots = new Map();
  for (const game of coveredBy(commitment, games)) {
    const key = commitment.counting === 'perGame' ? game.id : (game.nightIds.at(-1) ?? game.id);
    slots.set(key, (slots.get(key) ?? new Set()).add(game.id));
  }
  return slots;
}

function changeOf(commitment: SignedByGame, before: readonly GameOfSeason[], after: readonly GameOfSeason[]): Change | null {
  const had = slotsOf(commitment, before);
  const has = slotsOf(commitment, after);
  const added = [...has.keys()].filter((key) => !had.has(key));
  const gone = [...had.keys()].filter((key) => !has.has(key));
  const heldElsewhere = (key: string): boolean => added.some((other) => [...had.get(key)!].some((game) => has.get(other)!.has(game)));
  const moved = gone.filter(heldElsewhere);
  if (added.length + gone.length === 0) return null;
  return { commitment, added, moved, calledOff: gone.filter((key) => !moved.includes(key)) };
}

function addedIn(changes: readonly Change[]): Happening[] {
  const keys = [...new Set(changes.flatMap((change) => change.added))];
  return keys.map((gameId) => ({
    kind: 'gameAdded',
    gameId,
    lines: changes.filter((change) => change.added.includes(gameId)).map(({ commitment }) => ({ lineId: commitment.id, reads: commitment.reads })),
  }));
}

/** One happening where the whole term loses the game, else one for each line that does. */
function calledOffIn(changes: readonly Change[], position: Position): Happening[] {
  const keys = [...new Set(changes.flatMap((change) => change.calledOff))];
  return keys.flatMap((gameId): Happening[] => {
    const losing = changes.filter((change) => change.calledOff.includes(gameId));
    const owing = position.lines.filter((line) => owedIn(position, line.terms.lineId, gameId) > 0);
    if (owing.length === 0) return [];
    if (owing.every((line) => losing.some((change) => change.commitment.id === line.terms.lineId))) {
      return [{ kind: 'gameCancelled', gameId, memoId: newId() }];
    }
    return losing.flatMap(({ commitment }): Happening[] => {
      const count = owedIn(position, commitment.id, gameId);
      if (count === 0) return [];
      const of = { lineId: commitment.id, gameId, count };
      return [commitment.policy === 'credit' ? { kind: 'readsCredited', ...of, memoId: newId() } : { kind: 'readsReleased', ...of }];
    });
  });
}

/** The new night was added before, so the value of the old night's reads moves on to it. */
function movedIn(changes: readonly Change[], position: Position): Happening[] {
  return changes.flatMap(({ commitment, moved }) =>
    moved.flatMap((gameId): Happening[] => {
      const count = owedIn(position, commitment.id, gameId);
      return count === 0 ? [] : [{ kind: 'readsReleased', lineId: commitment.id, gameId, count }];
    }),
  );
}

function owedIn(position: Position, lineId: string, gameId: string): number {
  const line = position.lines.find((one) => one.terms.lineId === lineId);
  const slot = line?.slots.find((one) => one.gameId === gameId);
  return line && slot ? readsOfSlot(line, slot).owed : 0;
}
