import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { pickFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { numberText } from '../words/count.ts';
import { RunState } from './state.tsx';
import type { BillingRun } from './types.ts';

export const BillingRunList = () => (
  <ListPage<BillingRun>
    title="Billing runs"
    addLabel="New run"
    sort={{ field: 'startedAt', order: 'DESC' }}
    filters={[pickFilter('sellerId', 'sellers', 'Seller')]}
    empty="No run yet. A run bills everything that is due through a day, on one invoice for each contract. It shows what it would bill before anything is issued."
    columns={[
      { label: 'Due through', sortBy: 'throughDay', show: (run) => <Go resource="billing-runs" id={run.id}>{dayText(run.throughDay)}</Go> },
      { label: 'Seller', show: (run) => run.sellerName ?? 'All sellers' },
      { label: 'Issued on', sortBy: 'issuedOn', show: (run) => dayText(run.issuedOn) },
      { label: 'Invoices', numeric: true, show: (run) => numberText(run.issued) },
      { label: 'Skipped', numeric: true, show: (run) => numberText(run.skipped) },
      { label: 'Amount', sortBy: 'grossCents', numeric: true, show: (run) => moneyText(run.grossCents) },
      { label: 'State', show: (run) => <RunState run={run} /> },
    ]}
  />
);
