import { mustFix, worthKnowing } from './readiness-line.ts';
import type { Looked, ReadinessLine } from './readiness.ts';

/** Windows that hold more than there is time for, each with the cue to move. */
export function linesOfWindows({ night, cues, windows }: Looked): ReadinessLine[] {
  return windows.filter(({ overSeconds }) => overSeconds > 0).map((window) => {
    const move = cues.find((cue) => cue.number === window.moveCueNumber);
    const level = night.games.length > 1 ? `, ${night.games.find(({ gameId }) => gameId === window.gameId)?.level}` : '';
    const advice = move === undefined ? 'Shorten what is read in it.' : `Move ${move.code}, ${move.sponsorName ?? move.title}.`;
    const sentence = `${window.title}${level}: ${Math.ceil(window.filledSeconds)} seconds to read and ${window.capacitySeconds} to read them in, ${window.overSeconds} too many. ${advice}`;
    const mend = { resource: 'nights', id: night.nightId, tab: move?.isSponsored === false ? 'packet' : 'placements' };
    return window.mayNotHappen ? worthKnowing('window-overfull', sentence, mend, window.gameId) : mustFix('window-overfull', sentence, mend, window.gameId);
  });
}
