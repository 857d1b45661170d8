import { Alert, Box, Button, Typography } from '@mui/material';
import { useState } from 'react';
import { Title, useGetList } from 'react-admin';
import { Pick } from '../books/pickers.tsx';
import { useAsked } from '../books/use-asked.ts';
import { InventoryBoard } from '../boards/inventory-board.tsx';
import { useServer } from '../api/use-server.ts';
import { Go } from '../fields/go.tsx';
import { monthText } from '../format/day.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Waiting } from '../layout/waiting.tsx';
import { Rows } from '../lists/rows.tsx';
import type { Season } from '../seasons/types.ts';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import { WINDOW_WORDS } from '../words/choices.ts';
import { count, numberText } from '../words/count.ts';
import { BestExtra } from './best-extra.tsx';
import type { LeftOfMonth, LeftOfWindow, LeftToSell } from './types.ts';

export const leftText = ({ left, isExact }: { left: number | null; isExact: boolean }): string => (left === null ? 'Not worked out' : isExact ? numberText(left) : `At least ${numberText(left)}`);

const PLACES = [
  { label: 'Places', numeric: true, show: (row: LeftOfWindow | LeftOfMonth) => numberText(row.places) },
  { label: 'Promised', numeric: true, show: (row: LeftOfWindow | LeftOfMonth) => numberText(row.taken) },
  { label: 'Held by offers', numeric: true, show: (row: LeftOfWindow | LeftOfMonth) => numberText(row.held) },
  { label: 'Left', numeric: true, show: (row: LeftOfWindow | LeftOfMonth) => <strong>{leftText(row)}</strong> },
] as const;

function Windows({ seasonId, row }: { seasonId: string; row: LeftOfMonth }) {
  const windows = useServer<LeftOfWindow[]>(`/seasons/${seasonId}/left-to-sell/windows?readKindId=${row.readKindId}&month=${row.month}`);
  return (
    <Box sx={{ my: 1.5 }}>
      <Typography variant="h3" sx={{ mb: 1 }}>{row.readKindName} by window</Typography>
      <Reading of={windows}>
        {(rows) => <Rows<LeftOfWindow> label={`${row.readKindName} in ${monthText(row.month)} by window`} rows={rows} keyOf={(one) => one.windowKind} columns={[{ label: 'Window', show: (one) => WINDOW_WORDS[one.windowKind] ?? one.windowKind }, ...PLACES]} />}
      </Reading>
    </Box>
  );
}

function Month({ seasonId, rows }: { seasonId: string; rows: readonly LeftOfMonth[] }) {
  const [opened, setOpened] = useState<string | null>(null);
  const row = rows.find((one) => one.readKindId === opened);
  return (
    <>
      <Rows<LeftOfMonth>
        label={`Left to sell in ${monthText(rows[0]!.month)}`}
        rows={rows}
        keyOf={(one) => one.readKindId}
        columns={[
          { label: 'Read kind', show: (one) => one.readKindName },
          ...PLACES,
          {
            label: 'Windows',
            show: (one) => (
              <Button aria-expanded={opened === one.readKindId} aria-label={`Windows of ${one.readKindName} in ${monthText(one.month)}`} onClick={() => setOpened(opened === one.readKindId ? null : one.readKindId)}>
                {opened === one.readKindId ? 'Hide' : 'Show'}
              </Button>
            ),
          },
        ]}
      />
      {row && <Windows seasonId={seasonId} row={row} />}
    </>
  );
}

function Shown({ left }: { left: LeftToSell }) {
  if (left.games === 0) return <EmptyList>No announced home game of this season is still to come, so there is nothing left to sell.</EmptyList>;
  if (left.months.length === 0) return <EmptyList action={<Go to="/read-kinds/create">Add a read kind</Go>}>There is no read kind yet that is planned into a window.</EmptyList>;
  const months = [...new Set(left.months.map((row) => row.month))];
  return (
    <>
      {left.shortNowSentence && <Alert severity="warning" icon={false} sx={{ mb: 2 }}>{left.shortNowSentence}</Alert>}
      {left.fullGamesSentence && <Alert severity="info" icon={false} sx={{ mb: 2 }}>{left.fullGamesSentence}</Alert>}
      <BestExtra left={left} />
      {months.map((month) => {
        const rows = left.months.filter((row) => row.month === month);
        return (
          <Section key={month} title={monthText(month)} lead={`${count(rows[0]!.games, 'home game')} still to come`.replace(/^./, (first) => first.toUpperCase())}>
            <Month seasonId={left.seasonId} rows={rows} />
          </Section>
        );
      })}
    </>
  );
}

/** What the rest of the season can still carry, by month and read kind. */
export function LeftToSellPage() {
  const { asked, change } = useAsked(['seasonId']);
  const { data: seasons } = useGetList<Season>('seasons', { pagination: { page: 1, perPage: 50 }, sort: { field: 'startsOn', order: 'DESC' } });
  const seasonId = asked.seasonId ?? seasons?.[0]?.id;
  const left = useServer<LeftToSell>(seasonId ? `/seasons/${seasonId}/left-to-sell` : null);
  return (
    <>
      <Title title="Left to sell" />
      <Typography sx={{ color: 'text.secondary', mb: 1.5, maxWidth: '75ch' }}>
        The most further reads of each kind that fit while everything promised and offered stays whole: others may move aside for them, so “left” can be more than the places that are free now. Kinds share places, so what is sold of one is gone for the others. A read kind that only so many sponsors may have in a game can be sold out while places are free.
      </Typography>
      <Box sx={{ mb: 2 }}>{seasons && seasons.length > 0 && <Pick label="Season" value={seasonId} choices={seasons.map(({ id, name }) => ({ id, name }))} onChange={(id) => change('seasonId', id)} />}</Box>
      {seasonId && <InventoryBoard key={seasonId} seasonId={seasonId} />}
      {seasons?.length === 0 ? <EmptyList action={<Go to="/seasons/create">Add a season</Go>}>There is no season yet.</EmptyList> : left.data || left.error ? <Reading of={left}>{(view) => <Shown left={view} />}</Reading> : <Waiting what="Working out what is left" />}
    </>
  );
}
