export interface Sponsor {
  id: string;
  version: number;
  name: string;
  sayAs: string | null;
  categoryId: string;
  categoryName: string;
  status: 'prospect' | 'active' | 'past';
  contactName: string | null;
  email: string | null;
  phone: string | null;
  address: string | null;
  lastContactOn: string | null;
  nextStep: string | null;
  nextStepOn: string | null;
  note: string | null;
  outsideId: string | null;
  contracts?: number;
}
