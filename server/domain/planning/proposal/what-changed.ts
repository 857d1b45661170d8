import type { PlanGame, PlanPromise, PlanSeason } from '../season.ts';
import { listInWords } from '../words/counted.ts';

/** As much of the facts as is needed to say later what changed in them. */
export interface FactsOutline {
  readonly games: Readonly<Record<string, { readonly playedOn: string; readonly isLocked: boolean; readonly places: number }>>;
  readonly promises: Readonly<Record<string, { readonly source: PlanPromise['source']; readonly sponsorName: string; readonly reads: number; readonly covers: string }>>;
  /** one text for each read that has a place */
  readonly placed: readonly string[];
}

export function outlineOf(season: PlanSeason): FactsOutline {
  return {
    games: Object.fromEntries(season.games.map((game) => [game.gameId, { playedOn: game.playedOn, isLocked: game.isLocked, places: placesOf(game) }])),
    promises: Object.fromEntries(season.promises.map((promise) => [promise.promiseId, {
      source: promise.source,
      sponsorName: promise.sponsorName,
      reads: readsOf(promise),
      covers: JSON.stringify([promise.windows, promise.mostPerGame, promise.leastPerGame, promise.pinnedGameIds, promise.priority, promise.separation, promise.sponsorsPerGame, promise.seconds, promise.placeGroup]),
    }])),
    placed: season.placed.map((read) => `${read.promiseId} ${read.gameId} ${read.windowKey} ${read.place} ${read.isFixed}`),
  };
}

const placesOf = (game: PlanGame): number => game.windows.reduce((sum, window) => sum + window.places, 0);
const readsOf = (promise: PlanPromise): number => promise.slots.reduce((sum, slot) => sum + slot.reads, 0);

const ADDED: Readonly<Record<PlanPromise['source'], string>> = { commitment: 'a contract was signed', makegood: 'a makegood was agreed', offer: 'an offer was put' };
const GONE: Readonly<Record<PlanPromise['source'], string>> = { commitment: 'a contract ended or was put on hold', makegood: 'a makegood was read', offer: 'an offer was decided or lapsed' };

/**
 * What changed in the facts since a plan was worked out, as the end of a sentence: "a contract was signed (Snowmelt
 * Creamery) and a game moved". The gravest first, each said once.
 */
export function whatChanged(before: FactsOutline, after: FactsOutline): string {
  const said = new Set([...promisesChanged(before, after), ...gamesChanged(before, after)]);
  const asked = Object.entries(after.promises).filter(([id, promise]) => isPromisedOtherwise(before.promises[id], promise));
  if (asked.length > 0) said.add(withNames('what is promised changed', asked.map(([, promise]) => promise.sponsorName)));
  if (said.size === 0 && before.placed.toSorted().join() !== after.placed.toSorted().join()) said.add('reads were placed, moved or taken out by hand');
  return said.size === 0 ? 'a setting changed' : listInWords([...said]);
}

/** What has come since a plan was accepted that it knows nothing of; null where nothing has. Games that were played are no news. */
export function newsSince(before: FactsOutline, after: FactsOutline): string | null {
  const news = [...promisesChanged(before, { ...after, promises: { ...before.promises, ...after.promises } }), ...gamesChanged(before, { ...after, games: { ...before.games, ...after.games } })];
  const heard = news.filter((sentence) => !sentence.startsWith('a night was'));
  return heard.length === 0 ? null : listInWords(heard);
}

function promisesChanged(before: FactsOutline, after: FactsOutline): string[] {
  return (['commitment', 'makegood', 'offer'] as const).flatMap((source) => {
    const added = Object.entries(after.promises).filter(([id, promise]) => promise.source === source && before.promises[id] === undefined);
    const gone = Object.entries(before.promises).filter(([id, promise]) => promise.source === source && after.promises[id] === undefined);
    return [
      ...(added.length === 0 ? [] : [withNames(ADDED[source], added.map(([, promise]) => promise.sponsorName))]),
      ...(gone.length === 0 ? [] : [withNames(GONE[source], gone.map(([, promise]) => promise.sponsorName))]),
    ];
  });
}

function isPromisedOtherwise(before: FactsOutline['promises'][string] | undefined, after: FactsOutline['promises'][string]): boolean {
  return before !== undefined && (before.reads !== after.reads || before.covers !== after.covers);
}

function withNames(what: string, names: readonly string[]): string {
  const each = [...new Set(names)].toSorted();
  return `${what} (${each.length > 3 ? `${each.slice(0, 2).join(', ')} and ${each.length - 2} others` : listInWords(each)})`;
}

function gamesChanged(before: FactsOutline, after: FactsOutline): string[] {
  const ids = [...new Set([...Object.keys(before.games), ...Object.keys(after.games)])];
  const sentences = ids.flatMap((id): string[] => {
    const [was, is] = [before.games[id], after.games[id]];
    if (was === undefined) return ['a game was added'];
    if (is === undefined) return ['a game was played or is not held any more'];
    if (was.playedOn !== is.playedOn) return ['a game moved'];
    if (was.isLocked !== is.isLocked) return [is.isLocked ? 'a night was locked' : 'a night was unlocked'];
    return was.places === is.places ? [] : ['the windows of a game changed'];
  });
  return [...new Set(sentences)];
}
