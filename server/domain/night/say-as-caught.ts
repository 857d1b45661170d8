import type { LogEntry } from './log-entry.ts';
import { standing } from './take-back.ts';

/** How a player's name is said, as a coach told the table. */
export interface SayAsCaught {
  readonly teamId: string;
  /** the number on the list */
  readonly number: string;
  /** null where only the number was typed */
  readonly name: string | null;
  readonly sayAs: string;
}

const word = (entry: Pick<LogEntry, 'detail'>, field: string): string | null => {
  const value = entry.detail?.[field];
  return typeof value === 'string' && value.trim() !== '' && value.trim().length <= 80 ? value.trim() : null;
};

/** What stands in a log of how names are said; of several for one number the last. */
export function sayAsCaught(entries: readonly Pick<LogEntry, 'id' | 'kind' | 'teamId' | 'playerNumber' | 'detail' | 'takesBackEntryId'>[]): SayAsCaught[] {
  const caught = new Map<string, SayAsCaught>();
  for (const entry of standing(entries)) {
    const number = word(entry, 'wornInstead') ?? entry.playerNumber;
    const sayAs = word(entry, 'sayAs');
    if (entry.kind !== 'worn' || entry.teamId === null || number === null || !/^\d{1,3}$/.test(number) || sayAs === null) continue;
    caught.set(`${entry.teamId} ${number}`, { teamId: entry.teamId, number, name: word(entry, 'name'), sayAs });
  }
  return [...caught.values()];
}
