import type { Day } from '../day.ts';
import { centsOf, splitEvenly } from '../money.ts';
import { amountsOf } from '../sponsorship/contract-amounts.ts';
import type { BilledLine } from '../sponsorship/happening.ts';
import type { Position } from '../sponsorship/position.ts';
import { liveLines, restLine } from './live-lines.ts';

/** A game that a contract covers: an announced home game of its teams, levels and days, as `covers` says. */
export interface GameToBill {
  gameId: string;
  playedOn: Day;
  /** it was played; one that is planned, suspended or postponed waits for its day */
  isPlayed: boolean;
  /** how a line of an invoice names it */
  name: string;
}

/**
 * The even shares of the games played through a day. A game that was billed keeps its amount; what is still to bill is
 * shared evenly by all others, played or not, the earlier ones a cent larger where it does not go up. A cancelled game
 * falls out, an added one takes its share from those still open.
 *
 * @param games all games that the contract covers, cancelled ones left out
 * @source largest remainder as for installments; which games count: common practice, no source
 */
export function gameLines(position: Position, games: readonly GameToBill[], throughDay: Day): BilledLine[] {
  const { toBillCents } = amountsOf(position);
  if (toBillCents <= 0 || games.length === 0) return [];
  const billed = new Set(liveLines(position).flatMap((line) => (line.gameId === undefined ? [] : [line.gameId])));
  const open = games.filter(({ gameId }) => !billed.has(gameId)).sort(byDay);
  if (open.length === 0) return restLine(toBillCents, 'Added to the agreement since the last game');
  const amounts = splitEvenly(centsOf(toBillCents), open.length);
  return open.flatMap(({ gameId, playedOn, isPlayed, name }, place) => {
    const amountCents = amounts[place] ?? centsOf(0);
    return isPlayed && playedOn <= throughDay && amountCents > 0 ? [{ text: name, amountCents, gameId }] : [];
  });
}

/** Why no game is due, in a plain sentence. */
export function whyNoGame(games: readonly GameToBill[], throughDay: Day): string {
  return games.length === 0 ? 'The calendar has no game that this contract covers.' : `No game was played through ${throughDay} that is not billed.`;
}

const byDay = (a: GameToBill, b: GameToBill) => (a.playedOn === b.playedOn ? (a.gameId < b.gameId ? -1 : 1) : a.playedOn < b.playedOn ? -1 : 1);
