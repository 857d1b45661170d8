import { choiceFilter, findFilter, pickFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { INVOICE_STATES } from '../words/choices.ts';
import { invoiceColumns } from './columns.tsx';
import type { Invoice } from './types.ts';

export const InvoiceList = () => (
  <ListPage<Invoice>
    title="Invoices"
    sort={{ field: 'issuedOn', order: 'DESC' }}
    filters={[findFilter(), choiceFilter('state', 'State', INVOICE_STATES), choiceFilter('unpaid', 'Paid or not', [{ id: 'true', name: 'Still to pay' }]), pickFilter('sellerId', 'sellers', 'Seller'), pickFilter('payerId', 'payers', 'Payer')]}
    empty="No invoice yet. Open a signed contract and press “Issue an invoice”: it shows what the billing plan says is due before anything is issued."
    columns={invoiceColumns}
  />
);
