import type { NightForPacket } from './night-for-packet.ts';

const plainOf = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

/**
 * The names of students whose families chose that the name is not used, and their respellings. A
 * respelling of one plain word is left out: it may be an everyday word.
 */
export function namesNotUsed(night: NightForPacket): string[] {
  const onRosters = night.games.flatMap((game) => [...game.visitors.roster, ...game.home.roster]);
  const names = [...onRosters, ...(night.honours ?? []).flatMap((list) => list.students)]
    .filter((player) => player.announce !== 'name')
    .flatMap((player) => [player.name, ...(player.sayAs !== null && /[\s-]/.test(player.sayAs.trim()) ? [player.sayAs] : [])])
    .map((name) => name.normalize('NFC').trim().replace(/\s+/g, ' '))
    .filter((name) => name.length > 1);
  return [...new Set(names)].sort((one, other) => other.length - one.length);
}

const isLetter = (letter: string | undefined): boolean => letter !== undefined && /[\p{L}\p{N}]/u.test(letter);

/** Where a name stands in letters, accents aside, and capitals too unless it is a single word; -1 where it does not. */
function placeOf(letters: readonly string[], name: string, from: number): number {
  const fold = name.includes(' ') ? plainOf : (letter: string): string => letter;
  const wanted = [...name].map(fold);
  for (let start = from; start + wanted.length <= letters.length; start += 1) {
    const fits = wanted.every((letter, place) => fold(letters[start + place] ?? '').replace(/\s/, ' ') === letter);
    if (fits && !isLetter(letters[start - 1]) && !isLetter(letters[start + wanted.length])) return start;
  }
  return -1;
}

/** Puts "a member of the team" where a text names a student who is not to be named. */
export function withoutNames(text: string, names: readonly string[]): string {
  const plain = plainOf(text).replace(/\s/g, ' ');
  const near = names.filter((name) => plain.includes(plainOf(name)));
  if (near.length === 0) return text;
  let letters = [...text.normalize('NFC')];
  let found = false;
  for (const name of near) {
    const instead = [...'a member of the team'];
    for (let at = placeOf(letters, name, 0); at >= 0; at = placeOf(letters, name, at + instead.length)) {
      letters = [...letters.slice(0, at), ...instead, ...letters.slice(at + [...name].length)];
      found = true;
    }
  }
  return found ? letters.join('') : text;
}

/** The same for every text in a tree of plain data; tells which texts were changed. */
export function withoutNamesAnywhere<T>(value: T, names: readonly string[], changed: (text: string) => void): T {
  if (names.length === 0) return value;
  if (typeof value === 'string') {
    const cleaned = withoutNames(value, names);
    if (cleaned !== value) changed(cleaned);
    return cleaned as T;
  }
  if (Array.isArray(value)) return value.map((item) => withoutNamesAnywhere(item, names, changed)) as T;
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, withoutNamesAnywhere(item, names, changed)])) as T;
}
