import type { Pronouncing } from './syllables.ts';
import { BY_RULE } from './syllables.ts';

/** Who reads: how fast, in which language, and where the syllables of a word are looked up. */
export interface Voice {
  /** Of the 75-word card, 60 to 240. */
  readonly wordsPerMinute: number;
  readonly language: 'en' | 'es';
  readonly pronouncing: Pronouncing;
}

/** The words a minute an announcer reads in a gym, until they have measured their own. */
export const DEFAULT_WORDS_PER_MINUTE = 140;

export const SLOWEST_WORDS_PER_MINUTE = 60;
export const FASTEST_WORDS_PER_MINUTE = 240;

/**
 * The card an announcer reads against a stop-watch, at the pace of a game: exactly 75 spoken words of plain
 * trade English.
 */
export const CALIBRATION_CARD =
  'Good evening, and welcome to the fieldhouse. Before we begin, please find the exit nearest to your seat and keep all aisles open. ' +
  'Visiting players are introduced first, followed by the home team. Please stay off the playing floor during timeouts, and show officials, opponents and spectators your best sportsmanship. ' +
  'Popcorn and hot chocolate are available at the concession stand until the end of the third quarter. Thank you for coming, and enjoy the game.';
export const CALIBRATION_WORDS = 75;
/** Counted with the CMU pronouncing dictionary; the tests count again. */
export const CALIBRATION_SYLLABLES = 111;

/**
 * A voice.
 *
 * @param wordsPerMinute of the 75-word card
 * @param pronouncing by the letters alone where nothing better is given
 * @throws RangeError outside 60 to 240
 */
export function voiceAt(wordsPerMinute: number, pronouncing: Pronouncing = BY_RULE, language: 'en' | 'es' = 'en'): Voice {
  if (!(wordsPerMinute >= SLOWEST_WORDS_PER_MINUTE && wordsPerMinute <= FASTEST_WORDS_PER_MINUTE)) throw new RangeError(`${wordsPerMinute} words a minute is no reading rate`);
  return { wordsPerMinute, pronouncing, language };
}

/** The same announcer in another language: the syllables go at the same pace. */
export function inLanguage(voice: Voice, language: string): Voice {
  return voice.language === language ? voice : { ...voice, language: language === 'es' ? 'es' : 'en' };
}

/** Syllables a second of an announcer who reads the card at so many words a minute. */
export function syllablesPerSecond(wordsPerMinute: number): number {
  return CALIBRATION_SYLLABLES / ((CALIBRATION_WORDS * 60) / wordsPerMinute);
}

/**
 * Words a minute of someone who read the card in so many seconds, to the whole word; null where that is
 * slower than 60 or faster than 240, since then the watch was started or stopped too late.
 */
export function measuredRate(seconds: number): number | null {
  const rate = Math.round((CALIBRATION_WORDS * 60) / seconds);
  return rate >= SLOWEST_WORDS_PER_MINUTE && rate <= FASTEST_WORDS_PER_MINUTE ? rate : null;
}
