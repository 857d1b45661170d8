import { cellsOf, foldedText, textProblem } from './import-headings.ts';
import type { Cells, Columns } from './import-headings.ts';
import { changesOf, planOf, problem, refusedStep } from './import-plan.ts';
import type { ImportFile, ImportPlan, ImportProblem, ImportStep } from './import-plan.ts';
import { findTeam } from './import-teams.ts';
import type { TeamThere } from './import-teams.ts';
import { choiceOfCell } from './import-values.ts';
import { numberWarnings } from './legal-numbers.ts';
import type { NumberRule } from './legal-numbers.ts';
import { playersCalled, playersInWords } from './players-called.ts';
import { stricterChoice } from './player-name.ts';
import type { AnnounceChoice } from './player-name.ts';

type Column = 'team' | 'level' | 'number' | 'name' | 'firstName' | 'lastName' | 'sayAs' | 'grade' | 'position' | 'announce';

const ROSTER_COLUMNS: Columns<Column> = {
  headings: {
    team: ['team', 'team name', 'squad'],
    level: ['level', 'squad level'],
    number: ['number', 'no', 'no.', '#', 'jersey', 'jersey number', 'jersey #', 'jersey no', 'uniform', 'uniform number', 'uniform #', 'player number', 'num'],
    name: ['name', 'player', 'player name', 'athlete', 'full name', 'student'],
    firstName: ['first name', 'first', 'given name'],
    lastName: ['last name', 'last', 'surname', 'family name'],
    sayAs: ['say as', 'pronunciation', 'pronounced', 'phonetic', 'how to say it'],
    grade: ['grade', 'year', 'class', 'gr', 'class year'],
    position: ['position', 'pos'],
    announce: ['announce', 'announce as', 'may be announced', 'announcement'],
  },
  needed: [['number'], ['name', 'lastName']],
};

const ANNOUNCE_SPELLINGS: Readonly<Record<AnnounceChoice, readonly string[]>> = {
  name: ['yes', 'y', 'true', 'full name', 'by name'],
  numberOnly: ['number', 'number only', 'no name'],
  aMember: ['member', 'a member', 'a member of the team'],
  silence: ['no', 'n', 'false', 'silent', 'none', 'do not announce', 'opt out', 'opted out'],
};

/** A player on a team's list, with the person behind it. */
export interface RosterEntryThere {
  readonly id: string;
  readonly teamId: string;
  readonly playerId: string;
  readonly number: string;
  readonly position: string | null;
  readonly grade: string | null;
  readonly name: string;
  readonly sayAs: string | null;
  readonly announce: AnnounceChoice;
}

/** A student known from another team or year; the respelling and the family's choice are kept. */
export interface PlayerThere {
  readonly id: string;
  readonly schoolId: string;
  readonly name: string;
  readonly sayAs: string | null;
  readonly announce: AnnounceChoice;
  /** number, team and season of the list that the player stood on last; null for none */
  readonly lastSeen?: string | null;
}

export interface RostersThere {
  readonly teams: readonly TeamThere[];
  readonly entries: readonly RosterEntryThere[];
  readonly players: readonly PlayerThere[];
  readonly numberRule: NumberRule;
  /** the team a file without a team column is for */
  readonly onlyTeamId?: string | null;
  /** leave players on the list whom the file does not name */
  readonly keepMissing?: boolean;
}

export interface WantedRosterEntry {
  readonly teamId: string;
  readonly schoolId: string;
  /** the player to put on the list; null to create one */
  readonly playerId: string | null;
  readonly number: string;
  readonly name: string;
  readonly sayAs: string | null;
  readonly grade: string | null;
  readonly position: string | null;
  readonly announce: AnnounceChoice;
}

/**
 * What a roster file would do. A player is found by team and name; a name never moves to another player
 * because a number did, so that no family's choice lands on somebody else. Empty cells change nothing, and
 * a file can make the family's choice stricter but never looser.
 *
 * @throws Refused heading-missing, heading-twice, file-empty
 */
