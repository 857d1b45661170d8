import type { CueStanding, WindowTonight } from './reads-left.ts';

/** How a window's time is used, by the cues' own estimates. */
export interface WindowSeconds {
  /** null where nothing limits the window */
  readonly leftSeconds: number | null;
  /** what would be left after the cue in hand; below zero where it does not fit any more */
  readonly afterCueSeconds: number | null;
}

/**
 * The seconds left in a window: those there are, less what was read in it, cut short or moved here from another window. A
 * doubled read took its time once: two people logged one voice.
 *
 * @param standings of all cues of the night
 * @param cueSeconds of the cue in hand; 0 for none or for one that was read already
 */
export function windowSeconds(window: Pick<WindowTonight, 'gameId' | 'windowKey' | 'capacitySeconds'>, standings: Iterable<CueStanding>, cueSeconds: number): WindowSeconds {
  if (window.capacitySeconds === null) return { leftSeconds: null, afterCueSeconds: null };
  let used = 0;
  for (const { cue, state, movedTo } of standings) {
    if (state !== 'read' && state !== 'cutShort') continue;
    if (cue.gameId === window.gameId && (movedTo ?? cue.windowKey) === window.windowKey) used += cue.seconds;
  }
  const leftSeconds = Math.max(0, Math.round(window.capacitySeconds - used));
  return { leftSeconds, afterCueSeconds: Math.round(window.capacitySeconds - used - cueSeconds) };
}
