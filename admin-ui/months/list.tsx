import { Typography } from '@mui/material';
import { Go } from '../fields/go.tsx';
import { monthText } from '../format/day.ts';
import { instantText } from '../format/instant.ts';
import { ListPage } from '../lists/list-page.tsx';
import { count } from '../words/count.ts';
import { MonthState } from './state.tsx';
import type { Month } from './types.ts';

export const MonthList = () => (
  <ListPage<Month>
    title="Months"
    lead={<Typography sx={{ color: 'text.secondary', mb: 2, maxWidth: '70ch' }}>A closed month keeps its figures. What comes in for it later is booked on the first open day and keeps the day on which it happened.</Typography>}
    empty="Nothing is booked yet. The first month stands here once a contract is signed or money comes in."
    columns={[
      { label: 'Month', show: (month) => <Go resource="months" id={month.id}>{monthText(month.id)}</Go> },
      { label: 'State', show: (month) => <MonthState month={month} /> },
      { label: 'Booked', numeric: true, show: (month) => count(month.events, 'event') },
      { label: 'Not signed off', numeric: true, show: (month) => count(month.lateNightCount, 'night') },
      { label: 'Closed', show: (month) => (month.closedAt ? [instantText(month.closedAt), month.closedByName].filter(Boolean).join(', by ') : '–') },
    ]}
  />
);
