import { Typography } from '@mui/material';
import { ListPage } from '../lists/list-page.tsx';
import { iMay } from '../session/rights.ts';
import { ChangeButton } from './change-button.tsx';
import type { Account } from './types.ts';

export const AccountList = () => (
  <ListPage<Account>
    title="Accounts"
    lead={<Typography sx={{ color: 'text.secondary', mb: 2, maxWidth: '70ch' }}>The accounts of the money journal. Give each the name your office uses, and the code by which the district’s books know it. Consult the business office before you map them.</Typography>}
    empty="The chart of accounts is empty."
    columns={[
      { label: 'Account', show: (account) => `${account.code} ${account.name}` },
      { label: 'Outside code', show: (account) => account.outsideCode ?? '–' },
      { label: 'In the chart', show: (account) => (account.name === account.chartName ? 'the same name' : account.chartName) },
      ...(iMay('accounts', 'edit') ? [{ label: 'Change', show: (account: Account) => <ChangeButton account={account} /> }] : []),
    ]}
  />
);
