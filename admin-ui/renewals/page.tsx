import { Box, Typography } from '@mui/material';
import { Title } from 'react-admin';
import { useServer } from '../api/use-server.ts';
import { Pick } from '../books/pickers.tsx';
import { useAsked } from '../books/use-asked.ts';
import { chartFiles } from '../charts/chart-with-table.tsx';
import { Go } from '../fields/go.tsx';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { knownMe } from '../session/me.ts';
import { Figures } from '../show/figures.tsx';
import { Reading } from '../show/reading.tsx';
import { OneRenewal } from './one-renewal.tsx';
import { PriceChart } from './price-chart.tsx';
import type { RenewalsView } from './types.ts';

const MINE = 'mine';
const NOBODYS = 'nobodys';

function queryOf({ seasonId, whose }: Record<string, string | undefined>): string {
  const search = new URLSearchParams();
  if (seasonId) search.set('seasonId', seasonId);
  if (whose === NOBODYS) search.set('isNobodys', 'true');
  else if (whose) search.set('callerPersonId', whose === MINE ? (knownMe()?.person.id ?? '') : whose);
  return search.toString();
}

/** Last term's sponsors, the greatest price first, and what to put to each next. */
export function RenewalsPage() {
  const { asked, change } = useAsked(['seasonId', 'whose']);
  const query = queryOf(asked);
  const answer = useServer<RenewalsView>(`/boards/renewals?${query}`);
  const view = answer.data;
  const me = knownMe()?.person.id;
  const others = (view?.callers ?? []).filter((one) => one.personId !== me).map(({ personId, name }) => ({ id: personId, name }));
  const callers = [{ id: 'all', name: 'Everybody’s' }, { id: MINE, name: 'Mine' }, ...others, { id: NOBODYS, name: 'Nobody’s yet' }];
  return (
    <>
      <Title title="Renewals" />
      <Typography sx={{ color: 'text.secondary', mb: 1.5, maxWidth: '75ch' }}>The sponsors of a season: what they had, how it went, what follows, and what to offer them next by the rate card and by what could really be given.</Typography>
      <Box sx={{ display: 'flex', gap: 1.5, flexWrap: 'wrap', alignItems: 'center', mb: 2 }}>
        <Pick label="Season" value={asked['seasonId'] ?? view?.seasonId ?? undefined} choices={view?.seasons ?? []} onChange={(id) => change('seasonId', id)} />
        <Pick label="Whose calls" value={asked['whose'] ?? 'all'} choices={callers} onChange={(whose) => change('whose', whose === 'all' ? '' : whose)} />
      </Box>
      <Reading of={answer}>{(renewals) => <Board view={renewals} isAll={!asked['whose']} files={chartFiles('/boards/renewals', query, 'renewals')} />}</Reading>
    </>
  );
}

function Board({ view, isAll, files }: { view: RenewalsView; isAll: boolean; files: ReturnType<typeof chartFiles> }) {
  if (view.seasonId === null) return <EmptyList>There is no season yet. <Go to="/seasons/create">Add the first</Go>, and its sponsors stand here once they have signed.</EmptyList>;
  if (view.rows.length === 0) return <EmptyList>{isAll ? `No contract of ${view.seasonName} is signed yet. Whoever signs stands here.` : `Nobody in ${view.seasonName} is theirs to call.`}</EmptyList>;
  return (
    <>
      <Figures figures={[{ label: 'Last term', value: moneyText(view.priceCents) }, { label: 'Goes on already', value: moneyText(view.keptCents) }, { label: 'Suggested next', value: moneyText(view.suggestedCents) }]} />
      <Ahead view={view} />
      <PriceChart view={view} files={files} />
      {view.rows.map((row) => <OneRenewal key={row.contractId} row={row} />)}
    </>
  );
}

/** For which season one sells, and that a season that still runs may yet turn out better. */
const Ahead = ({ view: { isOver, nextSeasonId, nextSeasonName, seasonId, seasonName } }: { view: RenewalsView }) => (
  <Typography sx={{ mb: 2, maxWidth: '75ch' }}>
    {nextSeasonId ? <>Suggested for <Go resource="seasons" id={nextSeasonId}>{nextSeasonName}</Go>. </> : <>The season after <Go resource="seasons" id={seasonId!}>{seasonName}</Go> is not there yet, so this season’s prices are used. </>}
    {isOver ? '' : 'The season is not over: what was given so far stands against what should have been given by now.'}
  </Typography>
);
