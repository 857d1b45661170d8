import type { WindowLoad } from '../../../packet/packet.ts';
import { standing } from '../../take-back.ts';
import type { DeskCue, NightBundle } from '../bundle.ts';
import type { DeskLine } from '../desk-entry.ts';

export type CueState = 'open' | 'read' | 'cutShort' | 'notRead';

/** Where a cue of tonight stands by the log. */
export interface CueStanding {
  readonly cue: DeskCue;
  readonly state: CueState;
  /** the entry that says so; null while the cue is open */
  readonly line: DeskLine | null;
  /** the read was logged more than once and counts once */
  readonly isDoubled: boolean;
  /** the window it was read in where that is not its own */
  readonly movedTo: string | null;
  /** entries that say it was read in full */
  readonly timesRead: number;
}

const RANK = { given: 2, cutShort: 1, notRead: 0 } as const;
const STATES = { given: 'read', cutShort: 'cutShort', notRead: 'notRead' } as const;

/**
 * Where each cue stands, by cue key. The first full reading decides and later ones double it; where there is none, the
 * latest word does: cut short before not read. What is taken back is as if it had never been. Mentions are counted by
 * their happenings and are not looked at here.
 *
 * @param cues of the bundle, and what the table was asked to read
 */
export function cueStandings(cues: readonly DeskCue[], lines: readonly DeskLine[]): ReadonlyMap<string, CueStanding> {
  const deciding = new Map<string, { line: DeskLine; timesRead: number }>();
  for (const line of standing(lines)) {
    if (line.kind !== 'read' || line.cueKey === null || line.outcome === null) continue;
    const before = deciding.get(line.cueKey);
    const timesRead = (before?.timesRead ?? 0) + (line.outcome === 'given' ? 1 : 0);
    const staysBefore = before !== undefined && (before.line.outcome === 'given' || RANK[before.line.outcome!] > RANK[line.outcome]);
    deciding.set(line.cueKey, { line: staysBefore ? before.line : line, timesRead });
  }
  return new Map(cues.map((cue): [string, CueStanding] => {
    const found = deciding.get(cue.cueKey);
    if (!found) return [cue.cueKey, { cue, state: 'open', line: null, isDoubled: false, movedTo: null, timesRead: 0 }];
    const { line, timesRead } = found;
    const movedTo = line.windowKey !== null && cue.windowKey !== null && line.windowKey !== cue.windowKey ? line.windowKey : null;
    return [cue.cueKey, { cue, state: STATES[line.outcome!], line, isDoubled: cue.isSponsored && timesRead > 1, movedTo, timesRead }];
  }));
}

/** One window of a game as the table sees it. */
export interface WindowTonight {
  readonly gameId: string;
  readonly windowKey: string;
  readonly title: string;
  /** null where nothing limits it */
  readonly capacitySeconds: number | null;
  /** a window that may not come and that nobody relies on: its reads wait for the next time-out */
  readonly isUncertain: boolean;
  readonly cues: readonly CueStanding[];
  /** sponsor reads that are still open here */
  readonly readsLeft: number;
  /** seconds of all that is still open here */
  readonly secondsLeft: number;
}

const isUncertain = (window: WindowLoad): boolean => window.mayNotHappen && !window.isReliedOn;

/**
 * The windows of the night in order, each with its cues and what of them is open. What is read when it happens stands in the
 * mention queue instead; a window without cues is left out.
 */
export function windowsTonight(bundle: Pick<NightBundle, 'cues' | 'windows'>, standings: ReadonlyMap<string, CueStanding>): WindowTonight[] {
  const byWindow = new Map<string, CueStanding[]>();
  for (const cue of bundle.cues) {
    const found = standings.get(cue.cueKey);
    if (!found || cue.windowKey === null || cue.moment === 'mention') continue;
    const key = `${cue.gameId} ${cue.windowKey}`;
    byWindow.set(key, [...(byWindow.get(key) ?? []), found]);
  }
  return bundle.windows.flatMap((window) => {
    const cues = byWindow.get(`${window.gameId} ${window.windowKey}`);
    if (!cues) return [];
    const open = cues.filter(({ state }) => state === 'open');
    return [{
      gameId: window.gameId, windowKey: window.windowKey, title: window.title, capacitySeconds: window.capacitySeconds, isUncertain: isUncertain(window), cues,
      readsLeft: open.filter(({ cue }) => cue.isSponsored).length,
      secondsLeft: open.reduce((sum, { cue }) => sum + cue.seconds, 0),
    }];
  });
}

/** What is left to read tonight. Nothing here says "behind": a time-out nobody called is not the announcer's. */
export interface LeftTonight {
  /** sponsor reads in windows that are sure to come or relied on */
  readonly reads: number;
  readonly seconds: number;
  /** sponsor reads that wait for a window that may not come */
  readonly ifItComes: number;
}

/** What is left over all windows of {@link windowsTonight}. */
export function leftTonight(windows: readonly WindowTonight[]): LeftTonight {
  const sure = windows.filter((window) => !window.isUncertain);
  const sum = (of: readonly WindowTonight[]): number => of.reduce((reads, window) => reads + window.readsLeft, 0);
  const open = sure.flatMap(({ cues }) => cues).filter(({ state, cue }) => state === 'open' && cue.isSponsored);
  return { reads: sum(sure), seconds: open.reduce((seconds, { cue }) => seconds + cue.seconds, 0), ifItComes: sum(windows) - sum(sure) };
}
