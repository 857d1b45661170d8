import { choiceFilter, findFilter, pickFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { CREDIT_MEMO_STATES } from '../words/choices.ts';
import { creditMemoColumns } from './columns.tsx';
import type { CreditMemoView } from './types.ts';

export const CreditMemoList = () => (
  <ListPage<CreditMemoView>
    title="Credit memos"
    sort={{ field: 'issuedOn', order: 'DESC' }}
    filters={[findFilter(), choiceFilter('state', 'State', CREDIT_MEMO_STATES), pickFilter('sellerId', 'sellers', 'Seller'), pickFilter('payerId', 'payers', 'Payer')]}
    empty="No credit memo yet. One is written when reads that were billed are credited: open the contract and look under “Missed reads and credits”."
    columns={creditMemoColumns}
  />
);
