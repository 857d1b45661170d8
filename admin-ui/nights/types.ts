export type { PlacementView as Placement } from '../../server/planning/placement.dto.ts';
export type { GameOfNightView as NightGame, NightView as Night, PersonOfNightView as PersonOfNight } from '../../server/season/night.dto.ts';

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
