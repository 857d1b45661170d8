export interface RosterPlayer {
  id?: string;
  playerId?: string;
  number: string;
  name: string;
  sayAs: string | null;
  announce: 'name' | 'numberOnly' | 'aMember' | 'silence';
  position: string | null;
  grade: string | null;
  isStarter: boolean;
}

export interface Team {
  id: string;
  version: number;
  seasonId: string;
  seasonName: string;
  schoolId: string;
  schoolName: string;
  name: string;
  level: string;
  headCoach: string | null;
  headCoachSayAs: string | null;
  label: string;
  rosterSize: number;
  roster?: RosterPlayer[];
  warnings?: { code: string; sentence: string }[];
}
