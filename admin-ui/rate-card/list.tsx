import { Box, Button, Typography } from '@mui/material';
import { Title, useGetList } from 'react-admin';
import { Link } from 'react-router';
import { Pick } from '../books/pickers.tsx';
import { useAsked } from '../books/use-asked.ts';
import { today } from '../format/day.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Waiting } from '../layout/waiting.tsx';
import type { ReadKind } from '../read-kinds/types.ts';
import type { Season } from '../seasons/types.ts';
import { iMay } from '../session/rights.ts';
import { Section } from '../show/section.tsx';
import { count } from '../words/count.ts';
import { CopyRatesButton } from './copy-rates-button.tsx';
import { PriceRows } from './price-rows.tsx';
import type { RateCardLine } from './types.ts';

const EVERYTHING = { pagination: { page: 1, perPage: 500 } };

const addPath = (seasonId: string): string => `/rate-card-lines/create?source=${encodeURIComponent(JSON.stringify({ seasonId }))}`;

/** The season that is on or comes next, else the last one. */
const seasonNow = (seasons: readonly Season[]): Season | undefined => seasons.toSorted((one, other) => (one.endsOn < other.endsOn ? -1 : 1)).find((season) => season.endsOn >= today()) ?? seasons.at(-1);

function Card({ season, others }: { season: Season; others: Season[] }) {
  const kinds = useGetList<ReadKind>('read-kinds', { ...EVERYTHING, sort: { field: 'name', order: 'ASC' } });
  const rates = useGetList<RateCardLine>('rate-card-lines', { ...EVERYTHING, filter: { seasonId: season.id }, sort: { field: 'priceCents', order: 'DESC' } });
  if (kinds.isPending || rates.isPending) return <Waiting />;
  const lines = rates.data ?? [];
  const priced = (kinds.data ?? []).map((kind) => ({ id: kind.id, name: kind.name, kind, line: lines.find((line) => line.readKindId === kind.id) ?? null }));
  const benefits = lines.filter((line) => line.benefitName !== null).map((line) => ({ id: line.id, name: line.benefitName!, kind: null, line }));
  const missing = priced.filter((row) => row.line === null).length;
  return (
    <>
      <Section title={`Reads in ${season.name}`} lead={missing === 0 ? undefined : `${count(missing, 'read kind')} without a price. A contract’s price cannot be shared over a line without one.`}>
        {priced.length === 0 ? <EmptyList>There are no read kinds yet. Add what can be read on “Read kinds”, then give each its price here.</EmptyList> : <PriceRows label="Prices of reads" rows={priced} seasonId={season.id} />}
      </Section>
      <Section title="Other benefits" lead="Banners, program pages, passes: what one costs alone.">
        {benefits.length === 0 ? <EmptyList>No other benefit has a price in this season yet.</EmptyList> : <PriceRows label="Prices of other benefits" rows={benefits} seasonId={season.id} />}
      </Section>
      {iMay('rate-card-lines', 'create') && (
        <Box sx={{ display: 'flex', gap: 1, flexWrap: 'wrap' }}>
          <Button component={Link} to={addPath(season.id)} variant="contained">Add a price</Button>
          {others.length > 0 && <CopyRatesButton to={season} from={others} />}
        </Box>
      )}
    </>
  );
}

/** What one read, and one of each other benefit, costs in a season. */
export function RateList() {
  const { asked, change } = useAsked(['seasonId']);
  const { data: seasons = [], isPending } = useGetList<Season>('seasons', { ...EVERYTHING, sort: { field: 'startsOn', order: 'DESC' } });
  const season = seasons.find((one) => one.id === asked.seasonId) ?? seasonNow(seasons);
  return (
    <>
      <Title title="Rate card" />
      {isPending && <Waiting />}
      {!isPending && !season && <EmptyList>The rate card holds what one read or benefit costs in a season. Add a season first.</EmptyList>}
      {season && (
        <>
          <Box sx={{ display: 'flex', gap: 1.5, flexWrap: 'wrap', alignItems: 'center', mb: 2 }}>
            <Pick label="Season" value={season.id} choices={seasons.map(({ id, name }) => ({ id, name }))} onChange={(id) => change('seasonId', id)} />
            <Typography sx={{ color: 'text.secondary', maxWidth: '60ch' }}>A contract’s price, and a package’s, is shared over its lines by these prices.</Typography>
          </Box>
          <Card key={season.id} season={season} others={seasons.filter((one) => one.id !== season.id)} />
        </>
      )}
    </>
  );
}
