import { createContext, useContext, useSyncExternalStore } from 'react';
import type { Verdict } from './judge.ts';
import type { Spot } from './types.ts';

export interface BoardState {
  /** the card that the keyboard stands on */
  activeId: string | null;
  /** counts up when the active card is to take the focus */
  focus: number;
  /** the card in hand, and where it would go */
  carried: { id: string; to: Spot; by: 'keyboard' | 'pointer' } | null;
  verdict: Verdict | null;
  chosen: ReadonlySet<string>;
  choosing: boolean;
}

/** What changes with every key and every pixel of a drag: each card and window listens for its own part only. */
export class BoardStore {
  state: BoardState = { activeId: null, focus: 0, carried: null, verdict: null, chosen: new Set(), choosing: false };
  /** the last word was the keyboard's: a card that is drawn anew takes the focus back */
  byKeyboard = false;
  /** the last wish for the focus that a card has answered */
  answered = 0;
  private readonly listeners = new Set<() => void>();

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  set(change: Partial<BoardState>): void {
    this.state = { ...this.state, ...change };
    for (const listener of this.listeners) listener();
  }

  toggle(id: string): void {
    const chosen = new Set(this.state.chosen);
    if (!chosen.delete(id)) chosen.add(id);
    this.set({ chosen, choosing: true });
  }
}

export const BoardStoreContext = createContext(new BoardStore());

/** @param part a text, a number or a part of the state that stays the same object until it changes */
export function useBoardState<T>(part: (state: BoardState) => T): T {
  const store = useContext(BoardStoreContext);
  return useSyncExternalStore(store.subscribe, () => part(store.state));
}
