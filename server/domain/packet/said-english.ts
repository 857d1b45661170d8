import { abbreviationWords } from './english-abbreviations.ts';
import { cardinalWords, digitWords, ordinalWords, pairWords, plainNumberWords, yearWords } from './number-words.ts';
import type { Saying } from './saying.ts';
import { spelledOut } from './saying.ts';

const MONTHS = 'january february march april may june july august september october november december'.split(' ');
const MONTH = 'January|February|March|April|May|June|July|August|September|October|November|December|Jan\\.?|Feb\\.?|Mar\\.?|Apr\\.?|Jun\\.?|Jul\\.?|Aug\\.?|Sept?\\.?|Oct\\.?|Nov\\.?|Dec\\.?';

const whole = (digits: string | undefined): number => Number((digits ?? '').replaceAll(',', ''));
const monthNamed = (written: string | undefined): string => MONTHS.find((month) => month.startsWith((written ?? '').slice(0, 3).toLowerCase())) ?? '';
const letters = (signs: string): string => spelledOut(signs, digitWords);
const halfOfDay = (letter: string | undefined): string => (letter === undefined ? '' : `${letter.toUpperCase()} M`);

function dateWords(month: number, day: number, year: string | undefined): string | null {
  if (month < 1 || month > 12 || day < 1 || day > 31) return null;
  const full = year === undefined ? '' : yearWords(year.length === 2 ? 2000 + Number(year) : Number(year));
  return `${MONTHS[month - 1]} ${ordinalWords(day)} ${full}`;
}

/** $19.99 is "nineteen dollars and ninety nine cents". */
function moneyWords(dollars: number, cents: number): string {
  const centsWords = cents === 0 ? '' : `${cardinalWords(cents)} ${cents === 1 ? 'cent' : 'cents'}`;
  if (dollars === 0 && cents > 0) return centsWords;
  return `${cardinalWords(dollars)} ${dollars === 1 ? 'dollar' : 'dollars'} ${centsWords === '' ? '' : `and ${centsWords}`}`;
}

