import { refuse } from '../refusals.ts';
import type { Drawer } from './payment.ts';

/** Whose hands money went through. */
export interface Taking {
  /** who took it or wrote its receipt */
  takenByPersonId: string | null;
}

/**
 * A check is known by its number; cash has none.
 *
 * @throws Refused `check-number-missing`
 */
export function checkReceipt({ method, reference }: { method: string; reference?: string | null }): void {
  if (method === 'check' && !reference?.trim()) refuse('check-number-missing', {}, { reference: 'is needed for a check' });
}

/**
 * Only what can lie in a drawer lies there: a card and a transfer are at the bank already.
 *
 * @throws Refused `drawer-holds-cash-and-checks`
 */
export function checkDrawer(method: string, drawer: Drawer): void {
  if (drawer === 'undepositedReceipts' && method !== 'cash' && method !== 'check') refuse('drawer-holds-cash-and-checks');
}

/**
 * Whoever took money in neither deposits it nor applies it to invoices, unless the department says otherwise.
 *
 * @param others the names of those who may
 * @throws Refused `taker-may-not-post`
 * @source common practice of cash handling, no source
 */
export function checkTaker(takings: readonly Taking[], personId: string | null, takerMayPost: boolean, others: readonly string[]): void {
  if (takerMayPost || !takings.some((taking) => taking.takenByPersonId !== null && taking.takenByPersonId === personId)) return;
  refuse('taker-may-not-post', { who: others.length > 0 ? `${listed(others)} may.` : 'Nobody else here has that right yet: a director adds a bookkeeper, or allows it on the page of the department.' });
}

function listed(names: readonly string[]): string {
  return names.length === 1 ? names[0]! : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;
}
