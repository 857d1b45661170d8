import { letterOf, oneLine } from './letter.ts';
import type { Letter, Signature, Writing } from './letter.ts';

const GREETING = (name: string) => `Hello ${oneLine(name)},`;
const ANSWER = 'If something on it is not right, please answer this letter.';
const CROSSED = 'If your payment is on its way already, thank you, and please disregard this letter.';

/** What the letters about an invoice have to tell. Amounts are whole cents, days `YYYY-MM-DD`. */
export interface InvoiceToTell {
  readonly number: string;
  readonly payerName: string;
  readonly what: string | null;
  readonly purchaseOrderNumber: string | null;
  readonly dueOn: string;
  readonly grossCents: number;
  readonly balanceCents: number;
  /** false for what was billed before the start here */
  readonly hasCopy: boolean;
}

export function invoiceLetter(invoice: InvoiceToTell, seller: Signature, write: Writing): Letter {
  const { grossCents, balanceCents } = invoice;
  return letterOf(`Invoice ${invoice.number} from ${seller.name}`, [
    GREETING(invoice.payerName),
    `Attached is invoice ${invoice.number}${ofWhat(invoice.what)}: ${write.amount(grossCents)}, due ${write.day(invoice.dueOn)}.`,
    balanceCents === grossCents ? null : stillOpen(balanceCents, write),
    invoice.purchaseOrderNumber && `Your purchase order: ${oneLine(invoice.purchaseOrderNumber)}`,
    `Where to pay stands on the invoice. Please write ${invoice.number} on the payment.`,
    ANSWER,
  ], seller);
}

/** @param daysPastDue whole days since the due day, one or more */
export function reminderLetter(invoice: InvoiceToTell, daysPastDue: number, seller: Signature, write: Writing): Letter {
  const { grossCents, balanceCents } = invoice;
  const open = balanceCents === grossCents ? `${write.amount(grossCents)} is still open.` : `${write.amount(balanceCents)} of ${write.amount(grossCents)} is still open.`;
  return letterOf(`Reminder: invoice ${invoice.number} from ${seller.name}`, [
    GREETING(invoice.payerName),
    `Invoice ${invoice.number}${ofWhat(invoice.what)} was due ${write.day(invoice.dueOn)}, ${daysPastDue === 1 ? 'one day' : `${daysPastDue} days`} ago. ${open}`,
    invoice.purchaseOrderNumber && `Your purchase order: ${oneLine(invoice.purchaseOrderNumber)}`,
    `${invoice.hasCopy ? 'A copy is attached. ' : ''}Please write ${invoice.number} on the payment.`,
    CROSSED,
  ], seller);
}

export function creditMemoLetter(
  memo: { readonly number: string; readonly payerName: string; readonly issuedOn: string; readonly grossCents: number; readonly reason: string | null; readonly creditsNumber: string | null },
  seller: Signature,
  write: Writing,
): Letter {
  const on = memo.creditsNumber === null ? '' : `, on invoice ${memo.creditsNumber}`;
  return letterOf(`Credit memo ${memo.number} from ${seller.name}`, [
    GREETING(memo.payerName),
    `Attached is credit memo ${memo.number} of ${write.day(memo.issuedOn)}: ${write.amount(memo.grossCents)} in your favor${on}.`,
    memo.reason && `Reason: ${oneLine(memo.reason)}`,
    ANSWER,
  ], seller);
}

export function receiptLetter(
  receipt: { readonly number: string; readonly fromWhom: string; readonly takenOn: string; readonly amountCents: number; readonly how: string; readonly whatFor: string | null },
  seller: Signature,
  write: Writing,
): Letter {
  return letterOf(`Receipt ${receipt.number} from ${seller.name}`, [
    GREETING(receipt.fromWhom),
    `Thank you. We received ${write.amount(receipt.amountCents)} (${oneLine(receipt.how)}) from you on ${write.day(receipt.takenOn)}${receipt.whatFor === null ? '' : ` for ${oneLine(receipt.whatFor)}`}. Receipt ${receipt.number} is attached.`,
  ], seller);
}

export function statementLetter(
  statement: { readonly sponsorName: string; readonly from: string; readonly to: string; readonly openCents: number },
  seller: Signature,
  write: Writing,
): Letter {
  return letterOf(`Your account with ${seller.name}`, [
    GREETING(statement.sponsorName),
    `Attached is your account from ${write.day(statement.from)} to ${write.day(statement.to)}: what was billed, what was paid, and what is open.`,
    statement.openCents === 0 ? 'Nothing is open today.' : `${write.amount(statement.openCents)} is open today.`,
    ANSWER,
  ], seller);
}

const ofWhat = (what: string | null): string => (what === null ? '' : ` for ${oneLine(what)}`);
const stillOpen = (cents: number, write: Writing): string => `${write.amount(cents)} of it is still open.`;