function webWords(address: string): string {
  const parts = address.replace(/^https?:\/\//, '').split(/([.@/_-])/);
  const signs: Readonly<Record<string, string>> = { '.': 'dot', '@': 'at', '/': 'slash', _: 'underscore', '-': 'dash' };
  return parts.map((part) => signs[part] ?? (/^(?:www|edu)$/.test(part) ? letters(part) : part.replace(/\d+/g, (digits) => ` ${cardinalWords(Number(digits))} `))).join(' ');
}

const SIZES: Readonly<Record<string, string>> = { K: 'thousand', M: 'million', thousand: 'thousand', million: 'million', billion: 'billion' };
const FRACTIONS: Readonly<Record<string, string>> = {
  '1/2': 'one half', '1/3': 'one third', '2/3': 'two thirds', '1/4': 'one quarter', '3/4': 'three quarters', '½': 'one half', '¼': 'one quarter', '¾': 'three quarters', '⅓': 'one third', '⅔': 'two thirds',
};
const ROMAN: Readonly<Record<string, string>> = { II: 'the second', III: 'the third', IV: 'the fourth' };
const SIGNS: Readonly<Record<string, string>> = { '&': 'and', '+': 'plus', '@': 'at', '=': 'equals', '%': 'percent', '°': 'degrees', '#': 'number' };

/** Spelled even though a word is written the same way. */
const ALWAYS_SPELLED = new Set('US USA PA PTA PTO AD TV ATM MVP JV ID AM PM OT DJ EMT AED RSVP ER IT CO ADA'.split(' '));

/** Read as words: a line in capitals is not a row of initials. Without a dictionary only what has no vowel is spelled. */
function capitalsWords(written: string, isWord: ((word: string) => boolean) | null): string | null {
  if (ALWAYS_SPELLED.has(written)) return letters(written);
  const hasVowel = /[AEIOUY]/.test(written);
  if (!hasVowel) return letters(written);
  return isWord !== null && written.length <= 5 && !isWord(written.toLowerCase()) ? letters(written) : null;
}

/** "Seven thirty P M"; the full hour is its number alone. */
function clockWords(hour: string | undefined, minutes: string | undefined, half: string | undefined): string | null {
  if (Number(hour) > 24 || Number(minutes) > 59) return null;
  return `${cardinalWords(Number(hour))} ${pairWords(Number(minutes))} ${halfOfDay(half)}`;
}

const CALENDAR_AND_CLOCK: readonly Saying[] = [
  { what: 'date 2026-12-04', pattern: /(\d{4})-(\d{2})-(\d{2})(?!\d)/y, say: ([, year, month, day]) => dateWords(Number(month), Number(day), year) },
  { what: 'date 12/4/2026', pattern: /(\d{1,2})\/(\d{1,2})\/(\d{4}|\d{2})(?!\d)/y, say: ([, month, day, year]) => dateWords(Number(month), Number(day), year) },
  {
    what: 'date December 4, 2026', pattern: new RegExp(`(${MONTH}) (\\d{1,2})(?:st|nd|rd|th)?(?![\\d:/])(?:, (\\d{4})(?!\\d))?`, 'y'),
    say: ([, month, day, year]) => (Number(day) >= 1 && Number(day) <= 31 ? `${monthNamed(month)} ${ordinalWords(Number(day))} ${year === undefined ? '' : yearWords(Number(year))}` : null),
  },
  { what: 'time 7:30 PM', pattern: /(\d{1,2}):(\d{2})(?!\d)(?:\s?([AaPp])\.?[Mm]\b\.?)?/y, say: ([, hour, minutes, half]) => clockWords(hour, minutes, half) },
  { what: 'time 7 p.m.', pattern: /(\d{1,2})\s?([AaPp])\.?[Mm]\b\.?/y, say: ([, hour, half]) => clockWords(hour, '0', half) },
  { what: 'a.m.', pattern: /([ap])\.m\b\.?/y, say: ([, half]) => halfOfDay(half) },
];

const SPELLED: readonly Saying[] = [
  {
    what: 'e-mail or web address',
    pattern: /(?:https?:\/\/)?(?:[\w+-]{1,64}(?:\.[\w+-]{1,64}){0,4}@)?[\w-]{1,63}(?:\.[\w-]{1,63}){0,4}\.(?:com|org|net|edu|gov|example)\b(?:\/[\w/-]{1,80})?/y,
    say: ([address]) => webWords(address ?? ''),
  },
  { what: 'phone', pattern: /(?:\+?1[-. ])?\(?\d{3}\)?[-. ]{1,2}\d{3}[-. ]\d{4}(?!\d)|\d{3}[-.]\d{4}(?!\d)|1-8\d\d-(?=[A-Z])/y, say: ([number]) => digitWords((number ?? '').replace(/\D/g, ''), 'oh') },
  {
    what: 'plate after the word', pattern: /((?:[Pp]lates?|[Ll]icense)(?: number)?(?: is)?[:,]?\s{1,3})([A-Z0-9]{1,8}(?:[ /-][A-Z0-9]{1,7})?)(?![A-Za-z0-9])/y,
    say: ([, word, plate]) => (/\d/.test(plate ?? '') ? `${word} ${letters(plate ?? '')}` : null),
  },
  { what: 'plate', pattern: /(?:[A-Z]{2,3}-\d{3,4}|\d{3}-[A-Z]{3}|[A-Z]\d{2}-\d{4}|\d[A-Z]\/[A-Z]\d{4}|(?=[A-Z]{0,7}\d)(?=\d{0,7}[A-Z])[A-Z0-9]{5,8})(?![A-Za-z0-9])/y, say: ([plate]) => letters(plate ?? '') },
];

const NUMBERS: readonly Saying[] = [
  {
    what: 'money', pattern: /\$\s?(\d{1,3}(?:,\d{3})+|\d{1,12})(?:\.(\d{1,2})(?!\d))?(?:\s?(thousand|million|billion|K|M)\b)?/y,
    say: ([, dollars, cents, size]) => size === undefined
      ? moneyWords(whole(dollars), Number((cents ?? '0').padEnd(2, '0')))
      : `${cardinalWords(whole(dollars))} ${cents === undefined ? '' : `point ${digitWords(cents)}`} ${SIZES[size]} dollars`,
  },
  { what: 'cents', pattern: /(\d{1,3})\s?¢/y, say: ([, cents]) => moneyWords(0, Number(cents)) },
  { what: 'No. 5', pattern: /(?:No|Nos)\.\s?(?=\d)|#\s?(?=\d)/y, say: () => 'number' },
  { what: 'fraction', pattern: /(?:1\/2|1\/3|2\/3|1\/4|3\/4)(?![\d/])|[½¼¾⅓⅔]/y, say: ([written]) => FRACTIONS[written ?? ''] ?? null },
  { what: 'date 12/4', pattern: /(\d{1,2})\/(\d{1,2})(?![\d/])/y, say: ([, month, day]) => dateWords(Number(month), Number(day), undefined) },
  { what: 'school year', pattern: /((?:19|20)\d{2})[-–](\d{2})(?!\d)/y, say: ([, year, next]) => `${yearWords(Number(year))} ${pairWords(Number(next))}` },
  { what: 'decade', pattern: /((?:1[1-9]|20)\d0)['’]?s\b/y, say: ([, year]) => yearWords(Number(year)).replace(/y$/, 'ies').replace(/(ten|hundred|thousand)$/, '$1s') },
  { what: 'short decade', pattern: /['’](\d0)s\b/y, say: ([, pair]) => `${cardinalWords(Number(pair)).replace(/y$/, 'ie')}s` },
  { what: 'ordinal', pattern: /(\d{1,3}(?:,\d{3})+|\d{1,9})(?:st|nd|rd|th)\b/y, say: ([, number]) => ordinalWords(whole(number)) },
  { what: '4x100', pattern: /(\d{1,3})[x×](\d{1,4})(?!\d)/y, say: ([, times, length]) => `${cardinalWords(Number(times))} by ${cardinalWords(Number(length))}` },
  { what: 'class 3A', pattern: /(\d{1,3})([A-Z]{1,2})\b/y, say: ([, number, class_]) => `${cardinalWords(Number(number))} ${letters(class_ ?? '')}` },
  { what: 'decimal', pattern: /(\d{1,3}(?:,\d{3})+|\d{1,12})\.(\d{1,8})(?!\d)/y, say: ([, before, after]) => `${cardinalWords(whole(before))} point ${digitWords(after ?? '')}` },
  { what: 'number with commas', pattern: /\d{1,3}(?:,\d{3})+(?!\d)/y, say: ([number]) => cardinalWords(whole(number)) },
  { what: 'number', pattern: /\d+/y, say: ([digits]) => plainNumberWords(digits ?? '') },
  { what: 'from – to', pattern: /\s?[-–—]\s?(?=\d)/y, say: (_, before) => (/(?:\d|\b[AaPp]\.?[Mm]\.?)\s?$/.test(before) ? 'to' : null) },
];

const WORDS = (isWord: ((word: string) => boolean) | null): readonly Saying[] => [
  { what: 'initials', pattern: /(?:\p{Lu}\.\s?){2,5}(?!\p{L})|(?:\p{Lu}\.){2,5}/uy, say: ([written]) => letters(written ?? '') },
  { what: 'Roman number after a name', pattern: /(?:III|II|IV)\b/y, say: ([written], before) => (/\p{Ll},?\s$/u.test(before) ? (ROMAN[written ?? ''] ?? null) : null) },
  { what: 'abbreviation', pattern: /([A-Za-z]{1,6})(\.?)(?![A-Za-z])/y, say: ([, written, period], before, after) => abbreviationWords(written ?? '', period === '.', before, after) },
  { what: 'initials without periods', pattern: /[A-Z]{2,6}(?![\p{L}\p{N}])/uy, say: ([written]) => capitalsWords(written ?? '', isWord) },
  { what: 'sign', pattern: /[&+@=%°#]/y, say: ([sign]) => SIGNS[sign ?? ''] ?? null },
];

const BEFORE_WORDS = [...SPELLED, ...CALENDAR_AND_CLOCK, ...NUMBERS];
const WITHOUT_DICTIONARY = [...BEFORE_WORDS, ...WORDS(null)];

/**
 * How English signs are said.
 *
 * @param isWord whether the dictionary knows a small-letter word; null without a dictionary
 * @source common practice at the microphone; numbers are words: radio copy pages (advertisingbc.ca)
 */
export function englishSayings(isWord: ((word: string) => boolean) | null): readonly Saying[] {
  return isWord === null ? WITHOUT_DICTIONARY : [...BEFORE_WORDS, ...WORDS(isWord)];
}
