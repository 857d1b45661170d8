import { useState } from 'react';
import { useRedirect } from 'react-admin';
import { useServer } from '../api/use-server.ts';
import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { today } from '../format/day.ts';
import { DayInput } from '../inputs/day-input.tsx';
import { useWatch } from 'react-hook-form';
import type { Due } from '../invoices/types.ts';
import { DuePreview } from './due-preview.tsx';
import type { Contract } from './types.ts';

function Preview({ contract }: { contract: Contract }) {
  const through = useWatch({ name: 'throughDay' }) as string | undefined;
  const due = useServer<Due>(through ? `/contracts/${contract.id}/due?through=${through}` : null);
  return <DuePreview due={due} />;
}

/** Issues what the billing plan says is due, after showing it. */
export function IssueInvoiceButton({ contract }: { contract: Contract }) {
  const redirect = useRedirect();
  const [defaults] = useState({ throughDay: today(), issuedOn: today() });
  return (
    <CommandButton<{ id: string }>
      label="Issue an invoice"
      title={`Invoice ${contract.payerName}`}
      explains="What is due through a day goes on one invoice with the next number of the seller. An issued invoice is never changed; it can be voided."
      path="/invoices"
      defaults={defaults}
      body={({ throughDay, issuedOn }) => ({ contractId: contract.id, throughDay, issuedOn })}
      confirmLabel="Issue the invoice"
      success="The invoice is issued."
      leaves
      onDone={(invoice) => redirect('show', 'invoices', invoice.id)}
      wide
    >
      <FormGrid>
        <DayInput source="throughDay" label="Due through" required />
        <DayInput source="issuedOn" label="Issued on" required />
      </FormGrid>
      <Preview contract={contract} />
    </CommandButton>
  );
}
