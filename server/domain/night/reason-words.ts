import type { NotReadReason } from './log-entry.ts';

/** Each reason as it stands in a sentence after a colon. */
export const REASON_WORDS: Readonly<Record<NotReadReason, string>> = {
  noTime: 'no time',
  playResumed: 'play resumed',
  injury: 'an injury',
  emergency: 'an emergency',
  equipment: 'the equipment',
  copyMissing: 'no words to read',
  heldByDirector: 'held by the director',
  gameEnded: 'the game ended',
  forgotten: 'forgotten',
  other: 'another reason',
};

/** A reason in words: one of the list, or what somebody wrote instead; an entry's own words follow those of the list. */
export function reasonInWords(reason: string | null, detail: Readonly<Record<string, unknown>> | null = null): string {
  const known = reason === null ? 'no reason given' : ((REASON_WORDS as Readonly<Record<string, string>>)[reason] ?? reason);
  const own = detail?.['words'];
  if (typeof own !== 'string' || own.trim() === '') return known;
  return reason === 'other' || reason === null ? own.trim() : `${known}, ${own.trim()}`;
}
