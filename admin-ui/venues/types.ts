export interface Floor {
  id: string;
  name: string;
}

export interface Venue {
  id: string;
  version: number;
  name: string;
  sayAs: string | null;
  isOurs: boolean;
  address: string | null;
  exitsText: string | null;
  defibrillatorPlace: string | null;
  evacuationText: string | null;
  weatherText: string | null;
  injuryText: string | null;
  threatText: string | null;
  floors: Floor[];
}
