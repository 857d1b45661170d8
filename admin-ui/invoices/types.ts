export interface InvoiceLine {
  place: number;
  description: string;
  quantity: number;
  unitCents: number | null;
  amountCents: number;
  commitmentId: string | null;
  tracedTo: unknown;
}

export interface Invoice {
  id: string;
  kind: 'invoice' | 'charge' | 'opening';
  number: string;
  sellerId: string;
  sellerName: string;
  payerId: string;
  payerName: string;
  sponsorId: string | null;
  sponsorName: string | null;
  contractId: string | null;
  contractNumber: string | null;
  purchaseOrderNumber: string | null;
  issuedOn: string;
  dueOn: string;
  netCents: number;
  taxBasisPoints: number;
  taxCents: number;
  grossCents: number;
  state: 'open' | 'partlyPaid' | 'paid' | 'overdue' | 'void';
  appliedCents: number;
  balanceCents: number;
  lines?: InvoiceLine[];
}
