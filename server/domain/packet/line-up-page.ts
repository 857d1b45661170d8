import type { PrintedSegment } from './cue-parts.ts';
import type { Cue, LineUpRow, TeamSheet } from './packet.ts';
import type { Segment } from './segment.ts';

/** One line of a line-up that is read: the number large at the margin, then the words. */
export interface StarterLine {
  readonly number: string | null;
  readonly text: string;
  readonly sayAs: string | null;
  readonly kind: 'spoken' | 'direction';
  /** Whose starter it is where both teams are named in turn. */
  readonly side: 'visitors' | 'home';
}

export interface PrintedTeam {
  readonly side: 'visitors' | 'home';
  readonly schoolName: string;
  readonly shortName: string;
  readonly nickname: string;
  readonly sayAs: string | null;
}

export interface LineUpPage {
  readonly code: string;
  readonly title: string;
  readonly seconds: number;
  readonly whoText: string | null;
  readonly team: PrintedTeam;
  readonly opening: readonly PrintedSegment[];
  /** Said once above the lines instead of after each. */
  readonly afterEach: string | null;
  readonly lines: readonly StarterLine[];
}

const printed = ({ kind, text, sayAs }: Segment): PrintedSegment => ({ kind, text, sayAs });

export function printedTeam(team: TeamSheet): PrintedTeam {
  const { side, schoolName, shortName, nickname, sayAs } = team;
  return { side, schoolName, shortName, nickname, sayAs };
}

/** The direction that stands after most lines, if there is one. */
function repeated(segments: readonly Segment[]): string | null {
  const counts = new Map<string, number>();
  for (const { kind, text } of segments) if (kind === 'direction') counts.set(text, (counts.get(text) ?? 0) + 1);
  const [most] = [...counts].sort((one, other) => other[1] - one[1]);
  return most !== undefined && most[1] > 1 ? most[0] : null;
}

/** The number that is said in a line, or the weight of a wrestler, who wears none. */
function numberIn(text: string): string | null {
  return /\bnumber (\w{1,3})\b/i.exec(text)?.[1] ?? /\bat (\d{2,3}) pounds\b/i.exec(text)?.[1] ?? null;
}

/**
 * A line-up as it is read, with the direction that would stand after each starter said once.
 *
 * @param other the other team of the game, whose starters may be named in turn with this one's
 */
export function lineUpPage(cue: Cue, other: TeamSheet | null): LineUpPage {
  const team = cue.lineUp!;
  const [opening, rest] = [cue.segments.slice(0, cue.lineUpStartsAt), cue.segments.slice(cue.lineUpStartsAt)];
  const afterEach = repeated(rest);
  const sideOf = (text: string): 'visitors' | 'home' => (other !== null && text.startsWith(`For the ${other.nickname}, `) ? other.side : team.side);
  return {
    code: cue.code, title: cue.title, seconds: cue.seconds, whoText: cue.whoText, team: printedTeam(team),
    opening: opening.map(printed),
    afterEach,
    lines: rest
      .filter(({ kind, text }) => kind === 'spoken' || text !== afterEach)
      .map(({ kind, text, sayAs }) => ({ kind, text, sayAs, number: kind === 'spoken' ? numberIn(text) : null, side: sideOf(text) })),
  };
}

type PrintedRow = Omit<LineUpRow, 'playerId'>;

export interface RosterPart {
  readonly team: PrintedTeam;
  readonly headCoach: string | null;
  readonly headCoachSayAs: string | null;
  /** Left and right column, of about the same height. */
  readonly columns: readonly (readonly PrintedRow[])[];
  /** Set a little smaller, so that forty players and more stand on a page. */
  readonly isTight: boolean;
  /** So tall that nothing else stands on its page. */
  readonly isLong: boolean;
  readonly part: number;
  readonly parts: number;
}

/** Points of height of a column of names, below the head of the team, on either paper. */
const COLUMN_POINTS = 545;
const ROOMY_POINTS = 380;
const LETTERS_IN_NAME = 26;

/** About how tall a player's line is in small print, in points. */
function pointsOf({ name, sayAs, instead }: PrintedRow): number {
  const lines = (text: string | null): number => Math.ceil((text?.length ?? 0) / LETTERS_IN_NAME);
  return Math.max(24, (lines(name ?? instead) + lines(sayAs)) * 13.5 + 7);
}

const heightOf = (rows: readonly PrintedRow[]): number => rows.reduce((sum, row) => sum + pointsOf(row), 0);

/** As many rows from the front as fit a height; one at least. */
function taken(rows: readonly PrintedRow[], points: number): number {
  let [count, height] = [0, 0];
  while (count < rows.length && (count === 0 || height + pointsOf(rows[count]!) <= points)) {
    height += pointsOf(rows[count]!);
    count += 1;
  }
  return count;
}

/** The roster card of a team, sorted by number, on as many pages as it needs. */
export function rosterOf(team: TeamSheet): RosterPart[] {
  let rest: readonly PrintedRow[] = team.rows.map(({ playerId: _, ...row }) => row);
  const pages: (readonly PrintedRow[])[][] = [];
  do {
    // Half of what is left, so that both columns end at the same height, but no more than a page holds.
    const most = Math.min(COLUMN_POINTS, Math.max(heightOf(rest) / 2 + 12, 60));
    const left = rest.slice(0, taken(rest, most));
    const after = rest.slice(left.length);
    const right = after.slice(0, taken(after, Math.max(most, heightOf(left))));
    rest = after.slice(right.length);
    pages.push([left, right]);
  } while (rest.length > 0);
  return pages.map((columns, place) => {
    const height = Math.max(...columns.map(heightOf));
    return {
      team: printedTeam(team), headCoach: team.headCoach, headCoachSayAs: team.headCoachSayAs,
      columns, isTight: height > ROOMY_POINTS, isLong: height > ROOMY_POINTS / 1.7, part: place + 1, parts: pages.length,
    };
  });
}
