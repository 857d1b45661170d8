import type { Cents } from '../../domain/money.ts';
import type { Credit } from '../credits/credit.service.ts';
import type { Invoice } from '../invoices/invoice.entity.ts';
import type { PaymentHappening } from './payment-happening.ts';

export const applicationRowOf = ({ kind, id }: Credit) => ({ paymentId: kind === 'payment' ? id : null, creditMemoId: kind === 'creditMemo' ? id : null });

/** @param opened the numbers of closed contracts that are open again by it */
export function applicationEventOf(kind: 'creditApplied' | 'creditUnapplied', credit: Credit, invoice: Invoice, amountCents: Cents, opened: readonly string[] = []) {
  const of = credit.kind === 'payment' ? { paymentId: credit.id } : { creditMemoId: credit.id };
  const happening: PaymentHappening = { kind, ...of, number: credit.number, invoiceId: invoice.id, invoiceNumber: invoice.number, amountCents, ...(opened.length > 0 ? { contractsOpened: opened } : {}) };
  return { cause: credit.kind, causeId: credit.id, happening, contractId: invoice.contractId, sellerId: credit.sellerId };
}
