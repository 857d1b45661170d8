import { useRef, useState } from 'react';
import type { DeskEntry, NewDeskEntry } from '../../../server/domain/night/desk/desk-entry.ts';
import { useDesk } from '../desk.ts';

/** A second tap on the same place so soon is a bounce of the first. */
const BOUNCE_MILLISECONDS = 500;

export interface Logging {
  /** Whether a tap that logs nothing is one of its own; one that bounces is none. Of the same place as `log`, so neither follows the other by a bounce. */
  readonly isTap: (slot: string) => boolean;
  /** what the last tap came to, for the line below the buttons */
  readonly said: string;
  readonly isTrouble: boolean;
  /**
   * Writes entries one after the other. A tap that bounces writes nothing: the next cue is never logged by accident.
   *
   * @param slot the place on the screen that was tapped
   * @returns whether all of it is on this device
   */
  readonly log: (slot: string, said: string, ...entries: readonly (NewDeskEntry | ((before: DeskEntry) => NewDeskEntry))[]) => Promise<boolean>;
}

export function useLogging(): Logging {
  const { write } = useDesk();
  const [state, setState] = useState({ said: '', isTrouble: false });
  const taps = useRef(new Map<string, number>());
  const isTap = (slot: string): boolean => {
    const now = performance.now();
    if (now - (taps.current.get(slot) ?? -BOUNCE_MILLISECONDS) < BOUNCE_MILLISECONDS) return false;
    taps.current.set(slot, now);
    return true;
  };
  return {
    ...state,
    isTap,
    log: async (slot, said, ...entries) => {
      if (!isTap(slot)) return false;
      try {
        let before: DeskEntry | null = null;
        for (const entry of entries) before = await write(typeof entry === 'function' ? entry(before!) : entry);
        setState({ said, isTrouble: false });
        taps.current.set(slot, performance.now());
        return true;
      } catch {
        setState({ said: 'It waits in the red line above and is stored from there. Do not log it again.', isTrouble: true });
        return false;
      }
    },
  };
}
