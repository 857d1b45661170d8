export interface Payer {
  id: string;
  version: number;
  sponsorId: string | null;
  sponsorName?: string | null;
  name: string;
  email: string | null;
  address: string | null;
  exemptionNumber: string | null;
  exemptionExpiresOn: string | null;
}
