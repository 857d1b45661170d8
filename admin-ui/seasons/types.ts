export interface Season {
  id: string;
  version: number;
  name: string;
  sport: string;
  startsOn: string;
  endsOn: string;
}
