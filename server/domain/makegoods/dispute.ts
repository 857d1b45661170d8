import { refuse } from '../refusals.ts';

export const DISPUTE_OUTCOMES = ['stands', 'takenBack', 'added', 'makegood'] as const;
export type DisputeOutcome = (typeof DISPUTE_OUTCOMES)[number];

/**
 * Whether a question can be answered so: what was given can stand or be taken back, what the log does not have can be added.
 *
 * @param isGiven the question is about a read that the log has
 * @throws Refused `dispute-without-read`, `dispute-of-a-read`
 */
export function checkOutcome(outcome: DisputeOutcome, isGiven: boolean): void {
  if (outcome === 'takenBack' && !isGiven) refuse('dispute-without-read');
  if (outcome === 'added' && isGiven) refuse('dispute-of-a-read');
}
