import type { SportProfile } from './sport-profile.ts';

export type NumberRule = SportProfile['numberRule'];

/** An odd number warns and never refuses: what the player wears tonight is what must be read. */
export interface NumberWarning {
  readonly code: 'number-odd' | 'number-twice' | 'numbers-0-and-00';
  readonly numbers: readonly string[];
  readonly sentence: string;
}

const FINGERS = ['0', '1', '2', '3', '4', '5', '00', ...tens(1), ...tens(2), ...tens(3), ...tens(4), ...tens(5)];

/**
 * The numbers a sport allows, as text, since "0" and "00" are two numbers. An official shows a
 * basketball number with the fingers of two hands, hence no digit above 5.
 *
 * @source NFHS Basketball Rule 3-4-3 (37 numbers); other sports from memory; null: no shirt numbers
 */
export const LEGAL_NUMBERS: Readonly<Record<NumberRule, ReadonlySet<string> | null>> = {
  fingers: new Set(FINGERS),
  upTo99: new Set(count(1, 99)),
  upToTwoDigits: new Set([...count(0, 99), '00']),
  none: null,
};

/** True when a shirt number is one the sport's rules allow; always true in a sport without numbers. */
export function isLegalNumber(rule: NumberRule, number: string): boolean {
  return LEGAL_NUMBERS[rule]?.has(number) ?? true;
}

/**
 * What a roster's numbers are warned for: odd numbers, one number worn twice, and 0 beside 00.
 *
 * @param numbers as text, as listed; empty text for a player without a number yet
 * @source NFHS Basketball Rule 3-4-3
 */
export function numberWarnings(rule: NumberRule, numbers: readonly string[]): NumberWarning[] {
  const worn = numbers.filter((number) => number !== '');
  const warnings: NumberWarning[] = [];
  for (const number of new Set(worn)) {
    if (!isLegalNumber(rule, number)) {
      warnings.push({
        code: 'number-odd',
        numbers: [number],
        sentence: `${number} is not a number the rules of this sport allow. It is kept as listed.`,
      });
    }
    if (worn.filter((other) => other === number).length > 1) {
      warnings.push({
        code: 'number-twice',
        numbers: [number],
        sentence: `${number} is worn twice on this team. Ask the coach which player changes.`,
      });
    }
  }
  if (rule === 'fingers' && worn.includes('0') && worn.includes('00')) {
    warnings.push({
      code: 'numbers-0-and-00',
      numbers: ['0', '00'],
      sentence: 'A team list may not hold both 0 and 00. Ask the coach which player changes.',
    });
  }
  return warnings;
}

function tens(ten: number): string[] {
  return [0, 1, 2, 3, 4, 5].map((digit) => `${ten}${digit}`);
}

function count(from: number, to: number): string[] {
  return Array.from({ length: to - from + 1 }, (_, place) => String(from + place));
}
