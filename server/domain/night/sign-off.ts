import type { Day } from '../day.ts';
import type { GameStatus } from '../season/game.ts';
import { claimOf } from './reads-to-count.ts';
import type { ReadToCount } from './reads-to-count.ts';

export type SignOffRefusal = 'night-already-signed-off' | 'night-not-yet-held' | 'night-without-games';

export interface NightToSignOff {
  readonly heldOn: Day;
  readonly isSignedOff: boolean;
  readonly games: readonly { readonly status: GameStatus }[];
}

/**
 * Why a night cannot be signed off, or null. What is still open (a read cut short, a mention without a
 * happening) never holds it up: it does not count yet, and the director settles it the next morning.
 *
 * @param today in the department's zone
 */
export function whyNotSignOff(night: NightToSignOff, today: Day): SignOffRefusal | null {
  if (night.isSignedOff) return 'night-already-signed-off';
  if (night.games.every((game) => game.status === 'cancelled' || game.status === 'postponed')) {
    return 'night-without-games';
  }
  return today < night.heldOn ? 'night-not-yet-held' : null;
}

/** The state sign-off leaves a game in: what was logged and not suspended has been played. */
export function statusAtSignOff(status: GameStatus, hasLog: boolean): GameStatus {
  return status === 'underWay' || (status === 'planned' && hasLog) ? 'played' : status;
}

/** A read counted before: the claim as it is stored. */
export interface CountedClaim {
  readonly gameId: string;
  readonly cueKey: string;
  readonly occurrence: number;
  readonly commitmentId: string;
  readonly entryId: string;
}

/** A read whose claim is free to be made: it names its game. */
export type ClaimableRead = ReadToCount & { readonly gameId: string; readonly outcome: 'counts' };

export interface Amendment {
  /** reads that count now and did not before: owed becomes given */
  readonly count: readonly ClaimableRead[];
  /** claims that no longer stand: given becomes owed again */
  readonly release: readonly CountedClaim[];
}

/** The reads of a night that count. */
export function countedReads(reads: readonly ReadToCount[]): ClaimableRead[] {
  return reads.filter((read): read is ClaimableRead => read.outcome === 'counts' && read.gameId !== null);
}

/**
 * What entries after sign-off change: the reads that count now, less the claims already held. Before
 * sign-off there are no claims, so this is the sign-off as well. Where a read is taken back and somebody
 * else's double waits, the double takes the claim: one release and one count.
 */
export function amendmentOf(claims: readonly CountedClaim[], reads: readonly ReadToCount[]): Amendment {
  const counting = countedReads(reads);
  const keyOf = (read: CountedClaim): string => `${claimOf(read)} ${read.commitmentId} ${read.entryId}`;
  const before = new Set(claims.map(keyOf));
  const now = new Set(counting.map(keyOf));
  return {
    count: counting.filter((read) => !before.has(keyOf(read))),
    release: claims.filter((claim) => !now.has(keyOf(claim))),
  };
}
