import type { WindowKind } from '../../season/sport-rules.ts';
import type { Bottleneck } from '../season.ts';
import type { NamedGame } from './counted.ts';
import { areSeveral, asSentence, countedInWords, gamesInWords, listInWords, numberInWords, windowsInWords } from './counted.ts';

/** What a sentence says of a promise that the bottleneck names by its id. */
export interface NamedPromise {
  readonly sponsorName: string;
  readonly readKindName: string;
  readonly sponsorsPerGame: number;
  readonly mostPerGame: number | null;
  /** it belongs to what is being asked about, and is called so: "this offer" */
  readonly isThis: boolean;
  /** games it may be read at and the windows it is read in, in the order of the night; left out where nobody looked */
  readonly reach?: { readonly gameIds: readonly string[]; readonly windowKinds: readonly WindowKind[]; readonly isLocked: boolean };
}

export interface BottleneckNames {
  /** undefined for what is not known any more; it is left out of the sentence */
  readonly game: (gameId: string) => NamedGame | undefined;
  readonly promise: (promiseId: string) => NamedPromise | undefined;
  /** what is asked about: "this offer", "this contract" */
  readonly this: string;
}

const MOST_NAMES = 4;

/** What is said of reads for which no window is full. */
export const NO_ROOM_IN_COMPANY = 'the seconds of the windows, competitors who keep apart or the sponsors one game may have of a read kind leave no room';

/** Who needs the places: each sponsor once, in the order of the alphabet, what is asked about last; more than four are counted. */
function whoNeeds(promises: readonly NamedPromise[], thisDeal: string): string[] {
  const sponsors = [...new Set(promises.filter((one) => !one.isThis).map((one) => one.sponsorName))].toSorted();
  if (promises.length === 0) return ['what is promised'];
  const others = sponsors.length > MOST_NAMES ? [...sponsors.slice(0, MOST_NAMES - 1), countedInWords(sponsors.length - MOST_NAMES + 1, 'other sponsor')] : sponsors;
  return promises.some((one) => one.isThis) ? [...others, thisDeal] : others;
}

const exist = (places: number): string => (places === 0 ? 'none exists' : `${numberInWords(places)} ${places === 1 ? 'exists' : 'exist'}`);

const fit = (reads: number): string => (reads === 0 ? 'none fits' : `${numberInWords(reads)} ${reads === 1 ? 'fits' : 'fit'}`);

/** "A needs", "A and B together need". */
function need(who: readonly string[]): string {
  return who.length === 1 ? `${who[0]} needs` : `${listInWords(who)} together need`;
}

/** There are games of its teams, levels and days, and none of them takes a read: the windows are not ours, or the nights are locked. */
function nowhere(promises: readonly NamedPromise[], needed: number, who: readonly string[], names: BottleneckNames): string {
  const ids = new Set(promises.flatMap((one) => one.reach?.gameIds ?? []));
  const games = [...ids].map(names.game).filter((one) => one !== undefined).toSorted((one, other) => (one.playedOn < other.playedOn ? -1 : 1));
  const windowKinds = [...new Set(promises.flatMap((one) => one.reach?.windowKinds ?? []))];
  if (games.length === 0) {
    return `${asSentence(need(who))} ${countedInWords(needed, 'read')}, and there is no game for ${needed === 1 ? 'it' : 'them'}: none that we announce at home and that is still to come falls on these teams, levels and days.`;
  }
  if (promises.every((one) => one.reach?.isLocked)) {
    return `${asSentence(gamesInWords(games))} ${games.length === 1 ? 'is on a locked night' : 'are on locked nights'}, to which nothing is added: ${need(who)} ${countedInWords(needed, 'read')} there.`;
  }
  if (windowKinds.length === 0) return `${asSentence(gamesInWords(games))} ${games.length === 1 ? 'has' : 'have'} no window for this read kind: ${need(who)} ${countedInWords(needed, 'read')} there.`;
  return withoutPlace(windowKinds, games, `${need(who)} ${countedInWords(needed, 'place')} there`);
}

function withoutPlace(windowKinds: readonly WindowKind[], games: readonly NamedGame[], needs: string): string {
  return `${asSentence(windowsInWords(windowKinds))} of ${gamesInWords(games)} ${areSeveral(windowKinds) ? 'have' : 'has'} no place for a sponsor read: ${needs}.`;
}

/**
 * Why reads find no place, in one sentence: "Halftime of the seven games from Jan 9 to Feb 6 is full: Snowmelt Creamery,
 * Halvorsen Orthodontics and this offer together need 40 places there, 33 exist." Numbers up to twelve are words, one game
 * is named by its label and day. Common practice, no source.
 */
export function bottleneckInWords(bottleneck: Bottleneck, names: BottleneckNames): string {
  const { needed, places, because, windowKinds } = bottleneck;
  const promises = bottleneck.promiseIds.map(names.promise).filter((one) => one !== undefined);
  const games = bottleneck.gameIds.map(names.game).filter((one) => one !== undefined);
  const who = whoNeeds(promises, names.this);
  if (because === 'noGames' || games.length === 0) return nowhere(promises, needed, who, names);
  if (because === 'sponsorsPerGame') {
    const kinds = listInWords([...new Set(promises.map((one) => one.readKindName))]);
    const most = Math.min(...promises.map((one) => one.sponsorsPerGame), Number.MAX_SAFE_INTEGER);
    return `${asSentence(kinds)} is sold to at most ${countedInWords(most, 'sponsor')} in a game: in ${gamesInWords(games)} ${need(who)} ${countedInWords(needed, 'read')}, ${fit(places)}.`;
  }
  if (because === 'mostPerGame') {
    const [most] = promises.flatMap((one) => one.mostPerGame ?? []).toSorted((one, other) => one - other);
    return `${asSentence(need(who))} ${countedInWords(needed, 'read')} in ${gamesInWords(games)}, and with at most ${most === undefined ? 'so many' : numberInWords(most)} in a game ${fit(places)}.`;
  }
  const needsPlaces = `${need(who)} ${countedInWords(needed, 'place')} there`;
  if (places === 0) return withoutPlace(windowKinds, games, needsPlaces);
  return `${asSentence(windowsInWords(windowKinds))} of ${gamesInWords(games)} ${areSeveral(windowKinds) ? 'are' : 'is'} full: ${needsPlaces}, ${exist(places)}.`;
}
