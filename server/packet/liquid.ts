import { Drop, Liquid } from 'liquidjs';
import type { Template } from 'liquidjs';
import { nearest } from '../domain/packet/nearest-word.ts';
import type { Render } from '../domain/packet/script.ts';
import { SCRIPT_VARIABLES } from '../domain/packet/script-variables.ts';

/** What a script is written with; everything else Liquid has reads files, goes on for long or depends on the clock. */
export const TAGS = ['if', 'unless', 'case', 'for', 'assign', 'comment', '#'] as const;
export const FILTERS = ['append', 'capitalize', 'default', 'divided_by', 'downcase', 'minus', 'plus', 'prepend', 'size', 'strip', 'times', 'upcase'] as const;

export const LONGEST_SCRIPT = 5000;
/** No page of a packet is longer, by far. */
export const LONGEST_FILLED_IN = 20_000;
export const DEEPEST = 10;
export const LONGEST_MILLISECONDS = 200;

const OPTIONS = {
  strictVariables: true, strictFilters: true, ownPropertyOnly: true, relativeReference: false, templates: {},
  parseLimit: LONGEST_FILLED_IN, renderLimit: LONGEST_MILLISECONDS, memoryLimit: 200_000,
};

function onlyWhatIsAllowed(liquid: Liquid): Liquid {
  for (const tag of Object.keys(liquid.tags)) if (!(TAGS as readonly string[]).includes(tag)) delete liquid.tags[tag];
  for (const filter of Object.keys(liquid.filters)) if (!(FILTERS as readonly string[]).includes(filter)) delete liquid.filters[filter];
  return liquid;
}

const liquid = onlyWhatIsAllowed(new Liquid(OPTIONS));

/** A variable with nothing in it that notices when it is read aloud all the same. */
class Nothing extends Drop {
  constructor(readonly name: string) {
    super();
  }

  override valueOf(): null {
    return null;
  }
}

const noticing = onlyWhatIsAllowed(new Liquid({
  ...OPTIONS,
  outputEscape: (value: unknown) => {
    if (value instanceof Nothing) throw new Error(`nothing in ${value.name}`);
    return value === null || value === undefined ? '' : String(value);
  },
}));

/** Why a script cannot be filled in, and the line it is about, from 1; null where it is about the whole. */
export class ScriptFailure extends Error {
  constructor(
    readonly line: number | null,
    readonly sentence: string,
    options?: ErrorOptions,
  ) {
    super(line === null ? sentence : `line ${line}: ${sentence}`, options);
  }
}

const meant = (word: string, known: readonly string[], sign = (one: string): string => `\`${one}\``): string => {
  const near = nearest(word, known);
  return near === null ? '' : `; did you mean ${sign(near)}?`;
};

const names = SCRIPT_VARIABLES.map((variable) => variable.name);

/** The sentence for a name no script may use. */
export function unknownName(name: string): string {
  return `\`${name}\` is not known${meant(name, names)}`;
}

const OTHERS: readonly [RegExp, (found: RegExpExecArray) => string][] = [
  [/undefined variable: ([^\s,]+)/, ([, name]) => unknownName(name!)],
  [/undefined filter: ([^\s,]+)/, ([, name]) => `the filter \`${name!}\` is not known here${meant(name!, FILTERS)}`],
  [/tag "(end\w+)" not found/, ([, name]) => `\`{% ${name!} %}\` closes what was never opened`],
  [/tag "(.*?)" not found/, ([, name]) => `\`{% ${name!} %}\` is not known here${meant(name!, TAGS, (tag) => `\`{% ${tag} %}\``)}${nearest(name!, TAGS) === null ? '; a script may use if, unless, case, for, assign and comment' : ''}`],
  [/tag (\{%.*?%\}) not closed/s, ([, tag]) => `\`${tag!}\` is never closed`],
  [/(?:output|tag) "(.*?)" not closed/s, ([, what]) => `\`${what!.split('\n')[0]!.slice(0, 40)}\` is opened and never closed`],
  [/parse length limit/, () => `it is longer than a script may be (${LONGEST_SCRIPT.toLocaleString('en-US')} letters)`],
  [/render limit|memory alloc limit|Invalid string length/, () => 'it does too much to be filled in; leave out loops that repeat so often'],
  [/call stack/, () => 'too many tags stand one inside another'],
];

