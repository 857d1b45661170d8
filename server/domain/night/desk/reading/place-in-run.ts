import type { DeskCue } from '../bundle.ts';
import type { CueStanding } from './reads-left.ts';

type Standings = ReadonlyMap<string, Pick<CueStanding, 'state'>>;

const isOpen = (standings: Standings, cue: DeskCue): boolean => standings.get(cue.cueKey)?.state === 'open';

/** The place of the last cue in the order of the night that something was logged for; -1 where nothing was. */
export function lastLoggedPlace(run: readonly DeskCue[], standings: Standings): number {
  return run.findLastIndex((cue) => !isOpen(standings, cue));
}

/**
 * The cue to go on with after one. After a request, a cue of any time or one that has no room any more, none of which stands
 * in the order of the night, it goes on after the last cue that was logged.
 *
 * @param mayReadSponsors false where a hold keeps sponsors away: then none of theirs comes
 */
export function nextOpenIn(run: readonly DeskCue[], standings: Standings, cueKey: string | null, mayReadSponsors: boolean): DeskCue | null {
  const own = run.findIndex((cue) => cue.cueKey === cueKey);
  const place = own === -1 ? lastLoggedPlace(run, standings) : own;
  return run.slice(place + 1).find((cue) => isOpen(standings, cue) && (mayReadSponsors || !cue.isSponsored)) ?? null;
}

/**
 * The neighbor of a cue in the order of the night, whatever its state. What stands outside that order lies between the last
 * cue that was logged and the one after it.
 *
 * @returns null behind the last cue
 */
export function neighborIn(run: readonly DeskCue[], standings: Standings, cueKey: string, by: 1 | -1): DeskCue | null {
  const own = run.findIndex((cue) => cue.cueKey === cueKey);
  const last = lastLoggedPlace(run, standings);
  const place = own !== -1 ? own + by : by === 1 ? last + 1 : last;
  return run[Math.max(0, place)] ?? null;
}
