import { covers } from '../sponsorship/covered-games.ts';
import type { CommitmentTerms, CoveredGame } from '../sponsorship/covered-games.ts';

export interface GameOfNight extends CoveredGame {
  readonly nightId: string;
}

export interface PlacedReads {
  readonly nightId: string;
  readonly gameId: string;
  readonly commitmentId: string;
  readonly reads: number;
}

/**
 * Reads promised by the game or by the night that have no place there, by night. What is promised over a term may go anywhere, so it is
 * missing from no night.
 *
 * @param games those that are to be held, of the nights in question
 * @source common practice, no source
 */
export function unplacedReads(commitments: readonly CommitmentTerms[], games: readonly GameOfNight[], placed: readonly PlacedReads[]): Map<string, number> {
  const missing = new Map<string, number>();
  const add = (nightId: string, reads: number) => reads > 0 && missing.set(nightId, (missing.get(nightId) ?? 0) + reads);
  const sums = new Map<string, number>();
  for (const { nightId, gameId, commitmentId, reads } of placed) for (const key of [`${commitmentId} ${gameId}`, `${commitmentId} ${nightId}`]) sums.set(key, (sums.get(key) ?? 0) + reads);
  for (const commitment of commitments) {
    if (commitment.counting !== 'perGame' && commitment.counting !== 'perNight') continue;
    const covered = games.filter((game) => covers(commitment, game));
    const units = commitment.counting === 'perGame' ? covered.map(({ id, nightId }) => [id, nightId] as const) : [...new Set(covered.map(({ nightId }) => nightId))].map((nightId) => [nightId, nightId] as const);
    for (const [unit, nightId] of units) add(nightId, commitment.reads - (sums.get(`${commitment.id} ${unit}`) ?? 0));
  }
  return missing;
}
