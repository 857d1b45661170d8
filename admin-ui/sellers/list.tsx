import { Go } from '../fields/go.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { count } from '../words/count.ts';
import type { Seller } from './types.ts';

export const SellerList = () => (
  <ListPage<Seller>
    title="Sellers of record"
    addLabel="Add a seller of record"
    sort={{ field: 'name', order: 'ASC' }}
    empty="A seller of record signs contracts, sends invoices under its own numbers and banks the money: the school, or a booster club. Add one before the first contract."
    columns={[
      { label: 'Seller', sortBy: 'name', show: (seller) => <Go resource="sellers" id={seller.id}>{seller.name}</Go> },
      { label: 'Numbers begin', show: (seller) => seller.numberPrefix },
      { label: 'Terms', show: (seller) => count(seller.termsDays, 'day') },
      { label: 'Books', show: (seller) => (seller.keepsBooksHere ? 'Kept here' : 'Kept elsewhere') },
    ]}
  />
);
