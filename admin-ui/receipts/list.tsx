import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { choiceFilter, findFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { byWhat } from '../words/choices.ts';
import { RECEIPT_STATE_WORDS, ReceiptStateTag } from './state.tsx';
import type { Receipt } from './types.ts';

const STATES = Object.entries(RECEIPT_STATE_WORDS).map(([id, name]) => ({ id, name }));

export const ReceiptList = () => (
  <ListPage<Receipt>
    title="Receipts"
    addLabel="Write a receipt"
    sort={{ field: 'number', order: 'DESC' }}
    filters={[findFilter('Find by number, name, check or amount'), choiceFilter('state', 'Where the money is', STATES)]}
    empty="No receipt yet. Write one when somebody hands you cash or a check: it is numbered, can be printed at once, and the money waits in the drawer until it is taken to the bank."
    columns={[
      { label: 'Number', sortBy: 'number', show: (receipt) => <Go resource="receipts" id={receipt.id}>{receipt.number}</Go> },
      { label: 'From', sortBy: 'fromWhom', show: (receipt) => receipt.fromWhom },
      { label: 'Payer', show: (receipt) => receipt.payerName },
      { label: 'Taken', sortBy: 'takenOn', show: (receipt) => dayText(receipt.takenOn) },
      { label: 'By', sortBy: 'takenByName', show: (receipt) => receipt.takenByName },
      { label: 'In', show: byWhat },
      { label: 'Amount', sortBy: 'amountCents', numeric: true, show: (receipt) => moneyText(receipt.amountCents) },
      { label: 'Money is', show: (receipt) => <ReceiptStateTag state={receipt.state} /> },
    ]}
  />
);