function failureOf(error: unknown): ScriptFailure {
  if (error instanceof ScriptFailure) return error;
  const message = String((error as Error).message);
  const line = /, line:(\d+)/.exec(message);
  const own = OTHERS.map(([pattern, sentence]) => ({ found: pattern.exec(message), sentence })).find(({ found }) => found !== null);
  const plain = message.split('\n')[0]!.replace(/, (?:file|line):.*$/, '');
  return new ScriptFailure(line ? Number(line[1]) : null, own ? own.sentence(own.found!) : plain, { cause: error });
}

/** @throws ScriptFailure where tags stand deeper inside one another than a reader of the parser could follow */
function checkDepth(text: string): void {
  let depth = 0;
  for (const { 1: tag, index } of text.matchAll(/\{%-?\s*(if|unless|case|for|comment|end\w+)\b/g)) {
    depth += tag!.startsWith('end') ? -1 : 1;
    if (depth > DEEPEST) throw new ScriptFailure(text.slice(0, index).split('\n').length, `more than ${DEEPEST} tags stand one inside another`);
  }
}

const KEPT = 500;
const parsed = new Map<string, Template[]>();

/** @throws ScriptFailure */
export function parseScript(text: string): Template[] {
  const known = parsed.get(text);
  if (known) return known;
  try {
    if (text.length > LONGEST_FILLED_IN) throw new Error('parse length limit');
    checkDepth(text);
    const made = liquid.parse(text);
    if (parsed.size >= KEPT) parsed.clear();
    parsed.set(text, made);
    return made;
  } catch (failure) {
    throw failureOf(failure);
  }
}

function within(text: string): string {
  if (text.length > LONGEST_FILLED_IN) throw new ScriptFailure(null, 'it comes out longer than any page; leave out loops that repeat so often');
  return text;
}

/** Fills a script in; throws a `ScriptFailure` when a variable or a filter is unknown, or when it does too much. */
export const fillIn: Render = (text, variables) => {
  const templates = parseScript(text);
  try {
    return within(liquid.renderSync(templates, variables) as string);
  } catch (failure) {
    throw failureOf(failure);
  }
};

/**
 * The same, and answers which empty variable would be read aloud, with the line it stands in.
 *
 * @param empty names of variables with nothing in them
 */
export function readAloudThoughEmpty(text: string, variables: Readonly<Record<string, unknown>>, empty: readonly string[]): { name: string; line: number } | null {
  const holding = { ...variables, ...Object.fromEntries(empty.map((name) => [name, new Nothing(name)])) };
  try {
    noticing.parseAndRenderSync(text, holding);
    return null;
  } catch (failure) {
    const message = String((failure as Error).message);
    const found = /nothing in (\w+), line:(\d+)/.exec(message) ?? /undefined variable: (\w+)\.\w+, line:(\d+)/.exec(message);
    return found ? { name: found[1]!, line: Number(found[2]) } : null;
  }
}

/** A name a script reads from outside, with its parts: `['nextGame', 'dayText']`. */
export interface NameUsed {
  readonly parts: readonly string[];
  readonly line: number;
}

function analysed(templates: Template[]): ReturnType<typeof liquid.analyzeSync> {
  try {
    return liquid.analyzeSync(templates);
  } catch (failure) {
    throw failureOf(failure);
  }
}

/** Every name a script reads, wherever it stands; those it assigns itself are left out. @throws ScriptFailure */
export function namesUsed(text: string): NameUsed[] {
  const templates = parseScript(text);
  const { globals } = analysed(templates);
  return Object.values(globals).flatMap((uses) => uses.map(({ segments, location }) => ({ parts: segments.map(String), line: location.row })));
}
