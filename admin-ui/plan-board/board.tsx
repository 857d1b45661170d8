import { monitorForElements } from '@atlaskit/pragmatic-drag-and-drop/element/adapter';
import { Box } from '@mui/material';
import { defaultRangeExtractor, useVirtualizer } from '@tanstack/react-virtual';
import { useContext, useEffect, useRef } from 'react';
import type { KeyboardEvent } from 'react';
import { windowHeading } from '../../server/domain/planning/words/window.ts';
import { BOARD_STYLE } from './board-style.ts';
import { BoardStoreContext, useBoardState } from './board-store.ts';
import { GameColumn } from './column.tsx';
import type { Laid } from './layout-of-board.ts';
import { COLUMN_WIDTH, HEAD_HEIGHT, NAMES_WIDTH, rowHeight } from './measures.ts';
import type { Tint } from './tint.ts';
import type { BoardGameView, Spot } from './types.ts';
import type { Hand } from './use-hand.ts';

interface Props {
  laid: Laid;
  facts: ReadonlyMap<string, BoardGameView>;
  sponsor: string;
  tints: ReadonlyMap<string, Tint>;
  mayChange: boolean;
  hand: Hand;
  onKey: (event: KeyboardEvent) => void;
  onLock: (gameId: string) => void;
}

/** Games across, windows down. Only the games in sight are drawn, and the one that a card is carried from. */
export function Board({ laid, facts, sponsor, tints, mayChange, hand, onKey, onLock }: Props) {
  const box = useRef<HTMLDivElement>(null);
  const store = useContext(BoardStoreContext);
  const kept = useKeptColumn(laid);
  const columns = useVirtualizer({
    count: laid.games.length,
    horizontal: true,
    getScrollElement: () => box.current,
    estimateSize: () => COLUMN_WIDTH,
    getItemKey: (index) => laid.games[index]!.gameId,
    scrollPaddingStart: NAMES_WIDTH,
    paddingStart: NAMES_WIDTH,
    overscan: 2,
    useFlushSync: false,
    rangeExtractor: (range) => [...new Set([...defaultRangeExtractor(range), ...kept.filter((at) => at >= 0)])].sort((one, other) => one - other),
  });
  useEffect(() => monitorForElements({
    onDragStart: ({ source }) => hand.take(String(source.data['cardId']), 'pointer'),
    onDropTargetChange: ({ location }) => {
      const target = location.current.dropTargets[0];
      if (target) hand.over({ gameId: String(target.data['gameId']), windowKey: String(target.data['windowKey']) });
      else hand.overNothing();
    },
    onDrop: ({ location }) => (location.current.dropTargets.length > 0 ? hand.drop() : hand.putBack()),
  }), [hand]);
  const to = useBoardState((state) => (state.carried?.by === 'keyboard' ? state.carried.to : null));
  useEffect(() => {
    if (to) showSpot(box.current, columns, laid, to);
  }, [to]);
  const focus = useBoardState((state) => state.focus);
  useEffect(() => {
    const at = kept[0] ?? -1;
    if (focus > 0 && at >= 0 && document.activeElement?.getAttribute('data-card') !== store.state.activeId) columns.scrollToIndex(at, { align: 'auto' });
  }, [focus]);
  const height = HEAD_HEIGHT + laid.rows.reduce((sum, row) => sum + rowHeight(row), 0);
  return (
    <Box ref={box} sx={BOARD_STYLE} role="group" aria-label="Plan board: games across, windows down" onKeyDown={onKey} onPointerDown={() => void (store.byKeyboard = false)} data-board>
      <div className="plan-sheet" style={{ width: columns.getTotalSize(), height }}>
        <div className="plan-names" aria-hidden="true">
          <div className="plan-corner" style={{ height: HEAD_HEIGHT }} />
          {laid.rows.map((row) => <div key={row.key} style={{ height: rowHeight(row) }}>{windowHeading(row.key)}</div>)}
        </div>
        {columns.getVirtualItems().map(({ key, index, start }) => {
          const game = laid.games[index]!;
          return (
            <div key={key} className="plan-place" style={{ transform: `translateX(${start}px)`, left: 0, height }}>
              <GameColumn game={game} facts={facts.get(game.gameId)} rows={laid.rows} cards={laid.cards.get(game.gameId)!} sponsor={sponsor} tints={tints} mayChange={mayChange} onLock={onLock} />
            </div>
          );
        })}
      </div>
    </Box>
  );
}

/** The columns of the active card and of the card in hand stay drawn wherever the board is scrolled to. */
function useKeptColumn(laid: Laid): readonly number[] {
  const activeId = useBoardState((state) => state.activeId);
  const carriedId = useBoardState((state) => state.carried?.id ?? null);
  const columnOf = (id: string | null): number =>
    id === null ? -1 : laid.games.findIndex((game) => Object.values(laid.cards.get(game.gameId)!).some((cards) => cards.some((card) => card.id === id)));
  const active = columnOf(activeId);
  return carriedId === activeId ? [active] : [active, columnOf(carriedId)];
}

/** Brings the window that a card is carried over into sight. */
function showSpot(box: HTMLDivElement | null, columns: { scrollToIndex: (at: number, options: { align: 'auto' }) => void }, laid: Laid, to: Spot): void {
  columns.scrollToIndex(laid.games.findIndex((game) => game.gameId === to.gameId), { align: 'auto' });
  if (!box) return;
  const row = laid.rows.findIndex((one) => one.key === to.windowKey);
  const top = HEAD_HEIGHT + laid.rows.slice(0, row).reduce((sum, one) => sum + rowHeight(one), 0);
  const bottom = top + rowHeight(laid.rows[row]!);
  if (top < box.scrollTop + HEAD_HEIGHT) box.scrollTop = top - HEAD_HEIGHT;
  else if (bottom > box.scrollTop + box.clientHeight) box.scrollTop = bottom - box.clientHeight;
}
