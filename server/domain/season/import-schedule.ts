import type { Day } from '../day.ts';
import type { GameClass, GameStatus } from './game.ts';
import { cellsOf, foldedText } from './import-headings.ts';
import type { Cells } from './import-headings.ts';
import { changesOf, planOf, problem, problemOfRule, refusedStep } from './import-plan.ts';
import type { ImportFile, ImportPlan, ImportStep } from './import-plan.ts';
import { readScheduleRow, SCHEDULE_COLUMNS } from './import-schedule-rows.ts';
import type { ScheduleColumn, ScheduleRow } from './import-schedule-rows.ts';
import { matchGames } from './import-schedule-match.ts';
import type { TeamThere } from './import-teams.ts';
import { whyNotDelete, whyNotMove } from './game.ts';

/** A game that is there already, as a schedule sees it. */
export interface GameThere {
  readonly id: string;
  readonly outsideId: string | null;
  readonly playedOn: Day;
  /** `HH:MM` on the department's wall; null while the time is open */
  readonly clock: string | null;
  /** our team */
  readonly teamId: string;
  /** the other school's name */
  readonly opponentName: string;
  /** null where no night holds it yet, as for most away games */
  readonly venueName: string | null;
  readonly class: GameClass;
  readonly isHome: boolean;
  readonly announced: boolean;
  readonly status: GameStatus;
  readonly hasLog: boolean;
}

export interface ScheduleThere {
  readonly season: { readonly startsOn: Day; readonly endsOn: Day };
  readonly teams: readonly TeamThere[];
  readonly schools: readonly { readonly id: string; readonly name: string; readonly shortName: string }[];
  readonly venues: readonly { readonly id: string; readonly name: string; readonly isOurs: boolean }[];
  /** the games of this season */
  readonly games: readonly GameThere[];
  /** leave games on the schedule that the file does not name */
  readonly keepMissing?: boolean;
}

export interface WantedGame {
  readonly outsideId: string | null;
  readonly playedOn: Day;
  readonly clock: string | null;
  readonly teamId: string;
  /** null: the school is added as an opponent */
  readonly opponentSchoolId: string | null;
  readonly opponentName: string;
  /** null with a name: the venue is added; null without one: no venue yet */
  readonly venueId: string | null;
  readonly venueName: string | null;
  readonly class: GameClass;
  readonly isHome: boolean;
  readonly announced: boolean;
}

/**
 * What a schedule file would do. A row finds its game by outside id, else by team, opponent and nearest
 * day; a game that was played, cancelled or logged is found by its own day only. Games of the file's teams
 * that no row names are dropped, but never one with a log. Empty cells change nothing.
 *
 * @throws Refused heading-missing, heading-twice, file-empty
 */
export function planScheduleImport(file: ImportFile, there: ScheduleThere): ImportPlan<WantedGame> {
  const { rows, ignored } = cellsOf(file, SCHEDULE_COLUMNS);
  const read = withoutDoubles(rows.map((row) => readScheduleRow(row, there)));
  const good = read.flatMap((row) => ('problems' in row ? [] : [row]));
  const match = matchGames(good, there.games);
  const steps = read.map((row) =>
    'problems' in row ? refusedStep<WantedGame>([row.line], row.label, row.problems) : stepFor(row, match.get(row) ?? null, there),
  );
  const teamIds = new Set(good.map((row) => row.team.id));
  const found = new Set([...match.values()].map((game) => game.id));
  const named = namedByRefused(read, rows);
  const missing = there.keepMissing ? [] : there.games.filter((game) => teamIds.has(game.teamId) && !found.has(game.id));
  const drops = missing.filter((game) => !named.has(game.outsideId ?? '')).flatMap(dropOf);
  return planOf([...steps, ...drops], ignored);
}

type ReadRow = ReturnType<typeof readScheduleRow>;

/** A row that could not be read still names its game, which is therefore not dropped. */
function namedByRefused(read: readonly ReadRow[], rows: readonly Cells<ScheduleColumn>[]): Set<string> {
  const ids = read.flatMap((row, place) => ('problems' in row ? [rows[place]!.cell('outsideId')] : []));
  return new Set(ids.filter((id) => id !== ''));
}

function withoutDoubles(read: readonly ReadRow[]): ReadRow[] {
  const ids = new Map<string, number>();
  const games = new Map<string, number>();
  return read.map((row) => {
    if ('problems' in row) return row;
    const game = `${row.team.id} ${foldedText(row.opponentName)} ${row.playedOn} ${row.clock}`;
    const idLine = row.outsideId === null ? undefined : ids.get(row.outsideId);
    const gameLine = games.get(game);
    if (row.outsideId !== null && idLine === undefined) ids.set(row.outsideId, row.line);
    if (gameLine === undefined) games.set(game, row.line);
    if (idLine !== undefined) {
      return { line: row.line, label: row.label, problems: [problem(row.line, 'outsideId', 'import-outside-id-twice', { line: idLine })] };
    }
    if (gameLine !== undefined) {
      return { line: row.line, label: row.label, problems: [problem(row.line, 'day', 'import-game-twice', { line: gameLine })] };
    }
    return row;
  });
}

