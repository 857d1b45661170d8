export interface Application {
  id: string;
  invoiceId: string;
  invoiceNumber: string;
  amountCents: number;
  appliedOn: string;
  takesBackApplicationId?: string | null;
  takenBack?: boolean;
}

export interface Payment {
  id: string;
  number: string;
  sellerId: string;
  sellerName: string;
  payerId: string;
  payerName: string;
  receivedOn: string;
  method: string;
  reference: string | null;
  amountCents: number;
  note: string | null;
  appliedCents: number;
  unappliedCents: number;
  applications?: Application[];
}
