import { dropTargetForElements } from '@atlaskit/pragmatic-drag-and-drop/element/adapter';
import { memo, useEffect, useRef } from 'react';
import type { PlanGame, PlanWindow } from '../../server/domain/planning/season.ts';
import { windowHeading } from '../../server/domain/planning/words/window.ts';
import { dayText } from '../format/day.ts';
import { useBoardState } from './board-store.ts';
import { ReadCard } from './card.tsx';
import { HEAD_HEIGHT, rowHeight } from './measures.ts';
import { NO_CARDS } from './layout-of-board.ts';
import type { GameCards, Row } from './layout-of-board.ts';
import { LockSign, OpenSign } from './signs.tsx';
import { tintOfHue } from './tint.ts';
import type { Tint } from './tint.ts';
import type { BoardGameView, Card } from './types.ts';

const PLAIN = tintOfHue(0, 'light');

interface ColumnProps {
  game: PlanGame;
  facts: BoardGameView | undefined;
  rows: readonly Row[];
  cards: GameCards;
  sponsor: string;
  tints: ReadonlyMap<string, Tint>;
  mayChange: boolean;
  onLock: (gameId: string) => void;
}

/** One game from its first window to its last. */
export const GameColumn = memo(function GameColumn({ game, facts, rows, cards, sponsor, tints, mayChange, onLock }: ColumnProps) {
  const when = dayText(game.playedOn, 'weekday');
  const isIssued = facts?.lock?.why === 'issued';
  return (
    <section className={`plan-column${game.isLocked ? ' is-locked' : ''}`} aria-label={`${game.label}, ${when}${game.isLocked ? ', locked' : ''}`}>
      <div className="plan-head" style={{ height: HEAD_HEIGHT }}>
        <strong>{when}</strong>
        <span className="plan-label" title={game.label}>{game.label}</span>
        {isIssued || !mayChange ? (
          <span className="plan-state">{game.isLocked && <LockSign />}{game.isLocked ? (isIssued ? 'Packet issued' : 'Locked') : 'Open'}</span>
        ) : (
          <button type="button" className="plan-lock" aria-pressed={game.isLocked} aria-label={`${game.isLocked ? 'Unlock' : 'Lock'} the night of ${game.label}, ${when}`} onClick={() => onLock(game.gameId)}>
            {game.isLocked ? <LockSign /> : <OpenSign />}{game.isLocked ? 'Locked' : 'Lock'}
          </button>
        )}
      </div>
      {rows.map((row) => {
        const window = game.windows.find((one) => one.key === row.key);
        return (
          <WindowCell key={row.key} windowKey={row.key} window={window} cards={cards[row.key] ?? NO_CARDS} height={rowHeight(row)}
            gameId={game.gameId} gameLabel={`${game.label}, ${when}`} isLocked={game.isLocked} sponsor={sponsor} tints={tints} />
        );
      })}
    </section>
  );
});

interface CellProps {
  windowKey: string;
  window: PlanWindow | undefined;
  cards: readonly Card[];
  height: number;
  gameId: string;
  gameLabel: string;
  isLocked: boolean;
  sponsor: string;
  tints: ReadonlyMap<string, Tint>;
}

/** A window of a game: its reads, its free places, and what would become of the card over it. */
const WindowCell = memo(function WindowCell({ windowKey, window, cards, height, gameId, gameLabel, isLocked, sponsor, tints }: CellProps) {
  const element = useRef<HTMLDivElement>(null);
  const tone = useBoardState((state) => (state.carried?.to.gameId === gameId && state.carried.to.windowKey === windowKey ? (state.verdict?.tone ?? 'good') : ''));
  useEffect(() => dropTargetForElements({ element: element.current!, getData: () => ({ gameId, windowKey }) }), [gameId, windowKey]);
  const shown = sponsor ? cards.filter((card) => card.sponsorId === sponsor) : cards;
  const others = cards.length - shown.length;
  const free = Math.max(0, (window?.places ?? 0) - cards.length);
  const isOurs = window !== undefined && (window.places > 0 || cards.length > 0);
  return (
    <div ref={element} className={`plan-cell${isOurs ? '' : ' is-none'}${tone ? ` over-${tone}` : ''}`} style={{ height }} role="group" data-spot={`${gameId} ${windowKey}`}
      aria-label={`${windowHeading(windowKey)}: ${isOurs ? `${free} free` : 'no places'}`}>
      {shown.map((card) => <ReadCard key={card.id} card={card} gameLabel={gameLabel} isLocked={isLocked} tint={tints.get(card.sponsorId) ?? PLAIN} />)}
      {others > 0 && <span className="plan-others">{others === 1 ? '1 other read' : `${others} other reads`}</span>}
      {Array.from({ length: free }, (_, at) => <span key={at} className="plan-free" aria-hidden="true" />)}
      {!isOurs && <span className="plan-none" aria-hidden="true">–</span>}
    </div>
  );
});
