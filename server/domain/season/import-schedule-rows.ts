import type { Day } from '../day.ts';
import type { GameClass } from './game.ts';
import { foldedText, textProblem } from './import-headings.ts';
import type { Cells, Columns } from './import-headings.ts';
import { problem } from './import-plan.ts';
import type { ImportProblem } from './import-plan.ts';
import type { ScheduleThere } from './import-schedule.ts';
import { findTeam } from './import-teams.ts';
import type { TeamThere } from './import-teams.ts';
import { choiceOfCell, clockOfCell, dayOfCell } from './import-values.ts';

export type ScheduleColumn = 'outsideId' | 'day' | 'time' | 'team' | 'level' | 'opponent' | 'venue' | 'class' | 'homeAway' | 'announced';

export const SCHEDULE_COLUMNS: Columns<ScheduleColumn> = {
  headings: {
    outsideId: ['outside id', 'game id', 'event id', 'id', 'external id', 'contest id'],
    day: ['day', 'date', 'game date', 'event date', 'contest date', 'start date'],
    time: ['time', 'start', 'start time', 'game time', 'tip off', 'kickoff', 'begins'],
    team: ['team', 'our team', 'sport', 'team name', 'squad'],
    level: ['level', 'squad level'],
    opponent: ['opponent', 'opponents', 'versus', 'vs', 'against', 'opposing team'],
    venue: ['venue', 'location', 'site', 'facility', 'place', 'gym', 'field'],
    class: ['class', 'game type', 'type', 'event type', 'contest type'],
    homeAway: ['home/away', 'home or away', 'h/a', 'home away', 'home', 'where'],
    announced: ['announced', 'announcer', 'pa'],
  },
  needed: [['day'], ['opponent'], ['team', 'level']],
};

const CLASS_SPELLINGS: Readonly<Record<GameClass, readonly string[]>> = {
  regular: ['regular season', 'non conference', 'nonconference', 'non league', 'game', 'r'],
  conference: ['league', 'conf', 'conference game', 'c'],
  invitational: ['tournament', 'tourney', 'invite', 'classic', 'scrimmage'],
  stateSeries: ['state series', 'playoff', 'playoffs', 'postseason', 'post season', 'regional', 'sectional', 'state'],
};

const PLACE_SPELLINGS: Readonly<Record<'home' | 'away' | 'neutral', readonly string[]>> = {
  home: ['h', 'vs', 'yes', 'y', 'true'],
  away: ['a', '@', 'at', 'road', 'no', 'n', 'false'],
  neutral: ['n site', 'neutral site'],
};

const YES_SPELLINGS: Readonly<Record<'yes' | 'no', readonly string[]>> = { yes: ['y', 'true', '1', 'x'], no: ['n', 'false', '0'] };

/** A row that could be read. Null: the file says nothing about it. */
export interface ScheduleRow {
  readonly line: number;
  readonly label: string;
  readonly outsideId: string | null;
  readonly playedOn: Day;
  readonly clock: string | null;
  readonly team: TeamThere;
  readonly opponentSchoolId: string | null;
  readonly opponentName: string;
  readonly venue: { readonly id: string; readonly name: string } | null;
  readonly venueName: string | null;
  readonly class: GameClass | null;
  readonly isHome: boolean | null;
  readonly announced: boolean | null;
}

export type UnreadRow = { readonly line: number; readonly label: string; readonly problems: readonly ImportProblem[] };

export function readScheduleRow(row: Cells<ScheduleColumn>, there: ScheduleThere): ScheduleRow | UnreadRow {
  const { line } = row;
  const opponent = opponentOf(row.cell('opponent'), there);
  const venue = there.venues.find((other) => foldedText(other.name) === foldedText(row.cell('venue'))) ?? null;
  const label = `${row.cell('day')} ${row.cell('team')} ${opponent.sign === 'away' ? 'at' : 'vs'} ${opponent.name}`.replace(/\s+/g, ' ').trim();
  const found = findTeam(there.teams, line, row.cell('team'), row.cell('level'));
  const playedOn = dayOfCell(row.cell('day'));
  const clock = clockOfCell(row.cell('time'));
  const problems = [
    ...('problems' in found ? found.problems : []),
    ...dayProblems(line, row.cell('day'), playedOn, there),
    ...(clock === 'unreadable' ? [problem(line, 'time', 'import-time-unreadable', { value: row.cell('time') })] : []),
    ...(clock === 'unclear' ? [problem(line, 'time', 'import-time-unclear', { value: row.cell('time') })] : []),
    ...textProblem(line, 'opponent', opponent.name, 120, true),
    ...textProblem(line, 'venue', row.cell('venue'), 120, false),
    ...textProblem(line, 'outsideId', row.cell('outsideId'), 100, false),
    ...choiceProblem(line, 'class', row.cell('class'), CLASS_SPELLINGS),
    ...choiceProblem(line, 'homeAway', row.cell('homeAway'), PLACE_SPELLINGS),
    ...choiceProblem(line, 'announced', row.cell('announced'), YES_SPELLINGS),
  ];
  if (problems.length > 0 || 'problems' in found || playedOn === null || typeof clock === 'string') return { line, label, problems };
  const announced = choiceOfCell(row.cell('announced'), YES_SPELLINGS);
  const place = choiceOfCell(row.cell('homeAway'), PLACE_SPELLINGS) ?? opponent.sign ?? (venue ? (venue.isOurs ? 'home' : 'away') : null);
  return {
    line,
    label,
    outsideId: row.cell('outsideId') || null,
    playedOn,
    clock: clock.clock,
    team: found.team,
    opponentSchoolId: opponent.schoolId,
    opponentName: opponent.name,
    venue,
    venueName: row.cell('venue') || null,
    class: choiceOfCell(row.cell('class'), CLASS_SPELLINGS),
    isHome: place === null ? null : place === 'home',
    announced: announced === null ? null : announced === 'yes',
  };
}

function opponentOf(text: string, there: ScheduleThere): { name: string; schoolId: string | null; sign: 'home' | 'away' | null } {
  const signed = /^(@|at\s|vs?\.?\s|versus\s)\s*(.+)$/i.exec(text);
  const sign = signed ? (/^(?:@|at)/i.test(signed[1]!) ? 'away' : 'home') : null;
  const name = (signed?.[2] ?? text).trim();
  const school = there.schools.find((other) => [other.name, other.shortName].some((known) => foldedText(known) === foldedText(name)));
  return { name: school?.name ?? name, schoolId: school?.id ?? null, sign };
}

function dayProblems(line: number, text: string, day: Day | null, there: ScheduleThere): ImportProblem[] {
  if (text === '') return [problem(line, 'day', 'import-value-missing')];
  if (day === null) return [problem(line, 'day', 'import-day-unreadable', { value: text })];
  const { startsOn, endsOn } = there.season;
  return day < startsOn || day > endsOn ? [problem(line, 'day', 'import-day-outside-season', { day, startsOn, endsOn })] : [];
}

function choiceProblem<Choice extends string>(
  line: number,
  field: string,
  text: string,
  spellings: Readonly<Record<Choice, readonly string[]>>,
): ImportProblem[] {
  if (text === '' || choiceOfCell(text, spellings) !== null) return [];
  return [problem(line, field, 'import-choice-unknown', { value: text, choices: Object.keys(spellings).join(', ') })];
}
