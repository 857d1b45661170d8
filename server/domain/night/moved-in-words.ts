import { isClock, spokenClock } from '../season/night.ts';

/** A moved time in a sentence: "The start moves to 7:12 PM." What an old device left out is not made up. */
export function movedInWords(detail: Readonly<Record<string, unknown>> | null): string {
  const { what, clock, seconds } = detail ?? {};
  if (isClock(clock)) return what === 'halftime' ? `Halftime moves to ${spokenClock(clock)}.` : `The start moves to ${spokenClock(clock)}.`;
  if (typeof seconds !== 'number') return 'A time moves.';
  const minutes = Math.round(seconds / 60);
  return `Halftime is ${minutes} ${minutes === 1 ? 'minute' : 'minutes'} tonight.`;
}