export function planRosterImport(file: ImportFile, there: RostersThere): ImportPlan<WantedRosterEntry> {
  const { rows, ignored } = cellsOf(file, ROSTER_COLUMNS);
  const matched = new Set<string>();
  const seenNames = new Map<string, number>();
  const seenNumbers = new Map<string, number>();
  const teamIds = new Set<string>();
  const steps = rows.map((row) => {
    const label = `${row.cell('number')} ${nameOf(row)}`.trim();
    const found = teamOf(row, there);
    if ('problems' in found) return refusedStep<WantedRosterEntry>([row.line], label, found.problems);
    teamIds.add(found.team.id);
    const entry = entryFor(row, found.team, there, matched);
    if (entry) matched.add(entry.id);
    const problems = [...rowProblems(row), ...doubles(row, found.team, seenNames, seenNumbers), ...(entry ? [] : whichPlayer(row, found.team, there))];
    if (problems.length > 0) return refusedStep<WantedRosterEntry>([row.line], label, problems, entry?.id ?? null);
    return stepFor(row, found.team, entry, there);
  });
  const dropped = there.keepMissing ? [] : there.entries.filter((entry) => teamIds.has(entry.teamId) && !matched.has(entry.id));
  const kept = there.keepMissing ? there.entries.filter((entry) => teamIds.has(entry.teamId) && !matched.has(entry.id)) : [];
  const free = steps.map((step) => refuseTaken(step, kept));
  return planOf([...withWarnings(free, there.numberRule), ...dropped.map(dropOf)], ignored);
}

function nameOf(row: Cells<Column>): string {
  const whole = row.cell('name') || `${row.cell('firstName')} ${row.cell('lastName')}`;
  const [last, first] = whole.split(/,\s*(.*)/s);
  return (first ? `${first} ${last}` : whole).replace(/\s+/g, ' ').trim();
}

function teamOf(row: Cells<Column>, there: RostersThere): ReturnType<typeof findTeam> {
  const only = there.teams.find((team) => team.id === there.onlyTeamId);
  if (only && row.cell('team') === '' && row.cell('level') === '') return { team: only };
  return findTeam(there.teams, row.line, row.cell('team'), row.cell('level'));
}

function entryFor(row: Cells<Column>, team: TeamThere, there: RostersThere, matched: ReadonlySet<string>): RosterEntryThere | undefined {
  const name = foldedText(nameOf(row));
  const ofTeam = there.entries.filter((entry) => entry.teamId === team.id && !matched.has(entry.id));
  if (name === '') return ofTeam.find((entry) => entry.number === row.cell('number'));
  const called = ofTeam.filter((entry) => foldedText(entry.name) === name);
  return called.length < 2 ? called[0] : called.find((entry) => entry.number === row.cell('number'));
}

/** Of two with one name nobody is picked by chance: one may be the student whose family chose silence. */
function whichPlayer(row: Cells<Column>, team: TeamThere, there: RostersThere): ImportProblem[] {
  const fitting = playersCalled(nameOf(row), there.players.filter((player) => player.schoolId === team.schoolId));
  return fitting.length < 2 ? [] : [problem(row.line, 'name', 'player-name-twice', { name: nameOf(row), who: playersInWords(fitting) })];
}

function rowProblems(row: Cells<Column>): ImportProblem[] {
  const number = row.cell('number');
  const announce = row.cell('announce');
  return [
    ...textProblem(row.line, 'name', nameOf(row), 120, true),
    ...textProblem(row.line, 'number', number, 40, true),
    ...(number !== '' && !/^\d{1,3}$/.test(number) ? [problem(row.line, 'number', 'import-number-unreadable', { value: number })] : []),
    ...textProblem(row.line, 'sayAs', row.cell('sayAs'), 120, false),
    ...textProblem(row.line, 'grade', row.cell('grade'), 20, false),
    ...textProblem(row.line, 'position', row.cell('position'), 40, false),
    ...(announce !== '' && choiceOfCell(announce, ANNOUNCE_SPELLINGS) === null
      ? [problem(row.line, 'announce', 'import-choice-unknown', { value: announce, choices: 'name, number only, a member, silence' })]
      : []),
  ];
}

