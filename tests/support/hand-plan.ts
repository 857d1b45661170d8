import type { Day } from '../../server/domain/day.ts';

export interface SpreadGame {
  readonly gameId: string;
  readonly nightId: string;
  readonly playedOn: Day;
  /** Our teams in this game. */
  readonly teamIds: readonly string[];
  readonly level: string;
  readonly isAnnounced: boolean;
  readonly isHome: boolean;
  /** Places our sponsors may have, by window; a window that is not ours has none. */
  readonly places: Readonly<Record<string, number>>;
}

export interface SpreadCommitment {
  readonly commitmentId: string;
  readonly sponsorId: string;
  readonly readKindId: string;
  readonly counting: 'perTerm' | 'perGame' | 'perNight' | 'onOccurrence';
  /** Reads still owed on remaining games, those already placed there included; with `perGame` and `perNight` the reads of one game or night. */
  readonly readsOwed: number;
  readonly startsOn: Day;
  readonly endsOn: Day;
  /** Empty: any team, any level. */
  readonly teamIds: readonly string[];
  readonly levels: readonly string[];
  readonly leastPerGame: number | null;
  readonly mostPerGame: number | null;
  /** The windows of the read kind, the preferred first. */
  readonly windows: readonly string[];
  /** How many sponsors may hold this kind in one game. */
  readonly sponsorsPerGame: number;
  /** 1 is served first. */
  readonly priority: number;
}

export interface SpreadPlacement {
  readonly commitmentId: string;
  readonly gameId: string;
  readonly window: string;
  readonly place: number;
}

export interface Spread {
  readonly placements: readonly SpreadPlacement[];
  /** Reads for which the remaining games have no place. */
  readonly unplaced: readonly { readonly commitmentId: string; readonly reads: number }[];
}

/**
 * How many of `reads` fall on each of `games` games so that after every game the pace is as even as
 * whole reads allow: after game k, `reads * k / games`, rounded to the nearest, halves down.
 */
export function evenPace(reads: number, games: number): number[] {
  const by = (game: number): number => Math.max(0, Math.ceil((2 * reads * game - games) / (2 * games)));
  return Array.from({ length: games }, (_, place) => (place + 1 === games ? reads : by(place + 1)) - (place === 0 ? 0 : by(place)));
}

/** The games a commitment may be read at, in the order they are played. */
export function eligibleGames(commitment: SpreadCommitment, games: readonly SpreadGame[]): SpreadGame[] {
  const any = (wanted: readonly string[], has: readonly string[]): boolean => wanted.length === 0 || has.some((one) => wanted.includes(one));
  return games.filter(
    (game) =>
      game.isHome && game.isAnnounced && game.playedOn >= commitment.startsOn && game.playedOn <= commitment.endsOn &&
      any(commitment.teamIds, game.teamIds) && any(commitment.levels, [game.level]),
  );
}

/** The reads wanted at each eligible game, before the places are looked at. */
function wantedAt(commitment: SpreadCommitment, games: readonly SpreadGame[]): number[] {
  if (commitment.counting === 'onOccurrence') return games.map(() => 0);
  if (commitment.counting === 'perGame') return games.map(() => commitment.readsOwed);
  if (commitment.counting === 'perNight') {
    return games.map((game, place) => (games.findLastIndex((other) => other.nightId === game.nightId) === place ? commitment.readsOwed : 0));
  }
  const floor = Math.min(commitment.leastPerGame ?? 0, games.length === 0 ? 0 : Math.floor(commitment.readsOwed / games.length));
  const pace = evenPace(commitment.readsOwed - floor * games.length, games.length);
  return pace.map((reads) => reads + floor);
}

class Board {
  readonly placements: SpreadPlacement[] = [];
  private readonly taken = new Map<string, SpreadPlacement>();
  private readonly readsOf = new Map<string, number>();
  private readonly sponsorsOf = new Map<string, Set<string>>();

  constructor(private readonly commitments: ReadonlyMap<string, SpreadCommitment>) {}

  count(commitmentId: string, gameId: string): number {
    return this.readsOf.get(`${commitmentId} ${gameId}`) ?? 0;
  }

  countAll(commitmentId: string): number {
    return [...this.taken.values()].filter((placement) => placement.commitmentId === commitmentId).length;
  }

