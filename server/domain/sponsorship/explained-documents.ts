import type { ExplainedRow, ExplainedSum } from './explanation.ts';
import { sumOf } from './line-values.ts';
import type { BilledDocument, Position } from './position.ts';

/** An invoice of the contract with what is open on it, in cents. */
export interface PaidDocument {
  number: string;
  grossCents: number;
  openCents: number;
}

const unlessZero = (...rows: ExplainedRow[]) => rows.filter((one) => one.amountCents !== 0);

const nameOf = ({ kind, number }: BilledDocument) =>
  kind === 'invoice' ? `Invoice ${number}` : kind === 'opening' ? 'Billed before the contract was taken over' : 'Billed in the term before and carried over';

/** By which documents it was billed, net of tax, and what was taken back of them. */
export function explainedDocuments(position: Position): ExplainedSum {
  const live = position.documents.filter((one) => !one.isVoid);
  const withoutInvoice = sumOf(position.memos.flatMap((memo) => memo.parts).filter((part) => part.invoiceId === undefined).map((part) => part.netCents));
  const carriedOut = sumOf(position.carries.filter((one) => one.billedCents > 0).map((one) => one.billedCents)) - sumOf(position.documents.map((one) => one.carriedCents));
  const rows = [
    ...live.flatMap((document) => [
      { words: nameOf(document), amountCents: document.netCents },
      ...unlessZero(
        { words: `Less credited on ${document.number}`, amountCents: -document.creditedCents },
        { words: `Less carried over from ${document.number}`, amountCents: -document.carriedCents },
        { words: `Less discount on ${document.number}`, amountCents: -document.discountCents },
      ),
    ]),
    ...unlessZero(
      { words: 'Goods received', amountCents: position.goodsCents },
      { words: 'Less credited of what was paid in goods', amountCents: -withoutInvoice },
      { words: 'Less carried over of what was paid in goods', amountCents: -carriedOut },
    ),
  ];
  const lead = rows.length === 0 ? 'Nothing is billed yet.' : 'Before tax. An invoice that was voided is left out.';
  return { key: 'billed', title: 'Billed', lead, rows, total: { words: 'Billed so far', amountCents: position.billedCents } };
}

/** Sales tax of the contract's own invoices; left out where none was charged. */
export function explainedTax({ documents, memos }: Position): ExplainedSum[] {
  const own = documents.filter((one) => !one.isVoid && one.kind === 'invoice' && one.taxCents > 0);
  if (own.length === 0) return [];
  const memoTaxCents = sumOf(memos.map((memo) => memo.taxCents));
  const discountTaxCents = sumOf(own.map((one) => one.discountTaxCents));
  const rows = [
    ...own.map((one) => ({ words: `On invoice ${one.number}`, amountCents: one.taxCents })),
    ...unlessZero({ words: 'Less tax of credit memos', amountCents: -memoTaxCents }, { words: 'Less tax of discounts', amountCents: -discountTaxCents }),
  ];
  const lead = 'Collected for the state; it is no revenue. Local rules and the business office decide what is taxed.';
  return [{ key: 'tax', title: 'Sales tax', lead, rows, total: { words: 'Tax of this contract', amountCents: sumOf(rows.map((one) => one.amountCents)) } }];
}

/** What is paid and what is not; left out where nothing was invoiced. */
export function explainedUnpaid(documents: readonly PaidDocument[], { documents: billed }: Position): ExplainedSum[] {
  if (documents.length === 0) return [];
  const rows = documents.flatMap(({ number, grossCents, openCents }) => [
    { words: `Invoice ${number}${billed.some((one) => one.number === number && one.taxCents > 0) ? ', with tax' : ''}`, amountCents: grossCents },
    ...unlessZero({ words: `Less paid, credited or given up on ${number}`, amountCents: openCents - grossCents }),
  ]);
  const unpaidCents = sumOf(documents.map((one) => one.openCents));
  return [{ key: 'unpaid', title: 'Unpaid', lead: 'What the payer still has to pay on invoices of this contract.', rows, total: { words: 'Unpaid', amountCents: unpaidCents } }];
}