function doubles(row: Cells<Column>, team: TeamThere, names: Map<string, number>, numbers: Map<string, number>): ImportProblem[] {
  const problems: ImportProblem[] = [];
  const name = `${team.id} ${foldedText(nameOf(row))}`;
  const number = `${team.id} ${row.cell('number')}`;
  if (nameOf(row) !== '' && names.has(name)) {
    problems.push(problem(row.line, 'name', 'import-player-twice', { line: names.get(name)! }));
  } else if (row.cell('number') !== '' && numbers.has(number)) {
    problems.push(problem(row.line, 'number', 'import-number-twice', { number: row.cell('number'), line: numbers.get(number)! }));
  }
  if (!names.has(name)) names.set(name, row.line);
  if (!numbers.has(number)) numbers.set(number, row.line);
  return problems;
}

function stepFor(row: Cells<Column>, team: TeamThere, entry: RosterEntryThere | undefined, there: RostersThere): ImportStep<WantedRosterEntry> {
  const known = entry ?? there.players.find((player) => player.schoolId === team.schoolId && foldedText(player.name) === foldedText(nameOf(row)));
  const asked = choiceOfCell(row.cell('announce'), ANNOUNCE_SPELLINGS);
  const announce = known ? stricterChoice(known.announce, asked ?? known.announce) : (asked ?? 'name');
  const wanted: WantedRosterEntry = {
    teamId: team.id,
    schoolId: team.schoolId,
    playerId: entry?.playerId ?? known?.id ?? null,
    number: row.cell('number'),
    name: known ? accentsKept(known.name, nameOf(row)) : nameOf(row),
    sayAs: row.cell('sayAs') || known?.sayAs || null,
    grade: row.cell('grade') || entry?.grade || null,
    position: row.cell('position') || entry?.position || null,
    announce,
  };
  const changes = entry
    ? changesOf([
        ['number', entry.number, wanted.number],
        ['name', entry.name, wanted.name],
        ['sayAs', entry.sayAs, wanted.sayAs],
        ['grade', entry.grade, wanted.grade],
        ['position', entry.position, wanted.position],
        ['announce', entry.announce, wanted.announce],
      ])
    : [];
  return {
    action: !entry ? 'create' : changes.length > 0 ? 'change' : 'same',
    lines: [row.line],
    label: `${wanted.number} ${wanted.name}`,
    existingId: entry?.id ?? null,
    wanted,
    changes,
    problems: [],
    notes: [
      ...(asked !== null && asked !== announce ? ['The stricter choice of the family is kept. Change it on the player’s page if the family asked for it.'] : []),
      ...(!entry && known ? ['Known from before: how to say the name and the family’s choice are kept.'] : []),
    ],
  };
}

/** A list that lost its accents on the way does not take them from a name that has them. */
function accentsKept(stored: string, fromFile: string): string {
  return foldedText(stored) === foldedText(fromFile) && /^[\x20-\x7e]*$/.test(fromFile) ? stored : fromFile;
}

function refuseTaken(step: ImportStep<WantedRosterEntry>, kept: readonly RosterEntryThere[]): ImportStep<WantedRosterEntry> {
  const holder = kept.find((entry) => entry.teamId === step.wanted?.teamId && entry.number === step.wanted.number);
  return holder ? refusedStep(step.lines, step.label, [problem(step.lines[0]!, 'number', 'number-taken')], step.existingId) : step;
}

function withWarnings(steps: readonly ImportStep<WantedRosterEntry>[], rule: NumberRule): ImportStep<WantedRosterEntry>[] {
  return steps.map((step) => {
    if (!step.wanted) return step;
    const ofTeam = steps.flatMap((other) => (other.wanted?.teamId === step.wanted!.teamId ? [other.wanted.number] : []));
    const warnings = numberWarnings(rule, ofTeam).filter((warning) => warning.numbers.includes(step.wanted!.number));
    return { ...step, notes: [...step.notes, ...warnings.map((warning) => warning.sentence)] };
  });
}

function dropOf(entry: RosterEntryThere): ImportStep<WantedRosterEntry> {
  return {
    action: 'drop',
    lines: [],
    label: `${entry.number} ${entry.name}`,
    existingId: entry.id,
    wanted: null,
    changes: [],
    problems: [],
    notes: ['Leaves the list; the log keeps what it says of the player.'],
  };
}
