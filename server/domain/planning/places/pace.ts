import type { OpenSlot } from './open-season.ts';

/** Buckets of a long season; a season of up to sixteen games has one for each game. */
const MOST_BUCKETS = 12;
const MOST_GAMES_ALONE = 16;
/** A read's sixtieth: pace is measured in it, in whole numbers. */
export const PACE_PER_READ = 60;

export interface PaceBucket {
  /** indexes in the slot's games: from this one, up to the one before `until` */
  readonly from: number;
  readonly until: number;
  /** reads that should still be to come after it for an even pace, in sixtieths of a read; those that stay are not among them */
  readonly toComeSixtieths: number;
}

/**
 * A slot's games in buckets, and what should still be to come after each: an even pace over the games, whole
 * sixtieths of a read, halves up. Common practice, no source.
 */
export function paceBuckets({ reads, games }: OpenSlot): PaceBucket[] {
  const count = games.length <= MOST_GAMES_ALONE ? games.length : MOST_BUCKETS;
  const all = reads + games.reduce((sum, game) => sum + game.fixed, 0);
  let given = 0;
  return Array.from({ length: count }, (_, bucket) => {
    const from = Math.floor((bucket * games.length) / count);
    const until = Math.floor(((bucket + 1) * games.length) / count);
    for (let at = from; at < until; at += 1) given += games[at]!.fixed;
    const ideal = Math.floor((2 * PACE_PER_READ * all * until + games.length) / (2 * games.length));
    return { from, until, toComeSixtieths: (given + reads) * PACE_PER_READ - ideal };
  });
}

/** Reads a game has by an even pace, by the slot's games: after game k, `all * k / games` of them, halves down. */
export function evenShares({ reads, games }: OpenSlot): number[] {
  const all = reads + games.reduce((sum, game) => sum + game.fixed, 0);
  const by = (count: number): number => (count === games.length ? all : Math.max(0, Math.ceil((2 * all * count - games.length) / (2 * games.length))));
  return games.map((_, at) => by(at + 1) - by(at));
}
