import type { PlanPromise, PlanRead, SeasonPlan } from '../season.ts';

/** A read that gets another place, a first place, or none any more, and why. */
export interface ProposedMove {
  readonly kind: 'new' | 'moved' | 'withinGame' | 'gone';
  readonly promiseId: string;
  readonly sponsorName: string;
  readonly readKindName: string;
  readonly source: PlanPromise['source'];
  readonly was: NamedSpot | null;
  readonly willBe: NamedSpot | null;
  /** a sentence */
  readonly why: string;
}

export interface NamedSpot {
  readonly gameId: string;
  readonly label: string;
  readonly playedOn: string;
  readonly windowKey: string;
}

export interface ReadsMissing {
  readonly promiseId: string;
  readonly sponsorName: string;
  readonly readKindName: string;
  readonly source: PlanPromise['source'];
  readonly owed: number;
  readonly missing: number;
}

export interface SponsorBeforeAfter {
  readonly sponsorId: string;
  readonly sponsorName: string;
  /** reads still to be given */
  readonly owed: number;
  readonly before: number;
  readonly after: number;
  /** of `after`, room kept for open offers */
  readonly held: number;
}

export interface GameBeforeAfter {
  readonly gameId: string;
  readonly label: string;
  readonly playedOn: string;
  readonly isLocked: boolean;
  readonly places: number;
  readonly before: number;
  readonly after: number;
}

/** What a proposal says, in words and figures as they were when it was worked out. */
export interface ProposalResult {
  readonly headline: string;
  readonly reads: readonly PlanRead[];
  readonly shortfallReads: number;
  readonly weightedShortfall: number;
  readonly bound: number;
  readonly isProven: boolean;
  readonly by: SeasonPlan['by'];
  readonly shortfall: readonly ReadsMissing[];
  /** why reads find no place, a sentence each */
  readonly bottlenecks: readonly string[];
  /** what the plan breaks all the same, a sentence each */
  readonly cautions: readonly string[];
  /** competitors stand together by it: whoever accepts it says why */
  readonly asksWhy: boolean;
  readonly moves: readonly ProposedMove[];
  readonly bySponsor: readonly SponsorBeforeAfter[];
  readonly byGame: readonly GameBeforeAfter[];
  readonly totals: {
    readonly owed: number;
    readonly before: number;
    readonly after: number;
    readonly held: number;
    readonly stayed: number;
    readonly added: number;
    readonly moved: number;
    readonly movedWithinGame: number;
    readonly gone: number;
  };
}
