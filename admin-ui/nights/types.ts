export interface NightGame {
  id: string;
  label: string;
  level: string;
  startsAtShown: string;
  status: string;
}

export interface PersonOfNight {
  id?: string;
  role: string;
  name: string;
  sayAs: string | null;
  arrivesAt: string | null;
  note: string | null;
}

export interface Night {
  id: string;
  version: number;
  heldOn: string;
  venueId: string;
  floorId: string | null;
  title: string;
  doorsAt: string | null;
  note: string | null;
  venueName: string;
  floorName: string | null;
  games: NightGame[];
  state: 'open' | 'signedOff';
  packetIssued: number | null;
  packetOutOfDate: boolean;
  readiness: { ready: boolean; missing: string[] };
  placementCount: number;
  people?: PersonOfNight[];
}

export interface Placement {
  id: string;
  commitmentId: string;
  gameId: string;
  windowKey: string;
  place: number;
  isPinned: boolean;
  sponsorName: string;
  sponsorId?: string;
  contractId?: string;
  readKindName: string;
  gameLabel?: string;
}

export interface LogEntryView {
  id: string;
  number: number;
  kind: string;
  outcome: 'given' | 'cutShort' | 'notRead' | null;
  reason: string | null;
  cueKey: string | null;
  gameId?: string | null;
  occurrence: number | null;
  commitmentId: string | null;
  sponsorName: string | null;
  label: string | null;
  playerNumber?: string | null;
  happeningEntryId?: string | null;
  occurredAt: string;
  loggedByName: string | null;
  takenBack: boolean;
  takesBackEntryId: string | null;
  sentence: string;
}

export interface NightLog {
  entries: LogEntryView[];
  state: 'open' | 'signedOff';
  toCount: unknown;
}
