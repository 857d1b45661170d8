import type { PlanGame, PlanSeason } from '../../server/domain/planning/season.ts';
import type { BoardReadView, BoardView, Card, Spot } from './types.ts';

/** What the address asks for; an empty word asks for everything. */
export interface Wanted {
  team: string;
  sponsor: string;
  month: string;
}

/** A window that stands on the board as a row: how high it is in every game. */
export interface Row {
  key: string;
  cards: number;
}

export interface Laid {
  /** whose cards alone are shown; empty for all */
  sponsor: string;
  games: readonly PlanGame[];
  rows: readonly Row[];
  /** cards of a game by window */
  cards: ReadonlyMap<string, GameCards>;
}
export type GameCards = Readonly<Record<string, readonly Card[]>>;

export const NO_CARDS: readonly Card[] = [];

const known = new WeakMap<object, Card>();

/** The same read is the same card, so that what did not change is not drawn again. */
function cardOf(read: BoardReadView): Card {
  const card = known.get(read) ?? { ...read, isHeld: false };
  known.set(read, card);
  return card;
}

function heldCards(season: PlanSeason): Card[] {
  const promises = new Map(season.promises.map((promise) => [promise.promiseId, promise]));
  return season.placed.flatMap((read) => {
    const promise = promises.get(read.promiseId);
    if (read.placementId !== null || promise === undefined) return [];
    const { gameId, windowKey, place, promiseId } = read;
    const card = known.get(read) ?? {
      id: `held ${gameId} ${windowKey} ${place}`, promiseId, sponsorId: promise.sponsorId, sponsorName: promise.sponsorName, readKindName: promise.readKindName,
      gameId, windowKey, place, isPinned: false, isLogged: false, isHeld: true,
    };
    known.set(read, card);
    return [card];
  });
}

export const cardsOf = (view: BoardView): Card[] => [...view.reads.map(cardOf), ...heldCards(view.season)];

/** Games across, windows down; `before` keeps what did not change. */
export function layOut(view: BoardView, wanted: Wanted, before: Laid | null): Laid {
  const games = view.season.games.filter((game) => (!wanted.month || game.playedOn.startsWith(wanted.month)) && (!wanted.team || game.teamIds.includes(wanted.team)));
  const here = new Set(games.map((game) => game.gameId));
  const byGame = new Map<string, Record<string, Card[]>>(games.map((game) => [game.gameId, {}]));
  for (const card of cardsOf(view)) if (here.has(card.gameId)) (byGame.get(card.gameId)![card.windowKey] ??= []).push(card);
  const cards = new Map<string, GameCards>();
  for (const [gameId, windows] of byGame) {
    for (const list of Object.values(windows)) list.sort((one, other) => one.place - other.place);
    cards.set(gameId, kept(windows, before?.cards.get(gameId)));
  }
  return { games, cards, sponsor: wanted.sponsor, rows: keptRows(rowsOf(games, cards), before?.rows) };
}

function kept(now: Record<string, Card[]>, before: GameCards | undefined): GameCards {
  if (before === undefined) return now;
  const isSame = (key: string): boolean => now[key]?.length === before[key]?.length && (now[key] ?? []).every((card, at) => card === before[key]![at]);
  const keys = Object.keys(now);
  if (keys.length === Object.keys(before).length && keys.every(isSame)) return before;
  return Object.fromEntries(keys.map((key) => [key, isSame(key) ? before[key]! : now[key]!]));
}

function keptRows(now: Row[], before: readonly Row[] | undefined): readonly Row[] {
  const isSame = before?.length === now.length && now.every((row, at) => row.key === before[at]!.key && row.cards === before[at]!.cards);
  return isSame ? before : now;
}

/** Every window of every game once, in the order of the night; as high as its fullest. */
function rowsOf(games: readonly PlanGame[], cards: ReadonlyMap<string, GameCards>): Row[] {
  const rows = new Map<string, number>();
  const longest = games.toSorted((one, other) => other.windows.length - one.windows.length);
  for (const game of longest) {
    for (const window of game.windows) {
      const has = cards.get(game.gameId)![window.key]?.length ?? 0;
      rows.set(window.key, Math.max(rows.get(window.key) ?? 1, has, window.places));
    }
  }
  return [...rows].map(([key, most]) => ({ key, cards: most }));
}

/** The next window or game in a direction, as the board shows them; null at its edge. */
export function nextSpot(laid: Laid, from: Spot, key: string): Spot | null {
  const game = laid.games.findIndex((one) => one.gameId === from.gameId);
  const row = laid.rows.findIndex((one) => one.key === from.windowKey);
  const [across, down] = key === 'ArrowLeft' ? [-1, 0] : key === 'ArrowRight' ? [1, 0] : key === 'ArrowUp' ? [0, -1] : [0, 1];
  const gameId = laid.games[game + across]?.gameId;
  const windowKey = laid.rows[row + down]?.key;
  return gameId === undefined || windowKey === undefined ? null : { gameId, windowKey };
}

/** The months of a season's games, `2026-12`. */
export const monthsOf = (view: BoardView): string[] => [...new Set(view.season.games.map((game) => game.playedOn.slice(0, 7)))];
