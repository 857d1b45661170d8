import { Alert, Box } from '@mui/material';
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { Title } from 'react-admin';
import { useAsked } from '../books/use-asked.ts';
import { Go } from '../fields/go.tsx';
import { EmptyList } from '../lists/empty-list.tsx';
import { Reading } from '../show/reading.tsx';
import { Waiting } from '../layout/waiting.tsx';
import { BoardStore, BoardStoreContext } from './board-store.ts';
import { Filters } from './filters.tsx';
import { SeasonChoice, useSeason } from './season-choice.tsx';
import { usePlan } from './use-plan.ts';
import { Workbench } from './workbench.tsx';

/** What was last said, for whoever listens and whoever looks; a refusal stays until the next word. */
function useSaying() {
  const [said, setSaid] = useState({ words: '', isRefusal: false, number: 0 });
  const say = useCallback((words: string, isRefusal = false) => setSaid(({ number }) => ({ words, isRefusal, number: number + 1 })), []);
  return { said, say };
}

/** Games across, windows down: the season's plan, to be changed by hand. */
export function PlanBoardPage() {
  const { asked, change } = useAsked(['season', 'team', 'sponsor', 'month', 'view']);
  const { seasons, seasonId, isRead } = useSeason(asked.season);
  const { said, say } = useSaying();
  const { read, plan } = usePlan(seasonId, say);
  const store = useMemo(() => new BoardStore(), [seasonId]);
  const wanted = useMemo(() => ({ team: asked.team ?? '', sponsor: asked.sponsor ?? '', month: asked.month ?? '' }), [asked.team, asked.sponsor, asked.month]);
  const live = useRef<HTMLDivElement>(null);
  // The same words twice are two sentences: the region is emptied between them.
  useEffect(() => {
    const timer = setTimeout(() => live.current && (live.current.textContent = said.words), 30);
    if (live.current) live.current.textContent = '';
    return () => clearTimeout(timer);
  }, [said]);
  return (
    <BoardStoreContext value={store}>
      <Title title="Plan board" />
      <Box ref={live} role="status" aria-live="polite" sx={{ position: 'absolute', width: '1px', height: '1px', overflow: 'hidden', clipPath: 'inset(50%)' }} />
      {!isRead && <Waiting />}
      {isRead && seasonId === null && <EmptyList>There is no season yet. <Go to="/seasons/create">Add a season</Go> with its games, then sign what is to be read in it.</EmptyList>}
      {seasonId !== null && (
        <Reading of={read}>
          {(view) => (
            <>
              <Box sx={{ display: 'flex', gap: { xs: 0.5, sm: 1.5 }, flexWrap: 'wrap', mb: 1 }}>
                <SeasonChoice seasons={seasons} seasonId={seasonId} onChange={(id) => change('season', id)} />
                <Filters view={view} wanted={wanted} onChange={change} />
                <Box sx={{ alignSelf: 'center' }}><Go to="/plan-proposals">Plans proposed</Go></Box>
              </Box>
              {said.words !== '' && <Alert severity={said.isRefusal ? 'warning' : 'info'} role="presentation" sx={{ mb: 1 }} data-said>{said.words}</Alert>}
              <Workbench view={view} plan={plan} wanted={wanted} isList={asked.view === 'list'} onView={(name) => change('view', name)} say={say} />
            </>
          )}
        </Reading>
      )}
    </BoardStoreContext>
  );
}
