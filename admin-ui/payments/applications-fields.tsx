import { Box } from '@mui/material';
import { ArrayInput, SimpleFormIterator, useGetList } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { AddRow } from '../forms/add-row.tsx';
import { RemoveRow } from '../forms/remove-row.tsx';
import { FormPart } from '../forms/form-grid.tsx';
import { moneyText } from '../format/money.ts';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { MoneyInput } from '../inputs/money-input.tsx';
import type { Invoice } from '../invoices/types.ts';

/** The unpaid invoices of a payer with one seller, as choices. */
export function useUnpaid(payerId: string | undefined, sellerId: string | undefined) {
  const { data = [] } = useGetList<Invoice>(
    'invoices',
    { filter: { payerId, sellerId }, pagination: { page: 1, perPage: 100 }, sort: { field: 'dueOn', order: 'ASC' } },
    { enabled: Boolean(payerId && sellerId) },
  );
  return data
    .filter((invoice) => invoice.balanceCents > 0 && invoice.state !== 'void')
    .map((invoice) => ({ id: invoice.id, name: `${invoice.number}: ${moneyText(invoice.balanceCents)} unpaid` }));
}

/** Which invoices the payment pays; what is left over waits as a credit of the payer. */
export function ApplicationsFields() {
  const [payerId, sellerId, amountCents, rows] = useWatch({ name: ['payerId', 'sellerId', 'amountCents', 'applications'] }) as [string, string, unknown, { amountCents?: unknown }[] | undefined];
  const unpaid = useUnpaid(payerId, sellerId);
  const applied = (rows ?? []).reduce((sum, row) => sum + (typeof row?.amountCents === 'number' ? row.amountCents : 0), 0);
  const left = typeof amountCents === 'number' ? amountCents - applied : 0;
  return (
    <FormPart title="What it pays" why="What is not applied to an invoice waits as the payer’s credit and can be applied later.">
      {payerId && sellerId && unpaid.length === 0 && <p>No unpaid invoice of this payer with this seller. The payment is kept as a credit.</p>}
      <ArrayInput source="applications" label={false} helperText={false}>
        <SimpleFormIterator addButton={<AddRow label="Add an invoice" />} removeButton={<RemoveRow label="Take out" />} inline disableReordering disableClear fullWidth>
          <Box sx={{ flex: { sm: '2 1 220px' } }}><ChoiceInput source="invoiceId" label="Invoice" choices={unpaid} required /></Box>
          <Box sx={{ flex: { sm: '1 1 140px' } }}><MoneyInput source="amountCents" label="Of it" required /></Box>
        </SimpleFormIterator>
      </ArrayInput>
      {left > 0 && <p role="status">{moneyText(left)} stays as a credit.</p>}
      {left < 0 && <p role="status">More is applied than was paid: {moneyText(-left)} too much.</p>}
    </FormPart>
  );
}
