import { Alert } from '@mui/material';
import { useServer } from '../api/use-server.ts';
import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { findFilter, pickFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { iMay } from '../session/rights.ts';
import { count } from '../words/count.ts';
import { Difference } from './difference.tsx';
import type { DepositSlip, Drawer } from './types.ts';

/** What waits to be taken to the bank. */
function InTheDrawer() {
  const { data } = useServer<Drawer>('/drawer');
  if (!data) return null;
  if (data.total === 0) return <Alert severity="success" icon={false} sx={{ mb: 2 }}>The drawer is empty: everything that was taken in is at the bank.</Alert>;
  return (
    <Alert severity="warning" icon={false} sx={{ mb: 2 }}>
      {count(data.total, 'payment')} of {moneyText(data.totalCents)} {data.total === 1 ? 'lies' : 'lie'} in the drawer, the oldest since {dayText(data.oldestOn)}.{' '}
      {iMay('deposit-slips', 'create') && <Go to="/deposit-slips/create">Take it to the bank</Go>}
    </Alert>
  );
}

export const DepositSlipList = () => (
  <ListPage<DepositSlip>
    title="Deposit slips"
    addLabel="Make a deposit slip"
    lead={<InTheDrawer />}
    sort={{ field: 'number', order: 'DESC' }}
    filters={[findFilter(), pickFilter('sellerId', 'sellers', 'Seller')]}
    empty="No deposit slip yet. It takes what lies in the drawer of one seller of record to the bank: count it, write down what you counted, and the slip says whether it is over or short."
    columns={[
      { label: 'Number', sortBy: 'number', show: (slip) => <Go resource="deposit-slips" id={slip.id}>{slip.number}</Go> },
      { label: 'Seller of record', sortBy: 'sellerName', show: (slip) => slip.sellerName },
      { label: 'Deposited', sortBy: 'depositedOn', show: (slip) => dayText(slip.depositedOn) },
      { label: 'By', show: (slip) => slip.depositedByName },
      { label: 'Checks', numeric: true, show: (slip) => moneyText(slip.checkCents) },
      { label: 'Cash', numeric: true, show: (slip) => moneyText(slip.cashCents) },
      { label: 'Deposited in all', sortBy: 'countedCents', numeric: true, show: (slip) => moneyText(slip.countedCents) },
      { label: 'Counted', show: (slip) => <Difference cents={slip.differenceCents} /> },
    ]}
  />
);
