import { directionProblems } from '../domain/packet/directions.ts';
import { nearest } from '../domain/packet/nearest-word.ts';
import type { Moment } from '../domain/packet/script.ts';
import { EXAMPLE_VARIABLES, isAlwaysThere, NEXT_GAME_PARTS, SCRIPT_VARIABLES } from '../domain/packet/script-variables.ts';
import { fillIn, LONGEST_SCRIPT, namesUsed, readAloudThoughEmpty, ScriptFailure, unknownName } from './liquid.ts';
import type { NameUsed } from './liquid.ts';

/** Something about a line of a script; the line counts from 1, null where it is about the whole. */
export interface ScriptNote {
  line: number | null;
  sentence: string;
}

export interface ScriptChecked {
  /** the script is refused with these */
  problems: ScriptNote[];
  /** worth knowing: on some nights nothing stands there */
  notes: ScriptNote[];
}

const byLine = (one: ScriptNote, other: ScriptNote): number => (one.line ?? 0) - (other.line ?? 0);

function problemOfName({ parts, line }: NameUsed): ScriptNote[] {
  const [name = '', part] = parts;
  const known = SCRIPT_VARIABLES.find((variable) => variable.name === name);
  if (!known) return [{ line, sentence: unknownName(name) }];
  if (part === undefined) return [];
  if (typeof known.example !== 'object') return [{ line, sentence: `\`${name}\` has no parts; write {{ ${name} }}` }];
  if (NEXT_GAME_PARTS.includes(part)) return [];
  const near = nearest(part, NEXT_GAME_PARTS);
  return [{ line, sentence: `\`${name}.${part}\` is not known; ${near ? `did you mean \`${name}.${near}\`?` : `there is ${NEXT_GAME_PARTS.join(', ')}`}` }];
}

function notesOf(text: string, moment: Moment | null, used: readonly NameUsed[]): ScriptNote[] {
  const mayBeEmpty = SCRIPT_VARIABLES.filter(({ name, mayBeEmpty: may }) => may && !isAlwaysThere(name, moment)).map(({ name }) => name as string);
  const named = [...new Set(used.map(({ parts }) => parts[0]!))].filter((name) => mayBeEmpty.includes(name));
  const found = [...named.map((name) => [name]), named].flatMap((empty) => readAloudThoughEmpty(text, EXAMPLE_VARIABLES, empty) ?? []);
  const once = new Map(found.map((one) => [`${one.name} ${one.line}`, one]));
  return [...once.values()]
    .map(({ name, line }) => ({ line, sentence: `nothing stands in \`${name}\` on some nights; put the words between {% if ${name} %} and {% endif %}` }))
    .sort(byLine);
}

/**
 * What is wrong with a script, line by line: directions, unknown names with the one that was meant, tags that do not
 * fit, and whether it can be filled in at all. Takes no longer than filling it in may take.
 *
 * @param moment what the script is for; a sponsor's words are there in a presentation only
 */
export function checkScript(text: string, moment: Moment | null = null): ScriptChecked {
  if (text.length > LONGEST_SCRIPT) {
    return { problems: [{ line: null, sentence: `it has ${text.length.toLocaleString('en-US')} letters; a script may have ${LONGEST_SCRIPT.toLocaleString('en-US')}` }], notes: [] };
  }
  const directions = directionProblems(text).map(({ line, sentence }) => ({ line, sentence }));
  try {
    const used = namesUsed(text);
    const unknown = used.flatMap(problemOfName);
    if (unknown.length === 0) fillIn(text, EXAMPLE_VARIABLES);
    const problems = [...directions, ...unknown].sort(byLine);
    return { problems, notes: problems.length > 0 ? [] : notesOf(text, moment, used) };
  } catch (failure) {
    if (!(failure instanceof ScriptFailure)) throw failure;
    return { problems: [...directions, { line: failure.line, sentence: failure.sentence }].sort(byLine), notes: [] };
  }
}
