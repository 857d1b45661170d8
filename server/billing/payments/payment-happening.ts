import type { Cents } from '../../domain/money.ts';
import { amountText } from '../../domain/money.ts';

/** What happens to money received; stored with its event, as a contract's happenings are. */
export type PaymentHappening =
  | { kind: 'paymentReceived'; paymentId: string; number: string; method: string; amountCents: Cents }
  | ({ kind: 'creditApplied' | 'creditUnapplied'; number: string; invoiceId: string; invoiceNumber: string; amountCents: Cents } & CreditUsed);

/** A payment or a credit memo. */
type CreditUsed = { paymentId: string } | { creditMemoId: string };

const creditName = (credit: CreditUsed & { number: string }) => `${'creditMemoId' in credit ? 'credit memo' : 'payment'} ${credit.number}`;

const METHODS: Readonly<Record<string, string>> = { cash: 'in cash', check: 'by check', card: 'by card', transfer: 'by transfer', opening: 'before the start' };

/** One plain sentence for a statement. */
export function paymentSentence(happening: PaymentHappening): string {
  const amount = amountText(happening.amountCents);
  switch (happening.kind) {
    case 'paymentReceived':
      return `Payment ${happening.number} of ${amount} was received ${METHODS[happening.method] ?? ''}.`;
    case 'creditApplied':
      return `${amount} of ${creditName(happening)} was applied to invoice ${happening.invoiceNumber}.`;
    case 'creditUnapplied':
      return `${amount} of ${creditName(happening)} was taken off invoice ${happening.invoiceNumber} again.`;
  }
}

export function isPaymentHappening(happening: { kind: string }): happening is PaymentHappening {
  return happening.kind === 'paymentReceived' || happening.kind === 'creditApplied' || happening.kind === 'creditUnapplied';
}
