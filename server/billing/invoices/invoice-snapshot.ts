import type { InvoiceAmounts } from '../../domain/billing/invoice.ts';
import { taxByLine } from '../../domain/billing/line-tax.ts';
import type { BilledLine } from '../../domain/sponsorship/happening.ts';
import { dayText } from '../../platform/typesetting/amount-text.ts';
import type { InvoiceSheet } from '../../platform/typesetting/invoice-sheet.ts';

/** What an invoice said when it was issued; only what happened to it since is added when it is printed. */
export type InvoiceSnapshot = Omit<InvoiceSheet, 'mark' | 'paidCents' | 'balanceCents' | 'paper'>;

/** The parties of a contract as they are on the day of issue. */
export interface Parties {
  sellerId: string;
  sellerName: string;
  numberPrefix: string;
  sellerAddress: string | null;
  remitTo: string | null;
  taxIdentity: string | null;
  contactName: string | null;
  contactEmail: string | null;
  contactPhone: string | null;
  taxBasisPoints: number;
  termsDays: number;
  keepsBooksHere: boolean;
  payerId: string;
  payerName: string;
  payerAddress: string | null;
  payerEmail: string | null;
  exemptionNumber: string | null;
  exemptionExpiresOn: string | null;
  sponsorId: string;
  sponsorName: string;
  contractNumber: string | null;
  contractTitle: string;
  purchaseOrderNumber: string | null;
  locale: string;
  currency: string;
}

export const PARTIES_COLUMNS = `seller.id as "sellerId", seller.name as "sellerName", seller.number_prefix as "numberPrefix", seller.address as "sellerAddress",
    seller.remit_to as "remitTo", seller.tax_identity as "taxIdentity", seller.contact_name as "contactName", seller.contact_email as "contactEmail",
    seller.contact_phone as "contactPhone", seller.tax_basis_points as "taxBasisPoints", seller.terms_days as "termsDays",
    seller.keeps_books_here as "keepsBooksHere", payer.id as "payerId", payer.name as "payerName", payer.address as "payerAddress",
    payer.email as "payerEmail", payer.exemption_number as "exemptionNumber", payer.exemption_expires_on as "exemptionExpiresOn",
    sponsor.id as "sponsorId", sponsor.name as "sponsorName", contract.number as "contractNumber", contract.title as "contractTitle",
    contract.purchase_order_number as "purchaseOrderNumber", department.locale, department.currency`;

export const PARTIES_FROM = `from contract join department on department.id = contract.department_id
    join seller on seller.department_id = contract.department_id and seller.id = contract.seller_id
    join payer on payer.department_id = contract.department_id and payer.id = contract.payer_id
    join sponsor on sponsor.department_id = contract.department_id and sponsor.id = contract.sponsor_id`;

export const PARTIES = `select ${PARTIES_COLUMNS} ${PARTIES_FROM} where contract.department_id = $1 and contract.id = $2`;

/** The rate that is charged: none while the payer's exemption certificate holds. */
export function taxOn(parties: Parties, issuedOn: string): { basisPoints: number; exemptionReason: string | null } {
  const { exemptionNumber, exemptionExpiresOn, taxBasisPoints } = parties;
  const isExempt = exemptionNumber !== null && (exemptionExpiresOn === null || exemptionExpiresOn >= issuedOn);
  if (!isExempt) return { basisPoints: taxBasisPoints, exemptionReason: null };
  const until = exemptionExpiresOn === null ? '' : `, valid through ${dayText(exemptionExpiresOn, parties.locale)}`;
  return { basisPoints: 0, exemptionReason: `Exempt from sales tax, certificate ${exemptionNumber}${until}` };
}

/** What is said where a certificate no longer holds and tax is charged again; null where there is nothing to say. */
export function taxNoteOf(parties: Parties, issuedOn: string): string | null {
  const { exemptionNumber, exemptionExpiresOn, taxBasisPoints } = parties;
  if (taxBasisPoints === 0 || exemptionNumber === null || exemptionExpiresOn === null || exemptionExpiresOn >= issuedOn) return null;
  return `Sales tax is charged because exemption certificate ${exemptionNumber} expired on ${dayText(exemptionExpiresOn, parties.locale)}.`;
}

type Head = 'sellerName' | 'sellerAddress' | 'remitTo' | 'taxIdentity' | 'contactName' | 'contactEmail' | 'contactPhone' | 'payerName' | 'payerAddress' | 'payerEmail' | 'termsDays' | 'locale' | 'currency';

/** Who asks whom for money, and when it is due, as every document of a seller says it. */
export function headOf(parties: Pick<Parties, Head>): Pick<InvoiceSnapshot, 'locale' | 'currency' | 'seller' | 'payer' | 'terms'> {
  return {
    locale: parties.locale,
    currency: parties.currency,
    seller: {
      name: parties.sellerName,
      address: parties.sellerAddress,
      remitTo: parties.remitTo,
      taxIdentity: parties.taxIdentity,
      contactName: parties.contactName,
      contactEmail: parties.contactEmail,
      contactPhone: parties.contactPhone,
    },
    payer: { name: parties.payerName, address: parties.payerAddress, email: parties.payerEmail },
    terms: parties.termsDays === 0 ? 'Due on receipt' : `Net ${parties.termsDays}`,
  };
}

export function snapshotOf(
  parties: Parties,
  document: { number: string; issuedOn: string; dueOn: string; lines: readonly BilledLine[]; amounts: InvoiceAmounts; note: string | null },
): InvoiceSnapshot {
  const tax = taxOn(parties, document.issuedOn);
  const taxes = taxByLine(document.lines, tax.basisPoints);
  return {
    kind: 'invoice',
    number: document.number,
    ...headOf(parties),
    sponsorName: parties.sponsorName,
    contractNumber: parties.contractNumber,
    contractTitle: parties.contractTitle,
    purchaseOrderNumber: parties.purchaseOrderNumber,
    issuedOn: document.issuedOn,
    dueOn: document.dueOn,
    creditsNumber: null,
    reason: null,
    lines: document.lines.map(({ text, quantity, unitCents, amountCents }, place) => ({
      description: text,
      quantity: quantity ?? 1,
      unitCents: unitCents ?? null,
      amountCents,
      taxCents: taxes[place]!,
    })),
    ...document.amounts,
    taxBasisPoints: tax.basisPoints,
    exemptionReason: tax.exemptionReason,
    note: document.note,
  };
}
