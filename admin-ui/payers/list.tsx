import { Go } from '../fields/go.tsx';
import { findFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import type { Payer } from './types.ts';

export const PayerList = () => (
  <ListPage<Payer>
    title="Payers"
    addLabel="Add a payer"
    sort={{ field: 'name', order: 'ASC' }}
    filters={[findFilter()]}
    empty="A payer is who the invoice goes to. Often it is the sponsor itself, sometimes an owner or a parent company."
    columns={[
      { label: 'Payer', sortBy: 'name', show: (payer) => <Go resource="payers" id={payer.id}>{payer.name}</Go> },
      { label: 'E-mail', show: (payer) => payer.email ?? '–' },
      { label: 'Exempt', show: (payer) => (payer.exemptionNumber ? 'Exempt from sales tax' : 'No') },
    ]}
  />
);
