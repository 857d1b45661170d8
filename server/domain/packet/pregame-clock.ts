import { clockOfMinutes, minutesOfClock, spokenClock } from '../season/night.ts';
import type { GameForPacket } from './night-for-packet.ts';
import type { Cue } from './packet.ts';

/** Between the last line-up and the start: the huddle, and the officials on the floor. */
const SETTLE_SECONDS = 120;

/**
 * No later than so many minutes before the first game of a night. The teams warm up in what is left over.
 *
 * @source common practice, no source
 */
const AT_LATEST_MINUTES: Readonly<Record<string, number>> = { welcome: 25, anthem: 22, lineUpVisitors: 8 };

/**
 * The clock at which each cue before a game has to begin so that all of them are over two minutes before the start: counted
 * back over their seconds, the first game's opening, anthem and line-ups not later than is usual. Whole minutes, rounded
 * down. Nothing for a game whose start floats.
 *
 * @returns by cue key, in words: "6:38 PM"
 */
export function countedBack(cues: readonly Pick<Cue, 'cueKey' | 'gameId' | 'window' | 'moment' | 'seconds'>[], games: readonly GameForPacket[]): Map<string, string> {
  const texts = new Map<string, string>();
  games.forEach((game, place) => {
    if (!game.startsClock) return;
    const start = minutesOfClock(game.startsClock) * 60;
    let mustEnd = start - SETTLE_SECONDS;
    for (const cue of cues.filter((one) => one.gameId === game.gameId && one.window === 'pregame').toReversed()) {
      const atLatest = place === 0 ? AT_LATEST_MINUTES[cue.moment] : undefined;
      const begins = Math.min(mustEnd - cue.seconds, atLatest === undefined ? Infinity : start - atLatest * 60);
      if (begins < 0) return;
      texts.set(cue.cueKey, spokenClock(clockOfMinutes(Math.floor(begins / 60))));
      mustEnd = begins;
    }
  });
  return texts;
}

/**
 * Seconds there are to speak in before a game: from the welcome on for the first of a night, between the games for one that
 * follows another; null where nobody knows when the one before is over.
 *
 * @param place the game's place in its night, from 0
 */
export function pregameSeconds(game: Pick<GameForPacket, 'startsAfterMinutes'>, place: number): number | null {
  const minutes = place === 0 ? AT_LATEST_MINUTES['welcome']! : (game.startsAfterMinutes ?? null);
  return minutes === null ? null : Math.max(0, minutes * 60 - SETTLE_SECONDS);
}
