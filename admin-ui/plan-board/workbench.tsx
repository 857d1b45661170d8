import { Box, Button, Tab, Tabs, useMediaQuery, useTheme } from '@mui/material';
import { useContext, useEffect, useMemo, useRef, useState } from 'react';
import { AskPlanButton } from '../plan-proposals/ask-plan-button.tsx';
import { iMay } from '../session/rights.ts';
import { Board } from './board.tsx';
import { BoardStoreContext } from './board-store.ts';
import { BulkBar } from './bulk-bar.tsx';
import { useDeeds } from './use-deeds.ts';
import type { Asking } from './use-deeds.ts';
import { BoardDialogs } from './dialogs.tsx';
import { EmptyBoard } from './empty-board.tsx';
import { useHand } from './use-hand.ts';
import { boardKeys, column } from './board-keys.ts';
import { Keys } from './keys.tsx';
import { layOut } from './layout-of-board.ts';
import type { Laid, Wanted } from './layout-of-board.ts';
import { ListForm } from './list-form.tsx';
import { OneRead } from './one-read.tsx';
import { tintsOf } from './tint.ts';
import { Totals } from './totals.tsx';
import type { Unplaced } from './totals.tsx';
import type { BoardView } from './types.ts';
import type { Plan } from './use-plan.ts';
import { VerdictNote } from './verdict-note.tsx';

interface Props {
  view: BoardView;
  plan: Plan;
  wanted: Wanted;
  isList: boolean;
  onView: (name: string) => void;
  say: (words: string, isRefusal?: boolean) => void;
}

/** What is owed stands beside the board where there is room, and before the list. */
const BESIDE = {
  board: { display: 'grid', gridTemplateColumns: 'minmax(0, 1fr)', gap: 2, alignItems: 'start', '@media (min-width: 1320px)': { gridTemplateColumns: 'minmax(0, 1fr) 296px' } },
  list: { display: 'block' },
} as const;

/** The board or its list, with what is owed beside it and what can be done above it. */
export function Workbench({ view, plan, wanted, isList, onView, say }: Props) {
  const store = useContext(BoardStoreContext);
  const isNarrow = useMediaQuery('(max-width: 699.95px)');
  const mode = useTheme().palette.mode;
  const before = useRef<Laid | null>(null);
  const laid = useMemo(() => (before.current = layOut(view, wanted, before.current)), [view, wanted]);
  const sponsors = [...new Set([...view.reads, ...view.season.promises].map((one) => one.sponsorId))].sort().join(' ');
  const tints = useMemo(() => tintsOf(sponsors.split(' '), mode), [sponsors, mode]);
  const facts = useMemo(() => new Map(view.games.map((game) => [game.gameId, game])), [view.games]);
  const mayChange = iMay('plan', 'edit');
  const [asking, setAsking] = useState<Asking | null>(null);
  const deeds = useDeeds({ view, plan, say, setAsking });
  const hand = useHand(store, { view, laid, mayChange, say, onMove: deeds.onDropped });
  const keys = useRef({ view, laid, mayChange });
  keys.current = { view, laid, mayChange };
  const onKey = useMemo(() => boardKeys(store, hand, deeds, keys), [store, hand, deeds]);
  useEffect(() => {
    const cards = laid.games.flatMap((_, at) => column(laid, at));
    if (!cards.some((card) => card.id === store.state.activeId)) store.set({ activeId: cards[0]?.id ?? null });
  }, [laid, store]);
  const own = mayChange ? deeds : null;
  const onPlace = own && ((promise: Unplaced) => setAsking({ place: promise }));
  const shownAsList = isList || isNarrow;
  const dialogs = <BoardDialogs asking={asking} view={view} deeds={deeds} onClose={() => setAsking(null)} />;
  if (view.season.games.length === 0 || view.season.placed.length === 0) {
    return <EmptyBoard view={view}><Totals view={view} sponsor={wanted.sponsor} onPlace={onPlace} />{dialogs}</EmptyBoard>;
  }
  return (
    <>
      <Box sx={{ display: 'flex', flexWrap: 'wrap', gap: 1, alignItems: 'center', mb: 1 }}>
        {!isNarrow && (
          <Tabs value={shownAsList ? 'list' : 'board'} onChange={(_, name: string) => onView(name === 'list' ? 'list' : '')} aria-label="Form of the plan" sx={{ mr: 1 }}>
            <Tab value="board" label="Board" />
            <Tab value="list" label="List" />
          </Tabs>
        )}
        {own && <BulkBar view={view} onChange={(changes, said) => void plan.change(changes, said)} />}
        {own && <Button variant="outlined" disabled={plan.undoable === 0} onClick={() => void plan.undo()}>Undo</Button>}
        {own && <Box sx={{ ml: { lg: 'auto' } }}><AskPlanButton seasonId={view.seasonId} label="Plan again" /></Box>}
      </Box>
      <Box sx={BESIDE[shownAsList ? 'list' : 'board']}>
        {!shownAsList && (
          <Box sx={{ minWidth: 0 }}>
            <Board laid={laid} facts={facts} sponsor={wanted.sponsor} tints={tints} mayChange={mayChange} hand={hand} onKey={onKey} onLock={deeds.onLock} />
            <VerdictNote />
            <Keys />
          </Box>
        )}
        <Box sx={{ minWidth: 0 }}>
          {!shownAsList && <OneRead view={view} deeds={own} />}
          <Totals view={view} sponsor={wanted.sponsor} onPlace={onPlace} />
        </Box>
      </Box>
      {shownAsList && <ListForm view={view} laid={laid} facts={facts} sponsor={wanted.sponsor} tints={tints} deeds={own} onLock={deeds.onLock} onChoose={(id) => store.toggle(id)} />}
      {dialogs}
    </>
  );
}
