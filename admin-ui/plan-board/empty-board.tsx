import { Box } from '@mui/material';
import type { ReactNode } from 'react';
import { Go } from '../fields/go.tsx';
import { EmptyList } from '../lists/empty-list.tsx';
import { AskPlanButton } from '../plan-proposals/ask-plan-button.tsx';
import type { BoardView } from './types.ts';

/** What stands where there is nothing to lay out yet, and what comes next. */
export function EmptyBoard({ view, children }: { view: BoardView; children: ReactNode }) {
  if (view.season.games.length === 0) return <EmptyList>{view.seasonName} has no games to come that you announce. <Go to="/games">Add its games</Go>, and they stand here side by side.</EmptyList>;
  if (view.season.promises.length === 0) return <EmptyList>Nothing that is read at its own place is signed or offered for {view.seasonName}. <Go to="/contracts">Sign a contract</Go> with reads, and they are planned here.</EmptyList>;
  return (
    <>
      <EmptyList action={<AskPlanButton seasonId={view.seasonId} kind="plan" />}>
        No read has a place yet in {view.seasonName}. Planning the season works out the best plan there is, and shows it before it counts.
      </EmptyList>
      <Box sx={{ mt: 2 }}>{children}</Box>
    </>
  );
}
