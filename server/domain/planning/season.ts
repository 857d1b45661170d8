import type { Day } from '../day.ts';
import type { WindowKind } from '../season/sport-rules.ts';
import type { Separation } from '../sponsorship/separation.ts';

/** A window of one game as planning sees it. */
export interface PlanWindow {
  /** `pregame`, `timeOut2`; the windows of a game stand in the order of the night */
  readonly key: string;
  readonly kind: WindowKind;
  /** sponsor reads it holds, all groups together; 0 where it is not ours or where nobody relies on its coming */
  readonly places: number;
  /** reads it holds of one group of read kinds; a group that is not named holds as many as the window */
  readonly groupPlaces: Readonly<Record<string, number>>;
  /** seconds there are to speak in; null where nothing limits them */
  readonly seconds: number | null;
}

/** A game that is still to be played, announced by us. */
export interface PlanGame {
  readonly gameId: string;
  readonly nightId: string;
  /** "Herons at Kestrels" */
  readonly label: string;
  /** the day it is held */
  readonly playedOn: Day;
  readonly teamIds: readonly string[];
  readonly windows: readonly PlanWindow[];
  /** its night is locked: what is placed there stays, and nothing is added */
  readonly isLocked: boolean;
}

/** So many reads over these games: the whole term's, or one slot for each game or night that is counted by itself. */
export interface PlanSlot {
  /** reads to be placed over these games, those that have a place there already included */
  readonly reads: number;
  /** the games they may be read at, in the order of play; ids of the season's games */
  readonly gameIds: readonly string[];
}

/** What is promised and still to be placed: a signed commitment, the replacements of a makegood, or a line of an open offer. */
export interface PlanPromise {
  /** id of the commitment, the makegood or the offer line */
  readonly promiseId: string;
  readonly source: 'commitment' | 'makegood' | 'offer';
  /** the contract's or the offer's id */
  readonly dealId: string;
  readonly sponsorId: string;
  readonly sponsorName: string;
  readonly categoryId: string;
  readonly readKindId: string;
  readonly readKindName: string;
  /** group of read kinds that shares places within a window; null: the window's own */
  readonly placeGroup: string | null;
  /** sponsors that may hold this kind in one game */
  readonly sponsorsPerGame: number;
  readonly seconds: number;
  readonly slots: readonly PlanSlot[];
  /** windows by kind or key, the preferred first, as the read kind and the commitment name them */
  readonly windows: readonly string[];
  readonly leastPerGame: number;
  readonly mostPerGame: number | null;
  /** games in which at least one read was promised aloud */
  readonly pinnedGameIds: readonly string[];
  /** 1 is served first */
  readonly priority: 1 | 2 | 3;
  readonly separation: Separation;
}

/** A read that has a place. */
export interface PlanRead {
  readonly promiseId: string;
  readonly gameId: string;
  readonly windowKey: string;
  /** from 1 */
  readonly place: number;
}

/** A read that has a place now, before the plan. */
export interface PlacedRead extends PlanRead {
  readonly placementId: string | null;
  /** printed, pinned or on a locked night: it stays where it is */
  readonly isFixed: boolean;
}

/** Everything a plan is made from. Games in the order of play. Placed reads of promises that are not named only take places. */
export interface PlanSeason {
  readonly games: readonly PlanGame[];
  readonly promises: readonly PlanPromise[];
  readonly placed: readonly PlacedRead[];
}

/** What a slot of a promise lacks. */
export interface Shortfall {
  readonly promiseId: string;
  /** index in the promise's slots */
  readonly slot: number;
  readonly reads: number;
}

/**
 * Why reads find no place: these windows of these games hold so many, and these promises together need more there.
 * From a minimum cut, so it is a proof: `needed - places` reads are missing whatever the plan.
 */
export interface Bottleneck {
  readonly promiseIds: readonly string[];
  /** in the order of play */
  readonly gameIds: readonly string[];
  readonly windowKinds: readonly WindowKind[];
  /** reads of these promises that can go nowhere else */
  readonly needed: number;
  /** places those windows have for them */
  readonly places: number;
  /** what limits: the places of windows, a kind's sponsors in a game, a promise's own most per game, or there is no game at all */
  readonly because: 'places' | 'sponsorsPerGame' | 'mostPerGame' | 'noGames';
}

/** A plan with its proof. */
export interface SeasonPlan {
  /** all reads with a place, those that were fixed included */
  readonly reads: readonly PlanRead[];
  readonly shortfall: readonly Shortfall[];
  readonly shortfallReads: number;
  /** shortfall by priority: a read of priority 1, 2, 3 counts 9, 3, 1 */
  readonly weightedShortfall: number;
  /** no plan can have a smaller weighted shortfall than this */
  readonly bound: number;
  /** `weightedShortfall` equals `bound` */
  readonly isProven: boolean;
  /** in places alone, or with seconds and company as well */
  readonly by: 'places' | 'company';
  readonly bottlenecks: readonly Bottleneck[];
  /** reads that lie on another game than before, and those that only changed their window */
  readonly movedReads: number;
  readonly movedWithinGame: number;
}

/** What one read without a place counts, by priority. Common practice, no source. */
export const WEIGHT_OF_PRIORITY: Readonly<Record<1 | 2 | 3, number>> = { 1: 9, 2: 3, 3: 1 };

/** What counts first when a plan is made. */
export interface PlanWishes {
  /** `replan`: after the shortfall, as few reads as possible change their game; then their window */
  readonly keeps: 'nothing' | 'whatIsPlaced';
}
