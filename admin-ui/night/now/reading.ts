import { useMemo } from 'react';
import type { DeskCue, NightBundle } from '../../../server/domain/night/desk/bundle.ts';
import type { DeskLine } from '../../../server/domain/night/desk/desk-entry.ts';
import { holdOf, mayReadSponsors } from '../../../server/domain/night/desk/reading/hold.ts';
import type { Hold } from '../../../server/domain/night/desk/reading/hold.ts';
import { mentionQueue } from '../../../server/domain/night/desk/reading/mention-queue.ts';
import type { QueuedMention } from '../../../server/domain/night/desk/reading/mention-queue.ts';
import { capacityTonight, orderInShorterWindows, shorterWindows, slidTimes, timesTonight } from '../../../server/domain/night/desk/reading/moved-times.ts';
import type { ShorterWindow } from '../../../server/domain/night/desk/reading/moved-times.ts';
import { cueStandings, leftTonight, windowsTonight } from '../../../server/domain/night/desk/reading/reads-left.ts';
import type { CueStanding, LeftTonight, WindowTonight } from '../../../server/domain/night/desk/reading/reads-left.ts';
import { useDesk } from '../desk.ts';

/** Everything the reading part of the desk knows of the night, worked out once for each new line of the log. */
export interface Reading {
  readonly bundle: NightBundle;
  readonly standings: ReadonlyMap<string, CueStanding>;
  readonly windows: readonly WindowTonight[];
  readonly left: LeftTonight;
  readonly hold: Hold;
  readonly mayReadSponsors: boolean;
  readonly queue: readonly QueuedMention[];
  /** the cues in the order they are read; without what has no room any more */
  readonly run: readonly DeskCue[];
  readonly shorter: readonly ShorterWindow[];
  /** clock-back times by cue key */
  readonly startsTexts: ReadonlyMap<string, string>;
}

function readingOf(bundle: NightBundle, lines: readonly DeskLine[]): Reading {
  const standings = cueStandings(bundle.cues, lines);
  const times = timesTonight(lines);
  const capacity = capacityTonight(bundle, times);
  const shorter = shorterWindows(bundle, standings, times);
  const orders = orderInShorterWindows(bundle, lines);
  const windows = windowsTonight(bundle, standings).map((window) => {
    const order = orders.get(`${window.gameId} ${window.windowKey}`);
    const capacitySeconds = capacity(window.gameId, window.windowKey);
    return { ...window, capacitySeconds, cues: order?.map((cueKey) => standings.get(cueKey)!) ?? window.cues };
  });
  const out = new Set(shorter.flatMap(({ fallsOut }) => fallsOut.map(({ cueKey }) => cueKey)));
  const hold = holdOf(lines);
  return {
    bundle, standings, windows, left: leftTonight(windows), hold, mayReadSponsors: mayReadSponsors(hold), queue: mentionQueue(bundle, lines),
    run: windows.flatMap(({ cues }) => cues.map(({ cue }) => cue)).filter(({ cueKey }) => !out.has(cueKey)), shorter, startsTexts: slidTimes(bundle, times),
  };
}

let latest: { bundle: NightBundle; lines: readonly DeskLine[]; reading: Reading } | null = null;

/** All regions of the page ask; the answer for one state of the log is worked out once. */
export function useReading(): Reading {
  const { bundle, lines } = useDesk();
  return useMemo(() => {
    if (latest?.bundle !== bundle || latest.lines !== lines) latest = { bundle, lines, reading: readingOf(bundle, lines) };
    return latest.reading;
  }, [bundle, lines]);
}
