import { useMemo, useRef } from 'react';
import { windowInWords } from '../../server/domain/planning/words/window.ts';
import type { BoardStore } from './board-store.ts';
import { judgeMove, whyItStays } from './judge.ts';
import type { Verdict } from './judge.ts';
import { cardsOf, nextSpot } from './layout-of-board.ts';
import type { Laid } from './layout-of-board.ts';
import type { BoardView, Card, Spot } from './types.ts';

/** The card in hand: taken up, carried over windows, put down or put back. */
export interface Hand {
  take: (cardId: string, by: 'keyboard' | 'pointer') => void;
  over: (to: Spot) => void;
  overNothing: () => void;
  /** with an arrow: on to the next window that takes it, saying why others do not */
  carry: (arrow: string) => void;
  drop: () => void;
  putBack: () => void;
}

interface World {
  view: BoardView | undefined;
  laid: Laid | null;
  mayChange: boolean;
  say: (words: string, isRefusal?: boolean) => void;
  onMove: (card: Card, to: Spot, verdict: Verdict) => void;
}

const MOST_SKIPPED = 40;

export function useHand(store: BoardStore, world: World): Hand {
  const now = useRef(world);
  now.current = world;
  return useMemo((): Hand => {
    const cardInHand = (): Card | undefined => (now.current.view ? cardsOf(now.current.view).find((card) => card.id === store.state.carried?.id) : undefined);
    const placeInWords = (to: Spot): string => `${windowInWords(to.windowKey)}, ${now.current.view?.season.games.find((game) => game.gameId === to.gameId)?.label ?? ''}`;
    const letGo = (): void => store.set({ carried: null, verdict: null });
    const over = (to: Spot): Verdict | null => {
      const card = cardInHand();
      const season = now.current.view?.season;
      if (!card || !season || !store.state.carried) return null;
      const verdict = judgeMove(season, card, to);
      store.set({ carried: { ...store.state.carried, to }, verdict });
      return verdict;
    };
    return {
      take: (cardId, by) => {
        const { view, mayChange, say } = now.current;
        const card = view && cardsOf(view).find((one) => one.id === cardId);
        if (!card) return;
        const why = mayChange ? whyItStays(view.season, card) : 'Only the director plans.';
        if (why !== null) return say(why, by === 'keyboard');
        store.set({ activeId: cardId, carried: { id: cardId, to: { gameId: card.gameId, windowKey: card.windowKey }, by }, verdict: null });
        if (by === 'keyboard') say(`${card.sponsorName} is in hand. Arrows carry it, Enter puts it down, Escape puts it back.`);
      },
      over: (to) => void over(to),
      overNothing: () => {
        const card = cardInHand();
        if (card && store.state.carried) store.set({ carried: { ...store.state.carried, to: { gameId: card.gameId, windowKey: card.windowKey } }, verdict: null });
      },
      carry: (arrow) => {
        const { laid, view, say } = now.current;
        const card = cardInHand();
        if (!laid || !view || !card || !store.state.carried) return;
        const skipped: string[] = [];
        for (let spot = nextSpot(laid, store.state.carried.to, arrow), steps = 0; spot && steps < MOST_SKIPPED; spot = nextSpot(laid, spot, arrow), steps += 1) {
          const verdict = judgeMove(view.season, card, spot);
          if (verdict.tone === 'bad' && !verdict.needsReason) {
            skipped.push(`Not ${placeInWords(spot)}: ${verdict.sentences[0]}`);
            continue;
          }
          over(spot);
          return say([placeInWords(spot), ...verdict.sentences, ...(verdict.needsReason ? ['Enter asks why it may stand there.'] : []), ...skipped.slice(0, 2)].join('. ').replaceAll('..', '.'));
        }
        say(skipped.length > 0 ? skipped.slice(0, 3).join(' ') : 'The board ends here.', skipped.length > 0);
      },
      drop: () => {
        const card = cardInHand();
        const { carried, verdict } = store.state;
        letGo();
        if (!card || !carried || verdict === null || (card.gameId === carried.to.gameId && card.windowKey === carried.to.windowKey)) return;
        now.current.onMove(card, carried.to, verdict);
      },
      putBack: () => {
        const isHeld = store.state.carried !== null;
        letGo();
        if (isHeld) now.current.say('Put back.');
      },
    };
  }, [store]);
}
