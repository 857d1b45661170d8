import { amountText, centsOf } from '../money.ts';
import { refuse } from '../refusals.ts';
import { amountsOf } from './contract-amounts.ts';
import { lowerPrice } from './credit-price.ts';
import { earnsOverDays } from './days-earned.ts';
import type { HappeningOf } from './happening.ts';
import { isPricedByRead } from './line-values.ts';
import { checkAmount } from './line-of.ts';
import type { LinePosition, Position } from './position.ts';
import { readsOfLine, readsOfSlot, settledOrdinals } from './slot-reads.ts';

/** Ends a contract before its time: what is owed is no longer promised, and its value no longer agreed. */
export function end(position: Position, happening: HappeningOf<'ended'>): void {
  if (position.ended) refuse('contract-already-ended');
  lowerPrice(position, happening, () => {
    position.lines.forEach(endLine);
    if (!happening.keepsMinimum) position.minimumWaived = true;
  });
  position.ended = true;
  if (happening.feeCents === undefined || happening.feeCents === 0) return;
  checkAmount(happening.feeCents);
  position.feesCents += happening.feeCents;
}

function endLine(line: LinePosition): void {
  const settled = settledOrdinals(line);
  const owed = line.slots.map((slot) => readsOfSlot(line, slot));
  if (!isPricedByRead(line.terms)) line.values.length = settled;
  line.slots.forEach((slot, place) => {
    const reads = owed[place];
    if (!reads) return;
    if (line.terms.kind === 'reads' && line.terms.counting === 'onOccurrence') slot.endedAt = reads.promised - reads.owed;
    else slot.promised -= reads.owed;
  });
}

/**
 * Closes a settled contract.
 *
 * @throws Refused `close-with-reads-owed`, `close-with-open-value`, `close-with-something-to-bill`, `close-with-open-balance`
 */
export function close(position: Position, { receivableCents, unappliedCents }: HappeningOf<'closed'>): void {
  const amounts = amountsOf(position);
  checkNothingOwed(position);
  if (amounts.openCents !== 0) refuse('close-with-open-value', { open: amountText(centsOf(amounts.openCents)) });
  if (amounts.toBillCents !== 0) refuse('close-with-something-to-bill', { toBill: amountText(centsOf(amounts.toBillCents)) });
  if (amounts.contractBalanceCents !== 0 || receivableCents !== 0 || unappliedCents !== 0) refuse('close-with-open-balance');
  position.closed = true;
}

/** @throws Refused `close-with-reads-owed`, naming each line with what is left of it */
export function checkNothingOwed({ lines }: Position): void {
  const owed = lines.flatMap((line) => {
    const count = readsOfLine(line).owed;
    if (count === 0) return [];
    return [earnsOverDays(line) ? `${count} ${count === 1 ? 'day' : 'days'} of ${line.terms.name}` : `${count} of ${line.terms.name}`];
  });
  if (owed.length > 0) refuse('close-with-reads-owed', { owed: owed.join(', ') });
}

export function reopen(position: Position): void {
  if (!position.closed) refuse('contract-not-closed');
  position.closed = false;
}
