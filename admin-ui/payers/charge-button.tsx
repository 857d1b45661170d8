import { useNavigate } from 'react-router';
import { only } from '../api/changes.ts';
import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { today } from '../format/day.ts';
import { DayInput } from '../inputs/day-input.tsx';
import { MoneyInput } from '../inputs/money-input.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import type { Payer } from './types.ts';

/** What no contract agreed upon: a fee passed on, or interest. */
export function ChargeButton({ payer }: { payer: Payer }) {
  const navigate = useNavigate();
  return (
    <CommandButton<{ id: string }>
      label="Charge a fee"
      title={`Charge ${payer.name}`}
      explains="A charge is an invoice of its own, numbered among the invoices and without sales tax. Local rules and the business office decide what may be charged."
      path="/charges"
      defaults={{ issuedOn: today() }}
      body={(values) => ({ ...only(values, 'sellerId', 'description', 'amountCents', 'issuedOn'), payerId: payer.id })}
      confirmLabel="Issue the charge"
      success="The charge is issued."
      leaves
      onDone={({ id }) => void navigate(`/invoices/${id}/show`)}
    >
      <FormGrid>
        <PickInput source="sellerId" reference="sellers" label="Who charges" required />
        <MoneyInput source="amountCents" label="Amount" required />
        <DayInput source="issuedOn" label="On" required />
      </FormGrid>
      <WordsInput source="description" label="For what" longest={200} required />
    </CommandButton>
  );
}
