import type { PlanGame, PlanPromise, PlanRead, PlanSeason } from '../season.ts';
import { kindOfWindow } from '../../season/window-names.ts';
import { dayInWords } from '../words/counted.ts';
import { windowInWords } from '../words/window.ts';
import { planChanges } from './plan-changes.ts';
import type { PlanChange } from './plan-changes.ts';
import type { NamedSpot, ProposedMove } from './proposal-result.ts';

/**
 * Each read that changes its game or its window, is new or goes, with the reason that can be seen. A read that only
 * changes its place within a window is none.
 *
 * @param because why the plan is made anew, as the director said: "The game on Jan 9 is cancelled"
 */
export function movesOf(season: PlanSeason, reads: readonly PlanRead[], because: string | null): ProposedMove[] {
  const promises = new Map(season.promises.map((promise) => [promise.promiseId, promise]));
  const games = new Map(season.games.map((game) => [game.gameId, game]));
  const placed = season.placed.filter((read) => promises.has(read.promiseId));
  const takers = new Map(reads.map((read) => [spotOf(read), read.promiseId]));
  const moves = planChanges(placed, reads, season.games).flatMap((change): ProposedMove[] => {
    const promise = promises.get((change.from ?? change.to)!.promiseId);
    const kind = kindOf(change);
    if (promise === undefined || kind === null) return [];
    const { promiseId, sponsorName, readKindName, source } = promise;
    const taker = change.from === null ? undefined : promises.get(takers.get(spotOf(change.from)) ?? '');
    const why = whyOf(change, { promise, games, taker, because });
    return [{ kind, promiseId, sponsorName, readKindName, source, was: spot(change.from, games), willBe: spot(change.to, games), why }];
  });
  const order = new Map(season.games.map((game, place) => [game.gameId, place]));
  const at = (move: ProposedMove): number => order.get((move.willBe ?? move.was)!.gameId) ?? 0;
  return moves.sort((one, other) => at(one) - at(other) || (one.sponsorName < other.sponsorName ? -1 : one.sponsorName > other.sponsorName ? 1 : 0));
}

const spotOf = (read: PlanRead): string => `${read.gameId} ${read.windowKey} ${read.place}`;

function kindOf({ from, to }: PlanChange): ProposedMove['kind'] | null {
  if (from === null) return 'new';
  if (to === null) return 'gone';
  if (from.gameId !== to.gameId) return 'moved';
  return from.windowKey === to.windowKey ? null : 'withinGame';
}

function spot(read: PlanRead | null, games: ReadonlyMap<string, PlanGame>): NamedSpot | null {
  const game = read === null ? undefined : games.get(read.gameId);
  return read === null || game === undefined ? null : { gameId: game.gameId, label: game.label, playedOn: game.playedOn, windowKey: read.windowKey };
}

interface Circumstances {
  readonly promise: PlanPromise;
  readonly games: ReadonlyMap<string, PlanGame>;
  /** whose read gets the place that is left */
  readonly taker: PlanPromise | undefined;
  readonly because: string | null;
}

function whyOf({ from, to }: PlanChange, { promise, games, taker, because }: Circumstances): string {
  if (from === null) return newBecause(promise, because);
  if (to === null) return promise.slots.some((slot) => slot.reads > 0) ? 'No more than is owed has a place.' : 'It is not owed any more.';
  const game = games.get(from.gameId);
  const window = game?.windows.find((one) => one.key === from.windowKey);
  if (!promise.slots.some((slot) => slot.gameIds.includes(from.gameId))) return 'The promise does not cover that game any more.';
  if (window === undefined || window.places === 0) return `There is no place for our sponsors in ${windowInWords(from.windowKey)} of that game.`;
  if (!promise.windows.some((name) => name === window.key || name === window.kind || kindOfWindow(name) === window.kind)) return `It is not read in ${windowInWords(from.windowKey)} any more.`;
  if (from.place > window.places) return `${windowInWords(from.windowKey).replace(/^./, (letter) => letter.toUpperCase())} has fewer places now.`;
  if (taker !== undefined && taker.promiseId !== promise.promiseId) return `Its place goes to ${taker.sponsorName} (${taker.readKindName}), so that more reads find one or are better spread.`;
  if (from.gameId === to.gameId) return 'So that reads fit their windows and competitors stand apart.';
  return game === undefined ? 'Its game is not to be played any more.' : `So that the reads are spread evenly: fewer on ${dayInWords(game.playedOn)}.`;
}

function newBecause(promise: PlanPromise, because: string | null): string {
  if (promise.source === 'offer') return 'Room for an open offer.';
  if (promise.source === 'makegood') return 'It replaces a read that was missed.';
  return because === null ? 'It had no place yet.' : `It had no place: ${because.replace(/\.$/, '')}.`;
}
