import { Inject, Injectable } from '@nestjs/common';
import { CreditMemoViews } from '../../billing/credits/credit-memo-view.service.ts';
import { DepositSlipViews } from '../../billing/receipts/deposit-slip-view.service.ts';
import { InvoiceViews } from '../../billing/invoices/invoice-view.service.ts';
import { PaymentViews } from '../../billing/payments/payment-view.service.ts';
import { ReceiptViews } from '../../billing/receipts/receipt-view.service.ts';
import { amountSought } from '../../domain/billing/amount-sought.ts';
import type { FoundBy, FoundDocument, FoundDocuments } from './document.dto.ts';

const MOST_OF_A_KIND = 25;

/** `amounts`: all by which it may be found, in cents. */
type Found = Omit<FoundDocument, 'foundBy'> & { sponsorName: string | null; amounts: number[] };

const ORDER: readonly FoundBy[] = ['number', 'amount', 'reference', 'name'];

/** Looks for invoices, credit memos, payments, receipts and deposit slips by number, amount, name or check number. */
@Injectable()
export class DocumentsService {
  constructor(
    @Inject(InvoiceViews) private readonly invoices: InvoiceViews,
    @Inject(CreditMemoViews) private readonly memos: CreditMemoViews,
    @Inject(PaymentViews) private readonly payments: PaymentViews,
    @Inject(ReceiptViews) private readonly receipts: ReceiptViews,
    @Inject(DepositSlipViews) private readonly slips: DepositSlipViews,
  ) {}

  async find(q: string): Promise<FoundDocuments> {
    const amountCents = amountSought(q);
    const kinds = [await this.ofInvoices(q), await this.ofMemos(q), await this.ofPayments(q), await this.ofReceipts(q), await this.ofSlips(q)];
    const data = kinds
      .flatMap((kind) => kind.data)
      .map((found) => ({ ...shown(found), foundBy: foundBy(found, q, amountCents) }))
      .sort((one, other) => ORDER.indexOf(one.foundBy) - ORDER.indexOf(other.foundBy) || (one.on < other.on ? 1 : one.on > other.on ? -1 : one.number < other.number ? 1 : -1));
    return { data, total: kinds.reduce((sum, kind) => sum + kind.total, 0), amountCents };
  }

  private async ofInvoices(q: string): Promise<{ data: Found[]; total: number }> {
    const { data, total } = await this.invoices.list({ q, perPage: MOST_OF_A_KIND });
    return { total, data: data.map((one) => ({ kind: 'invoice', id: one.id, number: one.number, on: one.issuedOn, name: one.payerName, amountCents: one.grossCents, state: one.state, reference: null, sponsorName: one.sponsorName, amounts: [one.grossCents, one.netCents, one.balanceCents] })) };
  }

  private async ofMemos(q: string): Promise<{ data: Found[]; total: number }> {
    const { data, total } = await this.memos.list({ q, perPage: MOST_OF_A_KIND });
    const state = (leftCents: number) => (leftCents > 0 ? 'toApply' : 'applied');
    return { total, data: data.map((one) => ({ kind: 'creditMemo', id: one.id, number: one.number, on: one.issuedOn, name: one.payerName, amountCents: one.grossCents, state: state(one.unappliedCents), reference: null, sponsorName: one.sponsorName, amounts: [one.grossCents, one.netCents] })) };
  }

  private async ofPayments(q: string): Promise<{ data: Found[]; total: number }> {
    const { data, total } = await this.payments.list({ q, perPage: MOST_OF_A_KIND });
    const state = (payment: (typeof data)[number]) => (payment.isInDrawer ? 'inTheDrawer' : payment.unappliedCents > 0 ? 'toApply' : 'applied');
    return { total, data: data.map((one) => ({ kind: 'payment', id: one.id, number: one.number, on: one.receivedOn, name: one.payerName, amountCents: one.amountCents, state: state(one), reference: one.reference, sponsorName: one.sponsorName, amounts: [one.amountCents] })) };
  }

  private async ofReceipts(q: string): Promise<{ data: Found[]; total: number }> {
    const { data, total } = await this.receipts.list({ q, perPage: MOST_OF_A_KIND }, ['bookkeeper']);
    return { total, data: data.map((one) => ({ kind: 'receipt', id: one.id, number: one.number, on: one.takenOn, name: one.fromWhom, amountCents: one.amountCents, state: one.state, reference: one.reference, sponsorName: one.sponsorName, amounts: [one.amountCents] })) };
  }

  private async ofSlips(q: string): Promise<{ data: Found[]; total: number }> {
    const { data, total } = await this.slips.list({ q, perPage: MOST_OF_A_KIND });
    const state = (cents: number) => (cents === 0 ? 'toTheCent' : cents > 0 ? 'over' : 'short');
    return { total, data: data.map((one) => ({ kind: 'depositSlip', id: one.id, number: one.number, on: one.depositedOn, name: one.sellerName, amountCents: one.countedCents, state: state(one.differenceCents), reference: null, sponsorName: null, amounts: [one.countedCents, one.expectedCents] })) };
  }
}

function shown({ sponsorName: _, amounts: __, ...document }: Found): Omit<FoundDocument, 'foundBy'> {
  return document;
}

/** What has none of them itself was found by the check that pays it or that lies with it. */
function foundBy(found: Found, q: string, amountCents: number | null): FoundBy {
  const sought = q.toLowerCase();
  if (found.number.toLowerCase().includes(sought)) return 'number';
  if (amountCents !== null && found.amounts.includes(amountCents)) return 'amount';
  return [found.name, found.sponsorName ?? ''].some((name) => name.toLowerCase().includes(sought)) ? 'name' : 'reference';
}
