import type { GameMove } from '../season/game.ts';
import type { CancelledGamePolicy } from '../sponsorship/contract-terms.ts';
import { covers } from '../sponsorship/covered-games.ts';
import type { CommitmentTerms, CoveredGame } from '../sponsorship/covered-games.ts';

/** What a move of a game does to the reads promised for it. */
export type MoveEffect =
  /** nothing changes: the reads stay where they stand */
  | 'none'
  /** the game keeps its reads; they wait until it has a new day */
  | 'keepsReads'
  /** the game takes its reads along to the new day, even past the commitment's last day */
  | 'takesReadsAlong'
  /** reads not yet given are credited, or their value moves on, as the contract says */
  | 'settlesByContract';

/** The move beside what it does to commitments counted per game or per night. */
export const EFFECT_ON_COMMITMENTS: Readonly<Record<GameMove | 'add' | 'delete', MoveEffect | 'promisesMore'>> = {
  start: 'none',
  suspend: 'keepsReads',
  resume: 'none',
  finish: 'none',
  postpone: 'keepsReads',
  reschedule: 'takesReadsAlong',
  cancel: 'settlesByContract',
  add: 'promisesMore',
  delete: 'settlesByContract',
};

/** What the ledger is told for one commitment when a game moves. Reads are whole counts, zero or more. */
export interface ChangeOfReads {
  readonly commitmentId: string;
  readonly gameId: string;
  /** reads the game adds to the promise */
  readonly promised: number;
  /** reads given back to the sponsor at their value */
  readonly credited: number;
  /** reads that end without money back; their value moves on to the reads still open */
  readonly released: number;
}

/** Where a commitment's reads of one game stand, before the game moves. */
export interface ReadsOfGame {
  readonly promised: number;
  readonly given: number;
  readonly settled: number;
}

/**
 * What cancelling a game does to one commitment. Reads already given stay given; what is still owed for
 * this game is credited or released. A commitment counted over the whole term, or on occurrence, keeps
 * what it owes: a shortfall shows when the rest of the season cannot carry it.
 *
 * @param nightStillHeld for a commitment counted per night: whether another covered game of that night is
 *   still to be played, so that the night's reads can be given there
 */
export function changeWhenCancelled(
  commitment: CommitmentTerms,
  game: CoveredGame,
  reads: ReadsOfGame,
  policy: CancelledGamePolicy,
  nightStillHeld: boolean,
): ChangeOfReads | null {
  if (!covers(commitment, game)) return null;
  if (commitment.counting === 'perTerm' || commitment.counting === 'onOccurrence') return null;
  if (commitment.counting === 'perNight' && nightStillHeld) return null;
  const open = Math.max(0, reads.promised - reads.given - reads.settled);
  if (open === 0) return null;
  return {
    commitmentId: commitment.id,
    gameId: game.id,
    promised: 0,
    credited: policy === 'credit' ? open : 0,
    released: policy === 'valueMovesOn' ? open : 0,
  };
}

/**
 * What a game added after signing does to one commitment: a covered regular-season or conference game
 * of a commitment counted per game promises that many reads more. A flat price does not rise.
 *
 * @param nightAlreadyCounts for a commitment counted per night: whether that night already counts
 */
export function changeWhenAdded(
  commitment: CommitmentTerms,
  game: CoveredGame,
  nightAlreadyCounts: boolean,
): ChangeOfReads | null {
  if (commitment.counting !== 'perGame' && commitment.counting !== 'perNight') return null;
  if (!covers(commitment, game) || commitment.reads === 0) return null;
  if (commitment.counting === 'perNight' && nightAlreadyCounts) return null;
  return { commitmentId: commitment.id, gameId: game.id, promised: commitment.reads, credited: 0, released: 0 };
}