function stepFor(row: ScheduleRow, game: GameThere | null, there: ScheduleThere): ImportStep<WantedGame> {
  const wanted = wantedOf(row, game, there);
  const notes = notesOf(wanted, game);
  const common = { lines: [row.line], label: row.label, existingId: game?.id ?? null, wanted, problems: [], notes };
  if (!game) return { ...common, action: 'create', changes: [] };
  const moves = changesOf([
    ['day', game.playedOn, wanted.playedOn],
    ['time', game.clock, wanted.clock],
  ]);
  const others = changesOf([
    ['outsideId', game.outsideId, wanted.outsideId],
    ['team', teamName(there, game.teamId), teamName(there, wanted.teamId)],
    ['opponent', foldedText(game.opponentName), foldedText(wanted.opponentName)],
    // An away game lies in no night of ours, so its place has nowhere to stand.
    ['venue', wanted.announced ? foldedText(game.venueName ?? '') : '', wanted.announced ? foldedText(wanted.venueName ?? '') : ''],
    ['class', game.class, wanted.class],
    ['home', String(game.isHome), String(wanted.isHome)],
    ['announced', String(game.announced), String(wanted.announced)],
  ]);
  const refusal = moves.length > 0 ? whyNotMove(game, 'reschedule') : null;
  if (refusal) return refusedStep([row.line], row.label, [problemOfRule(row.line, 'day', refusal)], game.id);
  const action = moves.length > 0 ? 'move' : others.length > 0 ? 'change' : 'same';
  return { ...common, action, changes: [...moves, ...others] };
}

function teamName(there: ScheduleThere, teamId: string): string {
  return there.teams.find((team) => team.id === teamId)?.name ?? teamId;
}

function wantedOf(row: ScheduleRow, game: GameThere | null, there: ScheduleThere): WantedGame {
  const isHome = row.isHome ?? game?.isHome ?? true;
  const clock = row.clock ?? game?.clock ?? null;
  const venueName = row.venue?.name ?? row.venueName ?? game?.venueName ?? null;
  return {
    outsideId: row.outsideId ?? game?.outsideId ?? null,
    playedOn: row.playedOn,
    clock,
    teamId: row.team.id,
    opponentSchoolId: row.opponentSchoolId,
    opponentName: row.opponentName,
    venueId: there.venues.find((venue) => foldedText(venue.name) === foldedText(venueName ?? ''))?.id ?? null,
    venueName,
    class: row.class ?? game?.class ?? 'regular',
    isHome,
    announced: announcedOf(row, game, isHome, clock),
  };
}

/** A game nobody can say the time of is not announced yet; it is as soon as the time is known. */
function announcedOf(row: ScheduleRow, game: GameThere | null, isHome: boolean, clock: string | null): boolean {
  if (clock === null) return game?.announced ?? false;
  if (row.announced !== null) return row.announced;
  if (game && game.clock !== null) return game.announced;
  return isHome;
}

function notesOf(wanted: WantedGame, game: GameThere | null): string[] {
  return [
    ...(wanted.opponentSchoolId === null ? [`${wanted.opponentName} is added as an opponent.`] : []),
    ...(wanted.venueName !== null && wanted.venueId === null && wanted.announced ? [`${wanted.venueName} is added as a venue.`] : []),
    ...(wanted.clock === null ? ['No time yet: the game is not announced until it has one.'] : []),
    ...(game?.status === 'cancelled' ? ['This game was cancelled here and stays cancelled.'] : []),
    ...(game?.status === 'postponed' && game.playedOn === wanted.playedOn ? ['This game is postponed here and waits for a new day.'] : []),
  ];
}

function dropOf(game: GameThere): ImportStep<WantedGame>[] {
  const label = `${game.playedOn} ${game.isHome ? 'vs' : 'at'} ${game.opponentName}`;
  if (game.status === 'cancelled') return [];
  const refusal = whyNotDelete(game);
  if (refusal === 'game-has-log') return [refusedStep([], label, [problemOfRule(0, 'day', refusal)], game.id)];
  if (refusal !== null) return [];
  return [{ action: 'drop', lines: [], label, existingId: game.id, wanted: null, changes: [], problems: [], notes: [] }];
}
