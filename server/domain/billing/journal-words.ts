/** What the journal says of each kind of happening; what is not here is said by its own name. */
const WORDS: Readonly<Record<string, string>> = {
  invoiced: 'Invoice', invoiceVoided: 'Invoice voided', paymentReceived: 'Payment received', creditApplied: 'Credit applied to an invoice',
  creditUnapplied: 'Credit taken off an invoice', readCounted: 'Read given', readTakenBack: 'Read taken back', makegoodGiven: 'Makegood given',
  occurrenceCounted: 'Mention given', gamePlayed: 'Game played', gameCancelled: 'Game cancelled', readsCredited: 'Credit for reads', readsReleased: 'Reads released',
  readsForfeited: 'Reads forfeited', allowanceGiven: 'Allowance', discountTaken: 'Early-payment discount', overbillingCredited: 'Credit for what was billed too much',
  minimumClaimed: 'Least amount claimed', benefitDelivered: 'Benefit delivered', benefitEarnedThrough: 'Benefit earned', goodsReceived: 'Goods received',
  openingPosition: 'Taken over at the start', priceLowered: 'Price lowered', ended: 'Contract ended', carriedOut: 'Carried into the next term', carriedIn: 'Carried in from the last term',
};

/** `creditMemoIssued` is "Credit memo issued". */
export function journalWords(kind: string): string {
  const plain = kind.replace(/([A-Z])/g, ' $1').toLowerCase();
  return WORDS[kind] ?? plain.charAt(0).toUpperCase() + plain.slice(1);
}
