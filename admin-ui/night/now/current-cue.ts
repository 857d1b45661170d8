import { useLayoutEffect, useSyncExternalStore } from 'react';
import type { DeskCue } from '../../../server/domain/night/desk/bundle.ts';
import { lastLoggedPlace, neighborIn, nextOpenIn } from '../../../server/domain/night/desk/reading/place-in-run.ts';
import type { Reading } from './reading.ts';

/** The cue in hand. It is held fast: what another device logs, or what is approved meanwhile, never moves it. */
let held: { nightId: string; cueKey: string } | null = null;
const watchers = new Set<() => void>();
const watch = (watcher: () => void) => {
  watchers.add(watcher);
  return () => void watchers.delete(watcher);
};

/** Where the order of the night has been read to its end. */
export const AT_THE_END = 'end';

export function jumpTo(nightId: string, cueKey: string): void {
  held = { nightId, cueKey };
  for (const watcher of watchers) watcher();
}

const isOpen = (reading: Reading, cue: DeskCue): boolean => reading.standings.get(cue.cueKey)?.state === 'open';

/** The open cue that comes after one in the order of the night; where a hold keeps sponsors away, none of theirs. */
export function nextOpenAfter(reading: Reading, cueKey: string | null): DeskCue | null {
  return nextOpenIn(reading.run, reading.standings, cueKey, reading.mayReadSponsors);
}

/** The last cue in the order of the night that something was logged for. */
const lastLogged = (reading: Reading): string | null => reading.run[lastLoggedPlace(reading.run, reading.standings)]?.cueKey ?? null;

/** Where a page that is opened in the middle of a night goes on: after the last cue that was logged. */
function beginning(reading: Reading): string {
  return (nextOpenAfter(reading, lastLogged(reading)) ?? reading.run.find((cue) => isOpen(reading, cue)))?.cueKey ?? AT_THE_END;
}

export interface CurrentCue {
  readonly cueKey: string;
  readonly jump: (cueKey: string) => void;
  /** the neighbor in the order of the night, whatever its state */
  readonly step: (by: 1 | -1) => void;
}

export function useCurrentCue(reading: Reading): CurrentCue {
  const { nightId } = reading.bundle;
  const found = useSyncExternalStore(watch, () => held);
  const cueKey = found?.nightId === nightId ? found.cueKey : beginning(reading);
  useLayoutEffect(() => {
    if (found?.nightId !== nightId) jumpTo(nightId, cueKey);
  }, [found, nightId, cueKey]);
  const step = (by: 1 | -1): void => {
    const next = cueKey === AT_THE_END ? (by === 1 ? undefined : reading.run.at(-1)) : neighborIn(reading.run, reading.standings, cueKey, by);
    jumpTo(nightId, next?.cueKey ?? AT_THE_END);
  };
  return { cueKey, jump: (key) => jumpTo(nightId, key), step };
}
