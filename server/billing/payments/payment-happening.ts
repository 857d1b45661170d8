import type { Cents } from '../../domain/money.ts';
import { amountInSentence, centsOf } from '../../domain/money.ts';

/** A payment or a credit memo. */
type CreditUsed = { paymentId: string } | { creditMemoId: string };

type Use = CreditUsed & {
  number: string;
  invoiceId: string;
  invoiceNumber: string;
  amountCents: Cents;
  /** numbers of closed contracts that are open again by it */
  contractsOpened?: readonly string[];
};

/** What happens to money received and to what is open, beside the contract; stored with its event, as a contract's happenings are. */
export type PaymentHappening =
  | { kind: 'paymentReceived'; paymentId: string; number: string; method: string; amountCents: Cents }
  | ({ kind: 'creditApplied' | 'creditUnapplied' } & Use)
  | { kind: 'paymentReturned'; paymentId: string; number: string; amountCents: Cents; bankFeeCents: Cents; isMistake: boolean; reason: string; contractsOpened?: readonly string[] }
  | { kind: 'creditRefunded'; creditId: string; number: string; isMemo: boolean; method: string; amountCents: Cents }
  | { kind: 'receiptsDeposited'; depositSlipId: string; number: string; expectedCents: Cents; countedCents: Cents; differenceCents: Cents }
  | { kind: 'charged'; invoiceId: string; invoiceNumber: string; description: string; amountCents: Cents }
  | { kind: 'writtenOff'; invoiceId: string; invoiceNumber: string; amountCents: Cents; reason: string; bySamePerson: boolean }
  | { kind: 'recovered'; invoiceId: string; invoiceNumber: string; amountCents: Cents; reason: string };

type Kind = PaymentHappening['kind'];
type Of<K extends Kind> = K extends 'creditApplied' | 'creditUnapplied' ? Use : Extract<PaymentHappening, { kind: K }>;

const METHODS: Readonly<Record<string, string>> = { cash: 'in cash', check: 'by check', card: 'by card', transfer: 'by transfer', opening: 'before the start' };
const money = (cents: Cents) => amountInSentence(cents);
const creditName = (credit: CreditUsed & { number: string }) => `${'creditMemoId' in credit ? 'credit memo' : 'payment'} ${credit.number}`;
const openedAgain = (contracts: readonly string[] = []) => contracts.map((contract) => ` Contract ${contract}, which was closed, is open again.`).join('');
const by = (method: string) => (METHODS[method] ? ` ${METHODS[method]}` : '');

const SENTENCES: { [K in Kind]: (happening: Of<K>) => string } = {
  paymentReceived: ({ number, amountCents, method }) => `Payment ${number} of ${money(amountCents)} was received${by(method)}.`,
  creditApplied: (use) => `${money(use.amountCents)} of ${creditName(use)} was applied to invoice ${use.invoiceNumber}.`,
  creditUnapplied: (use) => `${money(use.amountCents)} of ${creditName(use)} was taken off invoice ${use.invoiceNumber} again.${openedAgain(use.contractsOpened)}`,
  paymentReturned: ({ number, amountCents, bankFeeCents, isMistake, reason, contractsOpened }) =>
    (isMistake
      ? `Payment ${number} of ${money(amountCents)} was recorded by mistake and is undone: ${sentence(reason)}`
      : `Payment ${number} of ${money(amountCents)} came back from the bank${bankFeeCents > 0 ? `, which charged ${money(bankFeeCents)}` : ''}: ${sentence(reason)}`) + openedAgain(contractsOpened),
  creditRefunded: ({ number, isMemo, amountCents, method }) => `${money(amountCents)} of ${isMemo ? 'credit memo' : 'payment'} ${number} was paid back${by(method)}.`,
  receiptsDeposited: ({ number, countedCents, differenceCents }) =>
    `${money(countedCents)} went to the bank with deposit slip ${number}${differenceCents === 0 ? '' : `, ${money(centsOf(Math.abs(differenceCents)))} ${differenceCents > 0 ? 'over' : 'short'}`}.`,
  charged: ({ invoiceNumber, description, amountCents }) => `Charge ${invoiceNumber} of ${money(amountCents)} was issued: ${sentence(description)}`,
  writtenOff: ({ invoiceNumber, amountCents, reason, bySamePerson }) =>
    `${money(amountCents)} of invoice ${invoiceNumber} was written off${bySamePerson ? ' (asked for and approved by the same person)' : ''}: ${sentence(reason)}`,
  recovered: ({ invoiceNumber, amountCents, reason }) => `${money(amountCents)} of invoice ${invoiceNumber} stands open again after it was written off: ${sentence(reason)}`,
};

/** One plain sentence for a statement. */
export function paymentSentence(happening: PaymentHappening): string {
  return (SENTENCES[happening.kind] as (happening: PaymentHappening) => string)(happening);
}

export function isPaymentHappening(happening: { kind: string }): happening is PaymentHappening {
  return happening.kind in SENTENCES;
}

/** Somebody's words at the end of a sentence, with one full stop. */
function sentence(words: string): string {
  return `${words.trim().replace(/\.+$/, '')}.`;
}
