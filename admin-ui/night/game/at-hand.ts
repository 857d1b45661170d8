import { useSyncExternalStore } from 'react';

/** What the table has at hand between two taps: it is on no log, and gone with the page. */
export interface AtHand {
  /** the game that was chosen or tapped for; null for the one the log says */
  readonly gameId: string | null;
  /** a period chosen by hand; null for the one the log says */
  readonly period: number | null;
  /** what the game clock shows, for the next tap; empty where nobody typed it */
  readonly clock: string;
}

let atHand: AtHand = { gameId: null, period: null, clock: '' };
const watchers = new Set<() => void>();

export function setAtHand(change: Partial<AtHand>): void {
  atHand = { ...atHand, ...change };
  for (const watcher of watchers) watcher();
}

const watch = (watcher: () => void) => {
  watchers.add(watcher);
  return () => void watchers.delete(watcher);
};

export const useAtHand = (): AtHand => useSyncExternalStore(watch, () => atHand);

const CLOCK = /^\d{1,2}:[0-5]\d$/;

/** A clock that was typed holds for one tap: an old one would tell two devices apart that saw the same shot. */
export function takeClock(): string | null {
  const { clock } = atHand;
  setAtHand({ clock: '' });
  return CLOCK.test(clock) ? clock : null;
}
