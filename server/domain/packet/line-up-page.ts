import type { PrintedSegment } from './cue-parts.ts';
import type { Cue, LineUpRow, TeamSheet } from './packet.ts';
import type { Segment } from './segment.ts';

/** One line of a line-up that is read: the number large at the margin, then the words. */
export interface StarterLine {
  readonly number: string | null;
  readonly text: string;
  readonly sayAs: string | null;
  readonly kind: 'spoken' | 'direction';
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

/** A line-up as it is read, with the direction that would stand after each starter said once. */
export function lineUpPage(cue: Cue): LineUpPage {
  const team = cue.lineUp!;
  const [opening, rest] = [cue.segments.slice(0, cue.lineUpStartsAt), cue.segments.slice(cue.lineUpStartsAt)];
  const afterEach = repeated(rest);
  const numbers = new Set(team.rows.map((row) => row.number));
  const numberIn = (text: string): string | null => {
    const found = /number (\w{1,3})\b/i.exec(text)?.[1] ?? null;
    return found !== null && numbers.has(found) ? found : null;
  };
  return {
    code: cue.code, title: cue.title, seconds: cue.seconds, whoText: cue.whoText, team: printedTeam(team),
    opening: opening.map(printed),
    afterEach,
    lines: rest
      .filter(({ kind, text }) => kind === 'spoken' || text !== afterEach)
      .map(({ kind, text, sayAs }) => ({ kind, text, sayAs, number: numberIn(text) })),
  };
}

export interface RosterPart {
  readonly team: PrintedTeam;
  readonly headCoach: string | null;
  readonly headCoachSayAs: string | null;
  readonly rows: readonly Omit<LineUpRow, 'playerId'>[];
  readonly part: number;
  readonly parts: number;
}

const ROWS_ON_PAGE = 40;

/** The roster card of a team, sorted by number, forty players a page. */
export function rosterOf(team: TeamSheet): RosterPart[] {
  const rows = team.rows.map(({ playerId: _, ...row }) => row);
  const parts = Math.max(1, Math.ceil(rows.length / ROWS_ON_PAGE));
  return Array.from({ length: parts }, (_, place) => ({
    team: printedTeam(team), headCoach: team.headCoach, headCoachSayAs: team.headCoachSayAs,
    rows: rows.slice(place * ROWS_ON_PAGE, (place + 1) * ROWS_ON_PAGE), part: place + 1, parts,
  }));
}
