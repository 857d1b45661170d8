import { NO_MONEY } from '../../domain/money.ts';
import type { Cents } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import { headOf } from '../invoices/invoice-snapshot.ts';
import type { InvoiceSnapshot } from '../invoices/invoice-snapshot.ts';

/** Who charges and who is charged, as they are on the day of issue. */
export interface ChargeParties {
  sellerId: string;
  sellerName: string;
  numberPrefix: string;
  sellerAddress: string | null;
  remitTo: string | null;
  taxIdentity: string | null;
  contactName: string | null;
  contactEmail: string | null;
  contactPhone: string | null;
  termsDays: number;
  keepsBooksHere: boolean;
  payerId: string;
  payerName: string;
  payerAddress: string | null;
  payerEmail: string | null;
  payerSponsorId: string | null;
  sponsorId: string | null;
  sponsorName: string | null;
  contractId: string | null;
  contractNumber: string | null;
  contractTitle: string | null;
  contractSellerId: string | null;
  contractPayerId: string | null;
  contractSponsorId: string | null;
  contractIsClosed: boolean;
  locale: string;
  currency: string;
}

/** `$2` seller, `$3` payer, `$4` contract or null; what is not there comes back as null. */
export const CHARGE_PARTIES = `select seller.id as "sellerId", seller.name as "sellerName", seller.number_prefix as "numberPrefix", seller.address as "sellerAddress",
    seller.remit_to as "remitTo", seller.tax_identity as "taxIdentity", seller.contact_name as "contactName", seller.contact_email as "contactEmail",
    seller.contact_phone as "contactPhone", seller.terms_days as "termsDays", seller.keeps_books_here as "keepsBooksHere",
    payer.id as "payerId", payer.name as "payerName", payer.address as "payerAddress", payer.email as "payerEmail", payer.sponsor_id as "payerSponsorId",
    sponsor.id as "sponsorId", sponsor.name as "sponsorName", contract.id as "contractId", contract.number as "contractNumber", contract.title as "contractTitle",
    contract.seller_id as "contractSellerId", contract.payer_id as "contractPayerId", contract.sponsor_id as "contractSponsorId",
    exists (select from term where term.department_id = $1 and term.contract_id = contract.id and term.closed_on is not null) as "contractIsClosed", department.locale, department.currency
  from department
    left join seller on seller.department_id = $1 and seller.id = $2
    left join payer on payer.department_id = $1 and payer.id = $3
    left join contract on contract.department_id = $1 and contract.id = $4
    left join sponsor on sponsor.department_id = $1 and sponsor.id = coalesce(contract.sponsor_id, payer.sponsor_id)
  where department.id = $1`;

/** @throws Refused `contract-of-another-seller`, `contract-of-another-payer` */
export function checkContractOf({ contractId, contractSellerId, contractPayerId, contractSponsorId, sellerId, payerId, payerSponsorId }: ChargeParties): void {
  if (contractId === null) return;
  if (contractSellerId !== sellerId) refuse('contract-of-another-seller');
  if (contractPayerId !== payerId && contractSponsorId !== payerSponsorId) refuse('contract-of-another-payer');
}

export function chargeSnapshot(parties: ChargeParties, charge: { number: string; issuedOn: string; dueOn: string; description: string; amountCents: Cents }): InvoiceSnapshot {
  const { number, issuedOn, dueOn, description, amountCents } = charge;
  return {
    kind: 'charge',
    number,
    ...headOf(parties),
    sponsorName: parties.sponsorName,
    contractNumber: parties.contractNumber,
    contractTitle: parties.contractTitle,
    purchaseOrderNumber: null,
    issuedOn,
    dueOn,
    creditsNumber: null,
    reason: null,
    lines: [{ description, quantity: 1, unitCents: null, amountCents }],
    netCents: amountCents,
    taxCents: NO_MONEY,
    grossCents: amountCents,
    taxBasisPoints: 0,
    exemptionReason: null,
    note: null,
  };
}
