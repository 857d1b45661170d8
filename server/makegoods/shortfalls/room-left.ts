import type { Day } from '../../domain/day.ts';
import { freePlacesIn, ownIn } from '../../domain/makegoods/room-in-game.ts';
import type { ReadWanted, WindowLeft } from '../../domain/makegoods/room-in-game.ts';
import type { RoomLeft } from '../../domain/makegoods/shortfall-of-line.ts';
import { planWindows } from '../../domain/planning/facts/plan-games.ts';
import { covers } from '../../domain/sponsorship/covered-games.ts';
import { profileOfGame } from '../../planning/game-windows.ts';
import type { PlannedGame } from '../../planning/planned-games.service.ts';
import type { SignedCommitment } from '../../planning/signed-commitments.service.ts';
import type { KindRow, LoggedRow, PlacedThere } from './shortfall-rows.service.ts';

/** A game that is not over. */
export interface GameLeft {
  game: PlannedGame;
  /** reads can still be planned into it; else only those that have their place there are to come */
  isOpen: boolean;
  windows: WindowLeft[];
  there: PlacedThere[];
}

const NOT_OVER = new Set(['planned', 'underWay', 'postponed', 'suspended']);

export function isNotOver(game: PlannedGame): boolean {
  return NOT_OVER.has(game.status) && !game.isSignedOff;
}

/** The games that are not over, with what has its place in them. */
export function gamesLeft(games: readonly PlannedGame[], there: readonly PlacedThere[], today: Day, settings: { state: string | null; timeOutsReliedOn: number | null }): GameLeft[] {
  const byGame = new Map<string, PlacedThere[]>();
  for (const read of there) byGame.set(read.gameId, [...(byGame.get(read.gameId) ?? []), read]);
  return games.filter(isNotOver).map((game) => {
    const isOpen = game.status === 'postponed' || (game.status === 'planned' && game.playedOn >= today);
    const profile = profileOfGame(game.sport, game.playedOn, settings.state);
    const windows = isOpen ? planWindows(game.windows, profile, { halftimeSeconds: null, timeOutsReliedOn: settings.timeOutsReliedOn }) : [];
    return { game, isOpen, windows, there: byGame.get(game.id) ?? [] };
  });
}

/** What each game that is left could carry of a commitment as it was promised; where nothing can be planned any more, what has its place or is logged. */
export function roomLeft(commitment: SignedCommitment, left: readonly GameLeft[], logged: readonly LoggedRow[]): RoomLeft[] {
  const wanted = { ...commitment, commitmentId: commitment.id };
  return covered(commitment, left).map(({ game, windows, there }) => {
    const placed = ownIn(there, commitment.id) + freePlacesIn(windows, there, wanted);
    const read = logged.find((row) => row.commitmentId === commitment.id && row.gameId === game.id)?.reads ?? 0;
    return { gameId: game.id, nightId: game.nightId, places: Math.max(placed, read) };
  });
}

/** Places for reads of a kind for this sponsor, in the games left that the commitment covers. */
export function freePlacesOf(kind: KindRow, commitment: SignedCommitment, left: readonly GameLeft[]): number {
  const wanted: ReadWanted = { ...kind, commitmentId: commitment.id, sponsorId: commitment.sponsorId, mostPerGame: null };
  return covered(commitment, left).reduce((sum, { windows, there }) => sum + freePlacesIn(windows, there, wanted), 0);
}

/** Reads of a commitment that have their place in a game that is not over. */
export function placedLeft(commitmentId: string, left: readonly GameLeft[]): { own: number; replacements: number } {
  const reads = left.flatMap(({ there }) => there.filter((read) => read.commitmentId === commitmentId));
  const own = reads.filter((read) => !read.isMakegood).length;
  return { own, replacements: reads.length - own };
}

function covered(commitment: SignedCommitment, left: readonly GameLeft[]): GameLeft[] {
  return left.filter(({ game }) => covers(commitment, game));
}
