import type { PromiseStanding } from '../../domain/planning/proposal/where-it-stands.ts';
import type { PlanProposalLine } from './plan-proposal.dto.ts';

export interface LockedNight {
  nightId: string;
  heldOn: string;
  label: string;
  why: 'issued' | 'person';
  note: string | null;
}

export interface SeasonPlanView {
  seasonId: string;
  seasonName: string;
  /** home games that can still be planned */
  gamesToCome: number;
  owed: number;
  planned: number;
  atRisk: number;
  promises: PromiseStanding[];
  /** an accepted plan knows of everything that is promised and played */
  isCurrent: boolean;
  /** what it does not know of: "a contract was signed"; null where it is current or nothing was ever accepted */
  changedSince: string | null;
  acceptedAt: string | null;
  lockedNights: LockedNight[];
  latestProposal: PlanProposalLine | null;
  version: number;
}
