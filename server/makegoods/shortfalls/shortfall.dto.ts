import { IdField, PatternField } from '../../platform/http/fields.ts';
import type { Day } from '../../domain/day.ts';
import type { MissedBecause } from '../../domain/makegoods/missed-reads.ts';
import type { RepairOption } from '../../domain/makegoods/repair-options.ts';
import type { Counting } from '../../domain/sponsorship/contract-terms.ts';

/** A read that was to be given and was not. */
export interface MissedReadView {
  /** names it in a proposal */
  key: string;
  nightId: string | null;
  gameId: string | null;
  gameLabel: string | null;
  windowKey: string | null;
  /** as a heading: "Halftime", "2nd time-out" */
  windowName: string | null;
  placementId: string | null;
  missedOn: Day;
  because: MissedBecause;
  /** in words: "no time", "the game was called off" */
  why: string;
  /** the proposal that speaks for it */
  proposalId: string | null;
  /** still owed, and no proposal speaks for it */
  isOpen: boolean;
  /** the game or night of a commitment that is counted by it */
  slotId: string | null;
}

/** What of one commitment can no longer be given as promised, and how it could be settled. Counts in reads, amounts in cents. */
export interface LineShortfall {
  contractId: string;
  termId: string;
  commitmentId: string;
  readKindId: string;
  readKindName: string;
  counting: Counting;
  owed: number;
  /** owed, with a replacement that is agreed and not given yet */
  awaiting: number;
  /** in proposals that nobody has answered, or that wait to be settled */
  proposed: number;
  /** owed, nothing agreed for them, and no game is left that could carry them as promised */
  shortfall: number;
  /** of the shortfall, what nothing is proposed for; the options are for so many */
  open: number;
  /** of the missed reads, how many are still owed and not spoken for */
  stillOwed: number;
  missed: MissedReadView[];
  /** cheapest first; none where nothing is open */
  options: RepairOption[];
}

/** Reads of a commitment that can no longer be given, with nothing agreed or proposed for them. */
export interface OpenShortfall {
  contractId: string;
  contractNumber: string | null;
  contractTitle: string;
  sponsorName: string;
  commitmentId: string;
  readKindName: string;
  open: number;
  /** of what can be done now, what costs the school least */
  cheapest: RepairOption | null;
}

export class RepairOptionsQuery {
  @IdField({ optional: true }) commitmentId?: string;
  @PatternField(/^[1-9][0-9]{0,2}$/, 'is from 1 to 999', { optional: true }) reads?: string;
}
