import type { Day } from '../day.ts';
import type { StatementRead } from './statement-content.ts';

/** What became of a read, for a statement; `dayText` writes a day. */
export function outcomeWords({ outcome, why, forMissedOn }: Pick<StatementRead, 'outcome' | 'why' | 'forMissedOn'>, dayText: (day: Day) => string): string {
  const because = why ? `: ${why}` : '';
  const said = {
    given: 'Given',
    extra: 'Extra, beyond the promise',
    makegood: forMissedOn === null ? 'Makegood' : `Makegood for ${dayText(forMissedOn)}`,
    notRead: `Not read${because}`,
    cutShort: `Cut short${because}`,
    takenBack: `Taken back${because}`,
  };
  return said[outcome];
}

/** A clock of 24 hours as it is said here: `19:42` is `7:42 PM`. */
export function clockWords(clock: string): string {
  const [hour, minute] = clock.split(':') as [string, string];
  const hours = Number(hour);
  return `${hours % 12 === 0 ? 12 : hours % 12}:${minute} ${hours < 12 ? 'AM' : 'PM'}`;
}
