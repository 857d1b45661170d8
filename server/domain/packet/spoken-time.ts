/** The words a minute an announcer reads in a gym, until they have measured their own. */
export const DEFAULT_WORDS_PER_MINUTE = 140;

const SMALL = /^\d{1,2}$/;

/** Words in a whole number as it is said: 7 is one, 42 two, 350 three, 2026 two pairs. */
function wordsInNumber(digits: string): number {
  if (digits.length > 1 && digits.startsWith('0')) return digits.length;
  if (SMALL.test(digits)) return Number(digits) < 21 || Number(digits) % 10 === 0 ? 1 : 2;
  if (digits.length === 3) return 2 + (Number(digits) % 100 === 0 ? 0 : wordsInNumber(String(Number(digits) % 100)));
  if (digits.length === 4) return wordsInNumber(digits.slice(0, 2)) + Math.max(1, wordsInNumber(String(Number(digits.slice(2)))));
  return digits.length;
}

function wordsInToken(token: string): number {
  if (/^\(?\d{3}\)?[-.]\d{3}[-.]\d{4}$/.test(token) || /^\d{3}-\d{4}$/.test(token)) return token.replace(/\D/g, '').length;
  const money = /^\$(\d{1,3}(?:,\d{3})*|\d+)(?:\.(\d{2}))?$/.exec(token);
  if (money) {
    const cents = Number(money[2] ?? '0');
    return wordsInNumber((money[1] ?? '').replaceAll(',', '')) + 1 + (cents === 0 ? 0 : wordsInNumber(String(cents)) + 1);
  }
  const clock = /^(\d{1,2}):(\d{2})$/.exec(token);
  if (clock) return wordsInNumber(clock[1] ?? '') + (clock[2] === '00' ? 0 : wordsInNumber(String(Number(clock[2]))));
  const number = /^(\d+)(?:st|nd|rd|th)?$/.exec(token);
  if (number) return wordsInNumber(number[1] ?? '');
  if (/^(?:[A-Z]\.){2,}$/.test(token)) return token.length / 2;
  return token.split(/[-–—/]/).filter((part) => /[\p{L}\p{N}]/u.test(part)).length;
}

/**
 * Words that are really said: a phone number is said digit by digit, $19.99 is four words and "dollars
 * and cents" besides, a time is its hour and its minutes.
 *
 * @source radio copy pages: "555-555-5555 is ten spoken words"
 */
export function spokenWords(text: string): number {
  return text
    .split(/\s+/)
    .map((token) => token.replace(/^[("'“‘]+|[)"'”’,;:!?]+$/g, '').replace(/(?<!\..*)\.$/, ''))
    .filter((token) => /[\p{L}\p{N}]/u.test(token))
    .reduce((sum, token) => sum + wordsInToken(token), 0);
}

/**
 * Whole seconds, rounded up, that a text takes to say.
 *
 * @param wordsPerMinute 60 to 240
 * @throws RangeError outside that range
 */
export function spokenSeconds(text: string, wordsPerMinute: number = DEFAULT_WORDS_PER_MINUTE): number {
  if (!(wordsPerMinute >= 60 && wordsPerMinute <= 240)) throw new RangeError(`${wordsPerMinute} words a minute is no reading rate`);
  return Math.ceil((spokenWords(text) * 60) / wordsPerMinute);
}
