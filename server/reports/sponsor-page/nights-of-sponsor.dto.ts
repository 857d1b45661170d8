import type { Day } from '../../domain/day.ts';
import type { Instant } from '../../domain/instant.ts';
import type { ReadGiven } from '../fulfillment/fulfillment.dto.ts';

/** One read as its sponsor sees it. Reasons that somebody typed at the table stay in the office: they may name a student. */
export interface ReadOfSponsor {
  entryId: string | null;
  occurrence: number;
  contractId: string;
  commitmentId: string;
  readKindName: string;
  gameId: string | null;
  windowName: string | null;
  at: Instant | null;
  /** the sponsor's own words */
  copyTitle: string | null;
  copyVersionNumber: number | null;
  what: ReadGiven['what'];
  why: string | null;
  atTheTable: string | null;
  forMissedOn: Day | null;
  disputeId: string | null;
}

export interface NightOfSponsor {
  nightId: string;
  heldOn: Day;
  isSignedOff: boolean;
  games: { gameId: string; label: string; opponentName: string | null; status: string }[];
  attendance: number | null;
  attendanceHow: 'tickets' | 'counted' | 'estimated' | 'signOff' | null;
  reads: ReadOfSponsor[];
  /** what is planned and still to come */
  planned: { readKindName: string; count: number }[];
}

/** The first night first. */
export interface NightsOfSponsorView {
  nights: NightOfSponsor[];
}
