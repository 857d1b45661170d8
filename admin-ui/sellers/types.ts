export interface Seller {
  id: string;
  version: number;
  name: string;
  numberPrefix: string;
  address: string | null;
  remitTo: string | null;
  taxIdentity: string | null;
  contactName: string | null;
  contactEmail: string | null;
  contactPhone: string | null;
  taxBasisPoints: number;
  termsDays: number;
  keepsBooksHere: boolean;
}
