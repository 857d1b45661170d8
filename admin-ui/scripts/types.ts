export interface Script {
  id: string;
  version: number;
  moment: string;
  sport: string | null;
  language: 'en' | 'es';
  title: string;
  text: string;
  isOn: boolean;
  place: number;
}
