import { useMemo, useRef } from 'react';
import { windowInWords } from '../../server/domain/planning/words/window.ts';
import type { Verdict } from './judge.ts';
import type { ToPlace } from './move-dialog.tsx';
import type { CardDeeds } from './one-read.tsx';
import type { BoardView, Card, Change, Spot } from './types.ts';
import type { Plan } from './use-plan.ts';

/** What a dialog is open for. */
export type Asking = { move: Card } | { place: { promiseId: string; sponsorName: string; readKindName: string } } | { reasonFor: { card: Card; to: Spot; sentences: readonly string[] } };

export interface Deeds extends CardDeeds {
  /** a card was let go over a window */
  onDropped: (card: Card, to: Spot, verdict: Verdict) => void;
  onLock: (gameId: string) => void;
  undo: () => void;
  move: (card: Card, to: Spot, reason?: string) => void;
  place: (what: ToPlace, to: Spot, reason?: string) => void;
}

interface World {
  view: BoardView;
  plan: Plan;
  say: (words: string, isRefusal?: boolean) => void;
  setAsking: (asking: Asking | null) => void;
}

/** Everything that can be done on the board, said as it is done; the same object for as long as the page is open. */
export function useDeeds(world: World): Deeds {
  const now = useRef(world);
  now.current = world;
  return useMemo((): Deeds => {
    const spotInWords = (to: Spot): string => `${windowInWords(to.windowKey)} of ${now.current.view.season.games.find((game) => game.gameId === to.gameId)?.label ?? 'the game'}`;
    const change = (changes: Change[], said: string, reason?: string): void => void now.current.plan.change(changes, said, reason);
    const move = (card: Card, to: Spot, reason?: string): void => change([{ kind: 'move', placementId: card.id, ...to }], `${card.sponsorName} is now in ${spotInWords(to)}.`, reason);
    return {
      move,
      place: (what, to, reason) => ('card' in what ? move(what.card, to, reason) : change([{ kind: 'add', promiseId: what.promiseId, ...to }], `${what.sponsorName} has a place in ${spotInWords(to)}.`, reason)),
      onDropped: (card, to, verdict) => {
        if (verdict.needsReason) now.current.setAsking({ reasonFor: { card, to, sentences: verdict.sentences } });
        else if (verdict.tone === 'bad') now.current.say(`Not moved. ${verdict.sentences.join(' ')}`, true);
        else move(card, to);
      },
      onMove: (card) => now.current.setAsking({ move: card }),
      onPin: (card) => change([{ kind: card.isPinned ? 'unpin' : 'pin', placementId: card.id }], `${card.sponsorName} is ${card.isPinned ? 'not pinned any more' : 'pinned'}.`),
      onTakeOut: (card) => change([{ kind: 'remove', placementId: card.id }], `${card.sponsorName} is taken out of ${spotInWords(card)}.`),
      onLock: (gameId) => {
        const { view, plan, say } = now.current;
        const game = view.season.games.find((one) => one.gameId === gameId);
        if (!game) return;
        if (view.games.find((one) => one.gameId === gameId)?.lock?.why === 'issued') return say('The packet of this night is issued, so it stays locked. It is unlocked on the page of the night, with a reason.', true);
        void plan.lock(game.nightId, game.isLocked ? 'unlock' : 'lock', `The night of ${game.label} is ${game.isLocked ? 'open again' : 'locked'}.`);
      },
      undo: () => void now.current.plan.undo(),
    };
  }, []);
}
