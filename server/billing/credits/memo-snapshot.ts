import type { MemoLine } from '../../domain/billing/memo-lines.ts';
import type { Day } from '../../domain/day.ts';
import type { InvoiceSnapshot, Parties } from '../invoices/invoice-snapshot.ts';

export interface CreditedInvoice extends Pick<Parties, 'payerId' | 'payerName' | 'payerAddress' | 'payerEmail'> {
  id: string;
  number: string;
  issuedOn: Day;
  taxBasisPoints: number;
}

export interface MemoToPrint {
  number: string;
  issuedOn: string;
  reason: string;
  netCents: number;
  taxCents: number;
  lines: readonly MemoLine[];
  invoices: readonly CreditedInvoice[];
}

/** What a credit memo says when it is issued. Its tax is that of the invoices, whatever the rate is today. */
export function memoSnapshot(parties: Parties, memo: MemoToPrint): InvoiceSnapshot {
  const rates = [...new Set(memo.invoices.map((invoice) => invoice.taxBasisPoints))];
  const { sellerName, sellerAddress, remitTo, taxIdentity, contactName, contactEmail, contactPhone } = parties;
  return {
    kind: 'creditMemo',
    number: memo.number,
    locale: parties.locale,
    currency: parties.currency,
    seller: { name: sellerName, address: sellerAddress, remitTo, taxIdentity, contactName, contactEmail, contactPhone },
    payer: { name: parties.payerName, address: parties.payerAddress, email: parties.payerEmail },
    sponsorName: parties.sponsorName,
    contractNumber: parties.contractNumber,
    contractTitle: parties.contractTitle,
    purchaseOrderNumber: parties.purchaseOrderNumber,
    issuedOn: memo.issuedOn,
    dueOn: null,
    terms: null,
    creditsNumber: memo.invoices.map((invoice) => invoice.number).join(', ') || null,
    reason: memo.reason,
    lines: memo.lines.map(({ description, quantity, unitCents, amountCents }) => ({ description, quantity, unitCents, amountCents })),
    netCents: memo.netCents,
    taxBasisPoints: rates.length === 1 ? rates[0]! : 0,
    taxCents: memo.taxCents,
    exemptionReason: rates.length > 1 ? 'Tax as on the invoices' : null,
    grossCents: memo.netCents + memo.taxCents,
    note: null,
  };
}
