const SMALL = ('zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen').split(' ');
const TENS = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];
const THOUSANDS = [[1_000_000_000, 'billion'], [1_000_000, 'million'], [1_000, 'thousand']] as const;

const ODD_ORDINALS: Readonly<Record<string, string>> = {
  one: 'first', two: 'second', three: 'third', five: 'fifth', eight: 'eighth', nine: 'ninth', twelve: 'twelfth',
};

const together = (...parts: readonly string[]): string => parts.filter((part) => part !== '').join(' ');

function belowHundred(number: number): string {
  if (number < 20) return SMALL[number] ?? '';
  return together(TENS[Math.floor(number / 10)] ?? '', number % 10 === 0 ? '' : (SMALL[number % 10] ?? ''));
}

/**
 * A whole number from 0 in words as it is said in the United States, without hyphens: 350 is "three hundred fifty".
 * From a trillion on it is read digit by digit.
 */
export function cardinalWords(number: number): string {
  if (number >= 1e12) return digitWords(String(number));
  for (const [size, name] of THOUSANDS) {
    if (number >= size) {
      const rest = number % size;
      return together(cardinalWords(Math.floor(number / size)), name, rest === 0 ? '' : cardinalWords(rest));
    }
  }
  if (number < 100) return belowHundred(number);
  return together(SMALL[Math.floor(number / 100)] ?? '', 'hundred', number % 100 === 0 ? '' : belowHundred(number % 100));
}

/** "First", "twenty first", "one hundred first", in small letters. */
export function ordinalWords(number: number): string {
  const words = cardinalWords(number).split(' ');
  const last = words.pop() ?? '';
  const ending = ODD_ORDINALS[last] ?? (last.endsWith('y') ? `${last.slice(0, -1)}ieth` : `${last}th`);
  return together(...words, ending);
}

/** One digit after the other: "555" is "five five five". */
export function digitWords(digits: string, nought = 'zero'): string {
  return [...digits].map((digit) => (digit === '0' ? nought : (SMALL[Number(digit)] ?? ''))).join(' ');
}

/** The last two digits of a year or of the minutes: "oh five", "ten", nothing for 00. */
export function pairWords(pair: number): string {
  if (pair === 0) return '';
  return pair < 10 ? `oh ${SMALL[pair] ?? ''}` : belowHundred(pair);
}

/**
 * Four digits in two pairs, as years and house numbers are said: 1905 "nineteen oh five", 1200 "twelve
 * hundred", 2005 "two thousand five", 2026 "twenty twenty six".
 */
export function yearWords(year: number): string {
  const [hundreds, pair] = [Math.floor(year / 100), year % 100];
  if (hundreds % 10 === 0 && pair < 10) return cardinalWords(year);
  return together(belowHundred(hundreds), pair === 0 ? 'hundred' : pairWords(pair));
}

/** Digits without a comma or a point, as an announcer meets them: shirt numbers, years, house numbers, postal codes. */
export function plainNumberWords(digits: string): string {
  if (digits === '00') return 'double zero';
  if (digits.length > 1 && digits.startsWith('0')) return digitWords(digits, 'oh');
  if (digits.length === 4) return yearWords(Number(digits));
  if (digits.length > 4 && !digits.endsWith('000')) return digitWords(digits, 'oh');
  return digits.length > 12 ? digitWords(digits, 'oh') : cardinalWords(Number(digits));
}
