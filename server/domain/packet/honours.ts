import { cellsOf, foldedText, textProblem } from '../season/import-headings.ts';
import type { Cells, Columns } from '../season/import-headings.ts';
import { changesOf, planOf, problem, refusedStep } from '../season/import-plan.ts';
import type { ImportFile, ImportPlan, ImportProblem, ImportStep } from '../season/import-plan.ts';

type Column = 'name' | 'firstName' | 'lastName' | 'sayAs' | 'escorts' | 'order' | 'line';

const COLUMNS: Columns<Column> = {
  headings: {
    name: ['student', 'name', 'student name', 'senior', 'athlete', 'player', 'full name', 'estudiante'],
    firstName: ['first name', 'first', 'given name'],
    lastName: ['last name', 'last', 'surname', 'family name'],
    sayAs: ['say as', 'pronunciation', 'pronounced', 'phonetic', 'how to say it'],
    escorts: ['escorts', 'escort', 'escorted by', 'with', 'family', 'parents', 'accompanied by'],
    order: ['order', 'place', 'no', '#', 'number in line', 'position in line'],
    line: ['one line', 'line', 'text', 'read', 'notes', 'bio', 'about'],
  },
  needed: [['name', 'lastName']],
};

export const LONGEST_ESCORTS = 200;
export const LONGEST_LINE = 300;
export const MOST_HONOURED = 200;

/** A student of our schools, as a list finds one by name. */
export interface StudentThere {
  readonly id: string;
  readonly name: string;
}

/** A student on the list already. */
export interface HonouredThere {
  readonly playerId: string;
  readonly name: string;
  readonly place: number;
  readonly escorts: string | null;
  readonly line: string | null;
}

export interface WantedHonoured {
  /** null: a student nobody has entered yet */
  readonly playerId: string | null;
  readonly name: string;
  readonly sayAs: string | null;
  readonly escorts: string | null;
  readonly line: string | null;
  /** as the file wants it; null for the order of the file */
  readonly order: number | null;
}

export interface HonoursThere {
  /** those of our schools whose names were not erased */
  readonly students: readonly StudentThere[];
  readonly onList: readonly HonouredThere[];
  /** leave students on the list whom the file does not name */
  readonly keepMissing: boolean;
}

/**
 * What a file of honored students would do: student, escorts, order, one line. A student is found by name
 * among our schools' players, else made new. Two players of one name are not told apart by a file.
 *
 * @throws Refused heading-missing, heading-twice, file-empty
 */
export function planHonoursImport(file: ImportFile, there: HonoursThere): ImportPlan<WantedHonoured> {
  const { rows, ignored } = cellsOf(file, COLUMNS);
  const names = new Map<string, number>();
  const orders = new Map<number, number>();
  const steps = rows.map((row) => {
    const name = nameOf(row);
    const problems = [...rowProblems(row, name, orders), ...doubled(row, name, names)];
    const found = there.students.filter((student) => foldedText(student.name) === foldedText(name));
    const onList = there.onList.find((one) => found.some((student) => student.id === one.playerId));
    if (found.length > 1 && !onList && name !== '') problems.push(problem(row.line, 'student', 'import-student-unclear', { name }));
    if (problems.length > 0) return refusedStep<WantedHonoured>([row.line], name, problems, onList?.playerId ?? null);
    return stepFor(row, name, onList?.playerId ?? found[0]?.id ?? null, onList);
  });
  const named = new Set(steps.flatMap((step) => step.existingId ?? []));
  const missing = there.keepMissing ? [] : there.onList.filter((one) => !named.has(one.playerId));
  return planOf([...steps, ...missing.map(dropOf)], ignored);
}

/** "Last, First" becomes "First Last". */
function nameOf(row: Cells<Column>): string {
  const whole = row.cell('name') || `${row.cell('firstName')} ${row.cell('lastName')}`;
  const [last, first] = whole.split(/,\s*(.*)/s);
  return (first ? `${first} ${last}` : whole).replace(/\s+/g, ' ').trim();
}