  note(placement: SpreadPlacement): void {
    this.taken.set(`${placement.gameId} ${placement.window} ${placement.place}`, placement);
    const key = `${placement.commitmentId} ${placement.gameId}`;
    this.readsOf.set(key, (this.readsOf.get(key) ?? 0) + 1);
    const commitment = this.commitments.get(placement.commitmentId);
    if (commitment === undefined) return;
    const kind = `${commitment.readKindId} ${placement.gameId}`;
    this.sponsorsOf.set(kind, (this.sponsorsOf.get(kind) ?? new Set()).add(commitment.sponsorId));
  }

  /** Takes the first free place of the windows the commitment may be read in. */
  place(commitment: SpreadCommitment, game: SpreadGame): boolean {
    if (this.count(commitment.commitmentId, game.gameId) >= (commitment.mostPerGame ?? Infinity)) return false;
    const sponsors = this.sponsorsOf.get(`${commitment.readKindId} ${game.gameId}`);
    if (sponsors !== undefined && !sponsors.has(commitment.sponsorId) && sponsors.size >= commitment.sponsorsPerGame) return false;
    for (const window of commitment.windows) {
      for (let place = 1; place <= (game.places[window] ?? 0); place += 1) {
        if (this.taken.has(`${game.gameId} ${window} ${place}`)) continue;
        const placement = { commitmentId: commitment.commitmentId, gameId: game.gameId, window, place };
        this.placements.push(placement);
        this.note(placement);
        return true;
      }
    }
    return false;
  }
}

/** Places what is wanted game by game; what finds no place moves on, then back to earlier games. */
function spreadOne(board: Board, commitment: SpreadCommitment, games: readonly SpreadGame[]): number {
  const wanted = wantedAt(commitment, games);
  const isFixed = commitment.counting === 'perGame' || commitment.counting === 'perNight';
  const already = isFixed
    ? games.reduce((sum, game) => sum + board.count(commitment.commitmentId, game.gameId), 0)
    : board.countAll(commitment.commitmentId);
  const owed = isFixed || commitment.counting === 'onOccurrence' ? wanted.reduce((sum, reads) => sum + reads, 0) : commitment.readsOwed;
  let left = owed - already;
  let behind = 0;
  games.forEach((game, place) => {
    behind += (wanted[place] ?? 0) - board.count(commitment.commitmentId, game.gameId);
    while (behind > 0 && left > 0 && board.place(commitment, game)) {
      behind -= 1;
      left -= 1;
    }
    if (isFixed) behind = 0;
  });
  if (isFixed) return Math.max(0, left);
  for (let moved = true; left > 0 && moved; ) {
    moved = false;
    for (const game of games) {
      if (left === 0 || !board.place(commitment, game)) continue;
      left -= 1;
      moved = true;
    }
  }
  return Math.max(0, left);
}

/**
 * What a careful person would do by hand, as a measure for plans: a spread of owed reads over the remaining games: each commitment as evenly as whole
 * reads allow, never beyond a window's places, a game's limit or the sponsors a kind may hold.
 * Served by priority, then the fewest eligible games, then the id; the same input gives the same spread.
 *
 * @param games the remaining games, in the order they are played
 * @param alreadyPlaced placements that stay where they are
 */
export function firstSpread(input: {
  readonly commitments: readonly SpreadCommitment[];
  readonly games: readonly SpreadGame[];
  readonly alreadyPlaced: readonly SpreadPlacement[];
}): Spread {
  const board = new Board(new Map(input.commitments.map((commitment) => [commitment.commitmentId, commitment])));
  for (const placement of input.alreadyPlaced) board.note(placement);
  const queue = input.commitments
    .map((commitment) => ({ commitment, games: eligibleGames(commitment, input.games) }))
    .sort((one, other) =>
      one.commitment.priority - other.commitment.priority || one.games.length - other.games.length ||
      (one.commitment.commitmentId < other.commitment.commitmentId ? -1 : 1));
  const unplaced = queue
    .map(({ commitment, games }) => ({ commitmentId: commitment.commitmentId, reads: spreadOne(board, commitment, games) }))
    .filter((rest) => rest.reads > 0);
  return { placements: board.placements, unplaced };
}
