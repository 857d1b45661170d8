export interface Participant {
  id: string;
  teamId: string;
  place: number;
  isHome: boolean;
  score: number | null;
  teamName: string;
  schoolName: string;
  schoolId: string;
  nickname: string;
}

export interface Game {
  id: string;
  version: number;
  seasonId: string;
  sport: string;
  level: string;
  class: string;
  status: 'planned' | 'underWay' | 'suspended' | 'played' | 'postponed' | 'cancelled';
  announced: boolean;
  startsAt: string | null;
  playedOn: string;
  startsAfterGameId: string | null;
  startsAfterMinutes: number | null;
  hostSchoolId: string | null;
  windowsOwnedBy: 'us' | 'conference' | 'association';
  movedFromOn: string | null;
  statusNote: string | null;
  participants: Participant[];
  nightIds: string[];
  nightId: string | null;
  venueId?: string | null;
  floorId?: string | null;
  venueName: string | null;
  label: string;
  startsAtShown: string;
  moves?: string[];
}
