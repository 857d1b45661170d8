import { useGetList } from 'react-admin';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { invoiceColumns } from '../invoices/columns.tsx';
import type { Invoice } from '../invoices/types.ts';
import { Section } from '../show/section.tsx';
import type { Contract } from './types.ts';

export function InvoicesOfContract({ contract }: { contract: Contract }) {
  const { data = [], isPending } = useGetList<Invoice>('invoices', { filter: { contractId: contract.id }, pagination: { page: 1, perPage: 100 }, sort: { field: 'issuedOn', order: 'DESC' } });
  if (isPending) return null;
  return (
    <Section title="Invoices">
      {data.length === 0 ? <EmptyList>{contract.isInKind ? 'This contract is paid in goods. Only goods that do not come are put on an invoice; the sheet “Goods” does it.' : 'Nothing is billed yet. Press “Issue an invoice” to see what is due.'}</EmptyList> : <Rows<Invoice> label="Invoices of this contract" rows={data} columns={invoiceColumns} />}
    </Section>
  );
}
