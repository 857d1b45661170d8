import type { Day } from '../day.ts';
import type { GameClass, GameStatus, Level } from '../season/game.ts';
import type { Counting } from './contract-terms.ts';

/** Over which games a commitment counts. The row of a commitment satisfies it, with its term's days. */
export interface CommitmentTerms {
  readonly id: string;
  readonly counting: Counting;
  /** reads per term, per game or per night, as counted */
  readonly reads: number;
  /** null: from the term's first day */
  readonly startsOn: Day | null;
  /** null: to the term's last day */
  readonly endsOn: Day | null;
  /** none named: every team of ours in the season of its term. Teams that are named may be of other seasons, and their games count. */
  readonly teamIds: readonly string[];
  /** of its term */
  readonly seasonId?: string;
  /** none named: every level */
  readonly levels: readonly Level[];
  /** days on which nothing is read */
  readonly blackoutDays?: readonly Day[];
}

export interface CoveredGame {
  readonly id: string;
  readonly playedOn: Day;
  /** the day it was first planned for, where it has been moved */
  readonly movedFromOn: Day | null;
  readonly status: GameStatus;
  readonly class: GameClass;
  readonly level: Level;
  readonly announced: boolean;
  readonly isHome: boolean;
  readonly teamIds: readonly string[];
  readonly seasonId?: string;
}

/**
 * Whether a commitment counts over a game: an announced home game of its teams, levels and days, of the
 * regular season or the conference. Invitational games are somebody else's program and state-series games
 * belong to the association, so neither is owed. A moved game is judged by the day it was first planned
 * for: it takes its reads along. A blackout day is judged by the day the game is held: the sponsor is away then.
 *
 * @source common practice, no source
 */
export function covers(commitment: CommitmentTerms, game: CoveredGame): boolean {
  if (!game.announced || !game.isHome) return false;
  if (game.class !== 'regular' && game.class !== 'conference') return false;
  const day = game.movedFromOn ?? game.playedOn;
  if (commitment.startsOn !== null && day < commitment.startsOn) return false;
  if (commitment.endsOn !== null && day > commitment.endsOn) return false;
  if (commitment.blackoutDays?.includes(game.playedOn)) return false;
  if (commitment.levels.length > 0 && !commitment.levels.includes(game.level)) return false;
  if (commitment.teamIds.length > 0) return commitment.teamIds.some((team) => game.teamIds.includes(team));
  return commitment.seasonId === undefined || game.seasonId === undefined || commitment.seasonId === game.seasonId;
}

/** Covered games that are to be played or have been: postponed games wait and still count, cancelled ones do not. */
export function coveredGames<Game extends CoveredGame>(commitment: CommitmentTerms, games: readonly Game[]): Game[] {
  return games.filter((game) => game.status !== 'cancelled' && covers(commitment, game));
}

/**
 * How many scheduled reads a commitment promises over the games known.
 *
 * @param nightOf the night a game is held on; games without one count as a night each
 */
export function readsPromised(
  commitment: CommitmentTerms,
  games: readonly CoveredGame[],
  nightOf: (gameId: string) => string | null,
): number {
  if (commitment.counting === 'perTerm') return commitment.reads;
  if (commitment.counting === 'onOccurrence') return 0;
  const covered = coveredGames(commitment, games);
  if (commitment.counting === 'perGame') return commitment.reads * covered.length;
  return commitment.reads * new Set(covered.map((game) => nightOf(game.id) ?? game.id)).size;
}
