import { englishSayings } from './said-english.ts';
import { SPANISH_SAYINGS } from './said-spanish.ts';
import type { Saying } from './saying.ts';
import { sayAloud, wordsOf } from './saying.ts';
import { spanishSyllables } from './spanish-syllables.ts';
import type { Pronouncing } from './syllables.ts';
import { BY_RULE, englishSyllables, isKnown } from './syllables.ts';
import type { Voice } from './voice.ts';
import { syllablesPerSecond } from './voice.ts';

const SAYINGS = new WeakMap<Pronouncing, readonly Saying[]>();

function sayingsOf(pronouncing: Pronouncing): readonly Saying[] {
  const { known } = pronouncing;
  const made = SAYINGS.get(pronouncing) ?? englishSayings(known === null ? null : (word) => known(word) !== null);
  SAYINGS.set(pronouncing, made);
  return made;
}

/**
 * The words that are really said: a phone number digit by digit, $19.99 as "nineteen dollars and ninety
 * nine cents", a time as its hour and its minutes, plates and initials letter by letter (as capitals).
 *
 * @source radio copy pages: "555-555-5555 is ten spoken words"
 */
export function saidWords(text: string, { language, pronouncing }: Pick<Voice, 'language' | 'pronouncing'> = { language: 'en', pronouncing: BY_RULE }): string[] {
  return wordsOf(sayAloud(text, language === 'es' ? SPANISH_SAYINGS : sayingsOf(pronouncing)));
}

/** How many words are really said. */
export function spokenWords(text: string): number {
  return saidWords(text).length;
}

/** Syllables that are really said. */
export function spokenSyllables(text: string, voice: Pick<Voice, 'language' | 'pronouncing'>): number {
  const count = voice.language === 'es' ? spanishSyllables : (word: string) => englishSyllables(word, voice.pronouncing);
  return saidWords(text, voice).reduce((sum, word) => sum + count(word), 0);
}

/** Syllables of a respelling: its hyphenated parts, "SO-cheel oh-KON-kwoh" five; a part without a hyphen is a word. */
export function sayAsSyllables(sayAs: string, voice: Pick<Voice, 'language' | 'pronouncing'>): number {
  return sayAs
    .split(/\s+/)
    .reduce((sum, word) => sum + (/\p{L}-\p{L}/u.test(word) ? word.split('-').filter((part) => /\p{L}/u.test(part)).length : spokenSyllables(word, voice)), 0);
}

/** Seconds of so many syllables at the voice's rate, not rounded. */
export function secondsOfSyllables(syllables: number, wordsPerMinute: number): number {
  return syllables / syllablesPerSecond(wordsPerMinute);
}

/** Up to the next whole second; what lies within a thousandth is not rounded up. */
const wholeSeconds = (seconds: number): number => Math.max(0, Math.ceil(seconds - 0.001));

/** Whole seconds, rounded up, that a text takes to say. */
export function spokenSeconds(text: string, voice: Voice): number {
  return wholeSeconds(secondsOfSyllables(spokenSyllables(text, voice), voice.wordsPerMinute));
}

/** As `spokenSeconds`, with a name in the text said as its respelling says. */
export function spokenSecondsWithName(text: string, name: string, sayAs: string, voice: Voice): number {
  const at = text.indexOf(name);
  if (at === -1) return spokenSeconds(text, voice);
  const around = `${text.slice(0, at)} ${text.slice(at + name.length)}`;
  return wholeSeconds(secondsOfSyllables(spokenSyllables(around, voice) + sayAsSyllables(sayAs, voice), voice.wordsPerMinute));
}

/**
 * The words of a name or a text that the dictionary does not know, each once, as they are written there:
 * whoever reads it may stumble. None without a dictionary.
 */
export function wordsNotKnown(text: string, pronouncing: Pronouncing): string[] {
  return [...new Set(saidWords(text, { language: 'en', pronouncing }).filter((word) => /\p{L}/u.test(word) && !isKnown(word, pronouncing)))];
}
