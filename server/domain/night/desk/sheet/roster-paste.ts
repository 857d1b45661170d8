/** One player as typed or pasted at the table. */
export interface TypedPlayer {
  readonly number: string;
  readonly name: string;
  readonly sayAs: string | null;
}

export interface RefusedLine {
  /** 1 and up, empty lines counted */
  readonly line: number;
  readonly text: string;
  readonly sentence: string;
}

export const LONGEST_NAME = 80;

const NUMBERED = /^(?:no\.?\s*|#\s*)?(\d{1,4})(?!\d)[\s.):;,\t|–-]*(.*)$/isu;
/** A respelling in round brackets, square ones or slashes, at the end of the line. */
const MARKED = /^(.*?)\s*(?:\(([^()]+)\)|\[([^[\]]+)\]|\/([^/]+)\/)\s*$/su;
/** What lists carry besides: position, grade, height, weight. */
const NOT_A_NAME = /^(?:[\d'"’”.\s-]+|\p{Lu}{1,3}|(?:Fr|So|Jr|Sr)\.?)$/u;
/** Syllables in capitals, or small letters from the beginning: how respellings are written, and names are not. */
const RESPELLING = /\p{Lu}{2}|^\p{Ll}/u;

const tidy = (text: string): string => text.normalize('NFC').replace(/[\s\u00a0\ufeff]+/gu, ' ').trim();

/** Name and respelling of what stands behind the number. */
function nameOf(rest: string): { name: string; sayAs: string | null } {
  const marked = MARKED.exec(rest);
  const told = marked === null ? null : tidy(marked[2] ?? marked[3] ?? marked[4] ?? '');
  const cells = (marked?.[1] ?? rest).split(/[\t,;|]/u).map(tidy).filter((cell) => cell !== '');
  const [first = '', ...others] = cells;
  const words = others.filter((cell) => !NOT_A_NAME.test(cell));
  const respelled = words.find((cell) => RESPELLING.test(cell)) ?? null;
  const givenName = words.find((cell) => !RESPELLING.test(cell));
  return { name: givenName === undefined ? first : `${givenName} ${first}`, sayAs: told ?? respelled };
}

function read(text: string): TypedPlayer | string {
  const found = NUMBERED.exec(text);
  if (!found) return 'It begins with no number.';
  const number = found[1]!;
  if (number.length > 3) return `${number} is too long for a number on a shirt.`;
  const { name, sayAs } = nameOf(found[2]!);
  if (name === '') return `No name stands behind ${number}.`;
  if (!/\p{L}/u.test(name)) return `“${name}” is not a name.`;
  if (name.length > LONGEST_NAME || (sayAs ?? '').length > LONGEST_NAME) return `A name may have ${LONGEST_NAME} letters at most.`;
  return { number, name, sayAs };
}

/**
 * Reads a pasted list, one player a line: "12 Łukasz Wren", with tabs or commas, the respelling in brackets, in slashes or
 * in a column of its own. Every line it cannot use is named with a sentence; the others are kept.
 */
export function readPastedRoster(text: string): { players: TypedPlayer[]; refused: RefusedLine[] } {
  const players: TypedPlayer[] = [];
  const refused: RefusedLine[] = [];
  const lineOf = new Map<string, number>();
  text.split(/\r\n|\r|\n/u).forEach((raw, place) => {
    const line = place + 1;
    const trimmed = raw.replace(/^[\s\ufeff]+|\s+$/gu, '');
    if (trimmed === '') return;
    const player = read(trimmed);
    const sentence = typeof player === 'string' ? player : lineOf.has(player.number) ? `${player.number} stands in line ${lineOf.get(player.number)} already.` : null;
    if (sentence !== null || typeof player === 'string') refused.push({ line, text: tidy(trimmed), sentence: sentence ?? '' });
    else {
      players.push(player);
      lineOf.set(player.number, line);
    }
  });
  return { players, refused };
}
