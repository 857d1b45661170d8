export interface RateCardLine {
  id: string;
  version: number;
  seasonId: string;
  seasonName?: string;
  readKindId: string | null;
  readKindName: string | null;
  benefitName: string | null;
  priceCents: number;
}
