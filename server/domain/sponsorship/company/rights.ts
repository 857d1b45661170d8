import type { Day } from '../../day.ts';
import type { WindowKind } from '../../season/sport-rules.ts';

/** How far an exclusive right goes: the days as a whole, named games, or windows of some kinds. */
export const REACHES = ['season', 'game', 'window'] as const;
export type Reach = (typeof REACHES)[number];

/** What an exclusive right says, whoever holds it. */
export interface RightTerms {
  readonly id: string;
  readonly categoryId: string;
  readonly categoryName: string;
  readonly reach: Reach;
  /** null: at every school of the department */
  readonly schoolId: string | null;
  readonly schoolName: string | null;
  readonly startsOn: Day;
  /** the last day of it */
  readonly endsOn: Day;
  /** of reach `game` */
  readonly gameIds: readonly string[];
  /** of reach `window` */
  readonly windowKinds: readonly WindowKind[];
}

/** An exclusive right of a signed contract, or of an open offer that holds. */
export interface ExclusiveRight extends RightTerms {
  readonly sponsorId: string;
  readonly sponsorName: string;
  /** "contract C-2026-0003" */
  readonly dealName: string;
}

/** A category that somebody else has the right to without a contract here. */
export interface ReservedRight {
  readonly id: string;
  readonly categoryId: string;
  readonly categoryName: string;
  readonly heldBy: string;
  readonly schoolId: string | null;
  readonly schoolName: string | null;
  readonly startsOn: Day;
  /** null: until further notice */
  readonly endsOn: Day | null;
}

/** A signed contract of a sponsor of the category, or an open offer that holds. */
export interface DealThere {
  readonly dealId: string;
  readonly isOffered: boolean;
  readonly sponsorId: string;
  readonly sponsorName: string;
  readonly categoryId: string;
  readonly dealName: string;
  readonly startsOn: Day;
  readonly endsOn: Day;
  /** the schools it is read at; null: every school of the department */
  readonly schoolIds: readonly string[] | null;
  /** games in which a read was promised aloud */
  readonly pinnedGameIds: readonly string[];
}

/** The deal that is to be made. */
export interface DealAsked {
  readonly sponsorId: string;
  readonly categoryId: string;
  readonly categoryName: string;
  /** the department does not take sponsors of the category */
  readonly isBlocked: boolean;
  readonly startsOn: Day;
  readonly endsOn: Day;
  readonly schoolIds: readonly string[] | null;
  readonly pinnedGameIds: readonly string[];
  /** the exclusive rights it would carry */
  readonly rights: readonly RightTerms[];
}

/** Everything of the categories concerned that a deal can meet. */
export interface CompanyThere {
  readonly exclusive: readonly ExclusiveRight[];
  readonly reserved: readonly ReservedRight[];
  readonly deals: readonly DealThere[];
}
