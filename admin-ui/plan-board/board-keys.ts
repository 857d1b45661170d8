import type { KeyboardEvent, RefObject } from 'react';
import type { BoardStore } from './board-store.ts';
import type { Laid } from './layout-of-board.ts';
import type { BoardView, Card } from './types.ts';
import type { Deeds } from './use-deeds.ts';
import type { Hand } from './use-hand.ts';

interface World {
  view: BoardView;
  laid: Laid;
  mayChange: boolean;
}

/** The cards in sight of a game, from its first window to its last. */
export function column(laid: Laid, at: number): Card[] {
  const game = laid.games[at];
  const cards = game && laid.cards.get(game.gameId);
  return cards ? laid.rows.flatMap((row) => cards[row.key] ?? []).filter((card) => laid.sponsor === '' || card.sponsorId === laid.sponsor) : [];
}

/** The card that an arrow leads to: the one above or below, or the nearest of the next game that has any. */
export function nextCard(laid: Laid, from: Card, arrow: string): Card | null {
  const at = laid.games.findIndex((game) => game.gameId === from.gameId);
  const own = column(laid, at);
  const step = arrow === 'ArrowUp' || arrow === 'ArrowLeft' ? -1 : 1;
  if (arrow === 'ArrowUp' || arrow === 'ArrowDown') return own[own.findIndex((card) => card.id === from.id) + step] ?? null;
  const rowOf = (card: Card): number => laid.rows.findIndex((row) => row.key === card.windowKey);
  for (let other = at + step; other >= 0 && other < laid.games.length; other += step) {
    const [nearest] = column(laid, other).toSorted((one, two) => Math.abs(rowOf(one) - rowOf(from)) - Math.abs(rowOf(two) - rowOf(from)));
    if (nearest) return nearest;
  }
  return null;
}

/** The keys of the board; a key that is not for it is left alone. */
export function boardKeys(store: BoardStore, hand: Hand, deeds: Deeds, world: RefObject<World>): (event: KeyboardEvent) => void {
  return (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const id = (event.target as HTMLElement).getAttribute('data-card');
    const { view, laid, mayChange } = world.current;
    const card = id === null ? undefined : laid.games.flatMap((_, at) => column(laid, at)).find((one) => one.id === id);
    const inHand = store.state.carried?.by === 'keyboard';
    const does: Record<string, (() => void) | undefined> = card === undefined ? {} : {
      Enter: () => (inHand ? dropAndFollow(store, hand) : hand.take(card.id, 'keyboard')),
      ' ': () => (inHand ? dropAndFollow(store, hand) : hand.take(card.id, 'keyboard')),
      Escape: inHand ? () => hand.putBack() : undefined,
      p: mayChange && !card.isHeld ? () => deeds.onPin(card) : undefined,
      c: mayChange && !card.isHeld ? () => store.toggle(card.id) : undefined,
      l: mayChange ? () => deeds.onLock(card.gameId) : undefined,
    };
    if (card && event.key.startsWith('Arrow')) does[event.key] = () => (inHand ? hand.carry(event.key) : step(store, laid, card, event.key));
    if (mayChange) does['u'] = deeds.undo;
    const act = does[event.key.length === 1 ? event.key.toLowerCase() : event.key];
    if (!act || view === undefined) return;
    event.preventDefault();
    store.byKeyboard = true;
    act();
  };
}

function step(store: BoardStore, laid: Laid, from: Card, arrow: string): void {
  const next = nextCard(laid, from, arrow);
  if (next) store.set({ activeId: next.id, focus: store.state.focus + 1 });
}

/** The focus goes along with the card. */
function dropAndFollow(store: BoardStore, hand: Hand): void {
  hand.drop();
  store.set({ focus: store.state.focus + 1 });
}
