/** Who may go past a "no", giving a reason: the director, or nobody because a law or a ledger would break. */
export type Override = 'director' | 'never';

export interface Refusal {
  /** the HTTP status the answer carries */
  status: 400 | 401 | 403 | 404 | 409 | 412 | 422 | 428 | 429;
  /** plain English; `{name}` is filled from the details */
  sentence: string;
  override: Override;
}

const no = (status: Refusal['status'], sentence: string, override: Override = 'never'): Refusal => ({ status, sentence, override });

/** Every "no" of the product, by room. Add a line to the room that says it. */
export const REFUSALS = {
  // everywhere
  'not-found': no(404, 'There is nothing here by that name.'),

  // ledger
  'entry-does-not-balance': no(422, 'This entry does not balance, so nothing was booked.'),
  'month-closed': no(422, 'The month of {day} is closed; book it on the first open day.'),

  // contracts: what stands in them
  'contract-without-lines': no(422, 'A contract needs at least one read or benefit.'),
  'contract-not-signed': no(422, 'This contract is not signed yet.'),
  'contract-already-signed': no(422, 'This contract is signed already.'),
  'contract-already-ended': no(422, 'This contract has ended already.'),
  'contract-closed': no(422, 'This contract is closed.'),
  'price-without-rates': no(422, 'All rates are zero, so the price cannot be shared out. Give at least one line a rate.'),
  'at-most-below-at-least': no(422, 'The most cannot be below the least.'),
  'unknown-line': no(422, 'This contract has no such line.'),
  'line-already-there': no(422, 'This contract already has that line.'),
  'game-needed': no(422, 'This line counts game by game, so the game is needed.'),
  'not-counted-by-occurrence': no(422, 'This line is not counted by what happens in the game.'),
  'not-a-read': no(422, 'This line is another benefit, not a read.'),
  'not-a-benefit': no(422, 'This line is a read, not another benefit.'),
  'benefit-earns-over-days': no(422, 'This benefit earns over its days, not on delivery.'),
  'benefit-earns-on-delivery': no(422, 'This benefit earns on its delivery, not over days.'),

  // contracts: what happens to them
  'count-not-above-zero': no(422, 'Give a whole number above zero.'),
  'amount-not-above-zero': no(422, 'Give an amount above zero.'),
  'read-counted-twice': no(409, 'This read is counted already.'),
  'read-taken-back-already': no(409, 'This read is not counted, or was taken back already.'),
  'occurrence-counted-twice': no(409, 'This happening is counted already.'),
  'occurrence-taken-back-already': no(409, 'This happening is not counted, or was taken back already.'),
  'more-than-owed': no(422, 'Only {owed} are still owed on this line.'),
  'more-than-promised': no(422, 'Only {open} of this benefit are still to be delivered.'),
  'fewer-than-settled': no(422, 'Already {settled} are given or settled, so the promise cannot go below that.'),
  'value-without-reads': no(422, 'An amount of {amountCents} cents would be left with no read to earn it.'),
  'more-than-open-value': no(422, 'Only {openCents} cents are still open on this contract.'),
  'more-than-earned': no(422, 'Only {earnedCents} cents were earned, so no more can be allowed for.'),
  'unknown-makegood': no(422, 'No such makegood was agreed.'),
  'makegood-all-given': no(422, 'All replacements of this makegood are given.'),
  'no-minimum-agreed': no(422, 'This contract names no least amount to bill.'),
  'minimum-already-billed': no(422, 'The least amount is taken into the books already.'),
  'not-in-kind': no(422, 'This contract is not paid in goods.'),
  'nothing-overbilled': no(422, 'Nothing is billed beyond what was agreed.'),
  'memo-needed': no(422, '{memoCents} cents of this are billed already, so a credit memo is needed.'),
  'days-go-backwards': no(422, 'This benefit has earned through {throughOn} already.'),
  'close-with-reads-owed': no(422, 'Reads are still owed. Give, make good, credit or end them first.'),
  'close-with-open-value': no(422, 'The contract still has {openCents} cents that nothing has earned.'),
  'close-with-something-to-bill': no(422, '{toBillCents} cents are still to be billed or credited.'),
  'close-with-open-balance': no(422, 'Invoices or credits of this contract are still open.'),
  'contract-not-closed': no(422, 'This contract is not closed.'),

  // billing
  'nothing-to-bill': no(422, 'Nothing is due to be billed through {throughDay}.'),
  'more-than-to-bill': no(422, 'Only {toBillCents} cents of this contract are still to be billed.'),
  'unknown-invoice': no(404, 'There is no such invoice.'),
  'invoice-already-void': no(409, 'This invoice is void already.'),
  'invoice-is-void': no(422, 'This invoice is void.'),
  'void-after-payment': no(422, 'Something was paid on this invoice, so it cannot be voided. Take the payment back first, or write a credit memo.'),
  'void-after-credit': no(422, 'A credit or discount stands against this invoice, so it cannot be voided.'),
  'void-after-write-off': no(422, 'This invoice was written off, so it cannot be voided.'),
  'void-after-carry-over': no(422, 'Part of this invoice was carried into the next term, so it cannot be voided.'),
  'more-than-balance': no(422, 'Only {balanceCents} cents are open on this invoice.'),
  'more-than-unapplied': no(422, 'Only {unappliedCents} cents of this credit are left.'),
  'payment-crosses-sellers': no(422, 'This payment went to another seller of record than the invoice.'),
  'payment-returned-already': no(409, 'This payment was returned already.'),
  'write-off-before-ending': no(422, 'End the part that was not earned first; only what was earned can be written off.'),
  'nothing-written-off': no(422, 'Nothing of this invoice was written off.'),
  'installments-without-shares': no(422, 'At least one installment needs a share above zero.'),
} as const satisfies Record<string, Refusal>;

export type RefusalCode = keyof typeof REFUSALS;

export type RefusalDetails = Readonly<Record<string, string | number>>;

/** The sentence of a refusal with its placeholders filled; one that has no detail stays as it is written. */
export function sentenceOfRefusal(code: RefusalCode, details: RefusalDetails = {}): string {
  return REFUSALS[code].sentence.replace(/\{(\w+)\}/g, (whole, name: string) =>
    name in details ? String(details[name]) : whole,
  );
}

/** A "no" with its code; `errors` is nested in the shape of the form it answers. */
export class Refused extends Error {
  override readonly name = 'Refused';

  constructor(
    readonly code: RefusalCode,
    readonly details: RefusalDetails = {},
    readonly errors?: Readonly<Record<string, unknown>>,
  ) {
    super(sentenceOfRefusal(code, details));
  }
}

/** @throws Refused always */
export function refuse(code: RefusalCode, details: RefusalDetails = {}, errors?: Readonly<Record<string, unknown>>): never {
  throw new Refused(code, details, errors);
}
