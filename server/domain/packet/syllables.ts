/** Syllables of a word in small letters; null for a word that is not known. */
export type Syllables = (word: string) => number | null;

/** Where the syllables of English words are looked up. */
export interface Pronouncing {
  /** The pronouncing dictionary; null where there is none, as in the browser. */
  readonly known: Syllables | null;
  /** For a word the dictionary does not know. */
  readonly guess: (word: string) => number;
}

const bare = (word: string): string => word.normalize('NFD').replace(/\p{M}/gu, '').replaceAll('ł', 'l').replaceAll('ø', 'o').replaceAll('đ', 'd').replaceAll('ß', 'ss').replaceAll('æ', 'e');

/** Endings whose e is not heard: "games", "played", but not "passes", "planted". */
const SILENT = /(?:[^aeiouylr]|[aeiouy]r|[aeiouy]l|[^aeiou]r)e$|[^aeioutdy]ed$|[^aeiouyszxgc]es$|(?:[^sc]h)es$/;

/**
 * Syllables of an English word by its letters alone: groups of vowels, less silent endings.
 *
 * @returns at least 1; for scripts without an alphabet one for each sign
 * @source common practice, no source; compared with the CMU pronouncing dictionary in the tests
 */
export function syllablesByRule(word: string): number {
  const signs = word.match(/[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}]/gu);
  if (signs) return signs.length;
  const letters = bare(word.toLowerCase()).replace(/'s$|'/g, '');
  if (!/[a-z]/.test(letters)) return Math.max(1, Math.ceil(letters.length / 2));
  const vowels = letters.replace(/qu/g, 'k').replace(/^y(?=[aeiou])/, 'j').replace(/([aeiou])y(?=[aeiou])/g, '$1j').match(/[aeiouy]+/g) ?? [];
  let count = vowels.length;
  if (count > 1 && SILENT.test(letters)) count -= 1;
  // "Stadium", "studio", "area" say two of the vowels that stand together.
  count += (letters.match(/(?<![ctsg])i(?:a|o|um|us)|eo(?!u)|[^qg]ua(?!r[dt])|ying|eing$|ism$/g) ?? []).length;
  return Math.max(1, count);
}

/** Without a dictionary, for the browser and for tests that need none. */
export const BY_RULE: Pronouncing = { known: null, guess: syllablesByRule };

/** The same word as the dictionary may write it: accents off; then without the s of an owner or of several. */
function inDictionary(word: string, known: Syllables): number | null {
  const plain = known(word) ?? known(bare(word));
  if (plain !== null) return plain;
  const owner = /^(.{2,}?)(?:'s?|s)$/.exec(bare(word))?.[1];
  const owned = owner === undefined ? null : known(owner);
  return owned === null || owner === undefined ? null : owned + (/(?:s|x|z|ch|sh|ce|ge)$/.test(owner) ? 1 : 0);
}

/** True where there is no dictionary to ask, and for letters that are named by themselves. */
export function isKnown(word: string, { known }: Pronouncing): boolean {
  return known === null || /^[A-Z]$/.test(word) || inDictionary(word, known) !== null;
}

/** Syllables of one English word as `wordsOf` gives it; a capital letter is said by its name. */
export function englishSyllables(word: string, { known, guess }: Pronouncing): number {
  if (/^[A-Z]$/.test(word)) return word === 'W' ? 3 : 1;
  const looked = known === null ? null : inDictionary(word, known);
  if (looked !== null) return Math.max(1, looked);
  const plain = bare(word);
  return Math.max(1, /[a-z]/.test(plain) ? guess(plain) : syllablesByRule(word));
}
