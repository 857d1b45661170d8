import { Button, Typography } from '@mui/material';
import { Link } from 'react-router';
import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { instantText } from '../format/instant.ts';
import { moneyText } from '../format/money.ts';
import { findFilter, pickFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { numberText } from '../words/count.ts';
import type { JournalBatch } from './types.ts';

export const JournalBatchList = () => (
  <ListPage<JournalBatch>
    title="Journal"
    addLabel="Make a batch"
    sort={{ field: 'recordedAt', order: 'DESC' }}
    filters={[findFilter(), pickFilter('sellerId', 'sellers', 'Seller')]}
    lead={<Typography sx={{ color: 'text.secondary', mb: 2, maxWidth: '70ch' }}>The money journal leaves in batches for the district’s books. Each entry leaves once, and a batch can be downloaded again exactly as it was. Consult the business office about the layout.</Typography>}
    actions={<Button component={Link} to="/journal-layouts" variant="outlined">Layouts</Button>}
    empty="No batch yet. Lay the journal out as the district’s system reads it, close a month, then make the first batch."
    columns={[
      { label: 'Batch', sortBy: 'number', show: (batch) => <Go resource="journal-batches" id={batch.id}>{batch.number}</Go> },
      { label: 'Seller', show: (batch) => batch.sellerName },
      { label: 'Through', sortBy: 'throughOn', show: (batch) => dayText(batch.throughOn) },
      { label: 'Entries', numeric: true, show: (batch) => numberText(batch.entryCount) },
      { label: 'Debits', numeric: true, show: (batch) => moneyText(batch.debitCents) },
      { label: 'Made', sortBy: 'recordedAt', show: (batch) => instantText(batch.recordedAt) },
    ]}
  />
);
