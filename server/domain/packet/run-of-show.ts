import { profileAt, windowTitle } from './game-windows.ts';
import type { NightForPacket } from './night-for-packet.ts';
import type { Cue, RunRow } from './packet.ts';

/** The night line by line: what is bound to a window, in its order. Notices and emergencies have no hour. */
export function runOfShow(night: NightForPacket, cues: readonly Cue[]): RunRow[] {
  const profiles = new Map(night.games.map((game) => [game.gameId, profileAt(night, game)]));
  return cues
    .filter((cue) => cue.windowKey !== null)
    .map(({ number, code, startsText, windowKey, gameId, title, sponsorName, whoText, seconds, isSponsored }) => ({
      number, code, startsText, windowTitle: windowTitle((gameId === null ? null : profiles.get(gameId)) ?? null, windowKey!),
      gameId, title, sponsorName, whoText, seconds, isSponsored,
    }));
}