function rowProblems(row: Cells<Column>, name: string, orders: Map<number, number>): ImportProblem[] {
  const order = row.cell('order');
  const isOrder = /^\d{1,3}$/.test(order) && Number(order) >= 1 && Number(order) <= 500;
  const taken = isOrder && orders.has(Number(order));
  if (isOrder && !taken) orders.set(Number(order), row.line);
  return [
    ...textProblem(row.line, 'student', name, 120, true),
    ...textProblem(row.line, 'sayAs', row.cell('sayAs'), 120, false),
    ...textProblem(row.line, 'escorts', row.cell('escorts'), LONGEST_ESCORTS, false),
    ...textProblem(row.line, 'line', row.cell('line'), LONGEST_LINE, false),
    ...(order === '' || isOrder ? [] : [problem(row.line, 'order', 'import-order-unreadable', { value: order })]),
    ...(taken ? [problem(row.line, 'order', 'honours-place-taken')] : []),
  ];
}

function doubled(row: Cells<Column>, name: string, names: Map<string, number>): ImportProblem[] {
  const before = names.get(foldedText(name));
  if (before === undefined) names.set(foldedText(name), row.line);
  return before === undefined || name === '' ? [] : [problem(row.line, 'student', 'import-student-twice', { line: before })];
}

function stepFor(row: Cells<Column>, name: string, playerId: string | null, onList: HonouredThere | undefined): ImportStep<WantedHonoured> {
  const wanted: WantedHonoured = {
    playerId, name, sayAs: row.cell('sayAs') || null, escorts: row.cell('escorts') || null, line: row.cell('line') || null,
    order: row.cell('order') === '' ? null : Number(row.cell('order')),
  };
  const notes = [
    ...(playerId === null ? ['The name is new here: ask the family how the student is announced.'] : []),
    ...wordsToLeaveOut(`${wanted.escorts ?? ''} ${wanted.line ?? ''}`).map((words) => `“${words}” is not directory information; leave it out.`),
  ];
  const common = { lines: [row.line], label: name, existingId: onList?.playerId ?? null, wanted, problems: [], notes };
  if (!onList) return { ...common, action: 'create', changes: [] };
  const changes = changesOf([
    ['escorts', onList.escorts, wanted.escorts],
    ['line', onList.line, wanted.line],
    ['order', String(onList.place), String(wanted.order ?? onList.place)],
  ]);
  return { ...common, action: changes.length > 0 ? 'change' : 'same', changes };
}

function dropOf(one: HonouredThere): ImportStep<WantedHonoured> {
  return { action: 'drop', lines: [], label: one.name, existingId: one.playerId, wanted: null, changes: [], problems: [], notes: [] };
}

/** Those with an order first, by it; the others behind them as they come. */
export function inOrder<One extends { readonly order: number | null }>(students: readonly One[]): One[] {
  return students.map((student, index) => ({ student, index })).sort((a, b) => (a.student.order ?? Infinity) - (b.student.order ?? Infinity) || a.index - b.index).map(({ student }) => student);
}

/**
 * Words of an escorts' or student's line that are no directory information: marks, rank, health, discipline,
 * eligibility, numbers of identity.
 *
 * @source 20 U.S.C. 1232g(a)(5)(A), 34 CFR 99.3: what may be designated, and that an identification number may not
 */
export function wordsToLeaveOut(text: string): string[] {
  const signs = [
    /\b(?:\d\.\d+\s*)?g\.?p\.?a\b|\bgrade[- ]point\b|\bvaledictor\w*|\bclass rank\b|\branked?\s+(?:#|no\.?|number)?\s*\w+ in (?:the|her|his|their) class\b/gi,
    /\b(?:injur\w+|surger\w+|concussion\w*|illness\w*|diagnos\w+|disab\w+|therap\w+|recover(?:y|ed|ing) from\b|cancer|asthma|diabet\w+|adhd|autis\w+|allerg\w+)\b/gi,
    /\b(?:i\.?e\.?p\.?|504 plan|special education|english learner)\b/gi,
    /\b(?:suspen\w+|disciplin\w+|expel\w+|detention|ineligib\w+|academic probation)\b/gi,
    /\b(?:student (?:id|number)|social security)\b/gi,
  ];
  return [...new Set(signs.flatMap((sign) => text.match(sign) ?? []).map((found) => found.trim()))];
}

/** "4 min 40 s": seconds as a list of honored students shows them. */
export function minutesAndSeconds(seconds: number): string {
  const minutes = Math.floor(seconds / 60);
  const rest = seconds % 60;
  return minutes === 0 ? `${rest} s` : rest === 0 ? `${minutes} min` : `${minutes} min ${rest} s`;
}
