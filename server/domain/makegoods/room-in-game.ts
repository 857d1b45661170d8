import { kindOfWindow } from '../season/window-names.ts';

/** A window of a game to come, with the reads it can hold. */
export interface WindowLeft {
  readonly key: string;
  readonly kind: string;
  /** none where it is not ours, or where nobody relies on it */
  readonly places: number;
  /** of those, how many of one group of read kinds */
  readonly groupPlaces: Readonly<Record<string, number>>;
}

/** A read that has its place in the game. */
export interface ReadThere {
  readonly windowKey: string;
  readonly placeGroup: string | null;
  readonly readKindId: string;
  readonly sponsorId: string;
  readonly commitmentId: string;
  readonly isMakegood: boolean;
}

export interface ReadWanted {
  readonly commitmentId: string;
  readonly sponsorId: string;
  readonly readKindId: string;
  /** kinds or keys of windows */
  readonly windows: readonly string[];
  readonly placeGroup: string | null;
  readonly sponsorsPerGame: number;
  /** reads of the commitment in one game; null: as many as there are places */
  readonly mostPerGame: number | null;
}

/**
 * Free places for a read in a game, besides those it has there already.
 *
 * @param there everybody's reads in that game
 */
export function freePlacesIn(windows: readonly WindowLeft[], there: readonly ReadThere[], wanted: ReadWanted): number {
  const sponsors = new Set(there.filter((read) => read.readKindId === wanted.readKindId).map((read) => read.sponsorId));
  if (!sponsors.has(wanted.sponsorId) && sponsors.size >= wanted.sponsorsPerGame) return 0;
  const free = windows.filter((window) => isWanted(window, wanted.windows)).reduce((sum, window) => sum + freeInWindow(window, there, wanted.placeGroup), 0);
  return wanted.mostPerGame === null ? free : Math.min(free, Math.max(0, wanted.mostPerGame - ownIn(there, wanted.commitmentId)));
}

/** Reads of a commitment that have their place in a game, replacements left out. */
export function ownIn(there: readonly ReadThere[], commitmentId: string): number {
  return there.filter((read) => read.commitmentId === commitmentId && !read.isMakegood).length;
}

function isWanted(window: WindowLeft, names: readonly string[]): boolean {
  return names.some((name) => name === window.key || kindOfWindow(name) === window.kind);
}

function freeInWindow(window: WindowLeft, there: readonly ReadThere[], group: string | null): number {
  const inWindow = there.filter((read) => read.windowKey === window.key);
  const free = window.places - inWindow.length;
  const ofGroup = group === null ? undefined : window.groupPlaces[group];
  const freeOfGroup = ofGroup === undefined ? free : ofGroup - inWindow.filter((read) => read.placeGroup === group).length;
  return Math.max(0, Math.min(free, freeOfGroup));
}
