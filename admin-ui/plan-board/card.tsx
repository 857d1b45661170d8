import { draggable } from '@atlaskit/pragmatic-drag-and-drop/element/adapter';
import { memo, useContext, useEffect, useRef } from 'react';
import { windowHeading } from '../../server/domain/planning/words/window.ts';
import { BoardStoreContext, useBoardState } from './board-store.ts';
import { LockSign, PinSign } from './signs.tsx';
import { initialsOf } from './tint.ts';
import type { Tint } from './tint.ts';
import type { Card } from './types.ts';

interface Props {
  card: Card;
  gameLabel: string;
  /** its night is locked */
  isLocked: boolean;
  tint: Tint;
}

/** What a person hears who does not see the card. */
export function cardInWords(card: Card, gameLabel: string, isLocked: boolean): string {
  const states = [card.isHeld ? 'kept for an open offer' : '', card.isPinned ? 'pinned' : '', card.isLogged ? 'logged at the table' : '', isLocked ? 'its night is locked' : ''].filter(Boolean);
  return [card.sponsorName, card.readKindName, windowHeading(card.windowKey), gameLabel, ...states].join(', ');
}

/** One read: its sponsor's mark, name and tint; in hand it is lifted, and a place kept for an offer is only an outline. */
export const ReadCard = memo(function ReadCard({ card, gameLabel, isLocked, tint: { ground, edge } }: Props) {
  const element = useRef<HTMLButtonElement>(null);
  const store = useContext(BoardStoreContext);
  const flags = useBoardState((state) => [state.activeId === card.id && 'is-active', state.chosen.has(card.id) && 'is-chosen', state.carried?.id === card.id && 'is-carried'].filter(Boolean).join(' '));
  const focus = useBoardState((state) => (state.activeId === card.id ? state.focus : 0));
  const stays = card.isHeld || card.isLogged || isLocked;
  useEffect(() => {
    if (store.state.activeId !== card.id) return;
    const isWanted = focus > store.answered;
    store.answered = Math.max(store.answered, focus);
    if (isWanted || (store.byKeyboard && document.activeElement === document.body)) element.current?.focus();
  }, [focus, store, card.id]);
  useEffect(() => (stays ? undefined : draggable({ element: element.current!, getInitialData: () => ({ cardId: card.id }) })), [card.id, stays]);
  const isActive = flags.includes('is-active');
  return (
    <button
      ref={element}
      type="button"
      className={`plan-card ${flags}${card.isHeld ? ' is-held' : ''}${stays ? ' stays' : ''}`}
      style={card.isHeld ? { borderColor: edge } : { backgroundColor: ground, borderColor: edge }}
      data-card={card.id}
      tabIndex={isActive ? 0 : -1}
      aria-pressed={flags.includes('is-chosen')}
      aria-label={cardInWords(card, gameLabel, isLocked)}
      title={`${card.sponsorName}: ${card.readKindName}`}
      onFocus={() => store.state.activeId === card.id || store.set({ activeId: card.id })}
      onClick={(event) => {
        if (store.state.choosing || event.ctrlKey || event.metaKey || event.shiftKey) store.toggle(card.id);
        else store.set({ activeId: card.id });
      }}
    >
      <span className="plan-mark" style={{ backgroundColor: edge }} aria-hidden="true">{initialsOf(card.sponsorName)}</span>
      <span className="plan-name">{card.sponsorName}</span>
      {card.isPinned && <PinSign />}
      {isLocked && <LockSign />}
      {flags.includes('is-chosen') && <span className="plan-sign" aria-hidden="true">✓</span>}
    </button>
  );
});
