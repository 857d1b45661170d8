import { useWatch } from 'react-hook-form';
import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { ReasonInput } from '../forms/reason-input.tsx';
import { today } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { MoneyInput } from '../inputs/money-input.tsx';
import type { Invoice } from './types.ts';

const SHARES = [
  { id: 100, name: '1% of the net' },
  { id: 200, name: '2% of the net' },
  { id: 300, name: '3% of the net' },
  { id: 500, name: '5% of the net' },
  { id: 0, name: 'An amount' },
];

function AmountWhereAsked() {
  const share = useWatch({ name: 'basisPoints' }) as number;
  return share === 0 ? <MoneyInput source="amountCents" label="Amount" required /> : null;
}

/** A discount for paying early: an allowance; the tax stays as it was charged. */
export const DiscountButton = ({ invoice }: { invoice: Invoice }) => (
  <CommandButton
    label="Discount for paying early"
    title={`A discount on invoice ${invoice.number}`}
    explains={`${moneyText(invoice.balanceCents)} is open. The discount is taken off what is to be paid; the tax stays as it was charged. Local rules and the business office decide about tax.`}
    path={`/invoices/${invoice.id}/discounts`}
    defaults={{ basisPoints: 200, takenOn: today() }}
    body={({ basisPoints, amountCents, takenOn, reason }) => ({ ...(basisPoints === 0 ? { amountCents } : { basisPoints }), takenOn, reason })}
    confirmLabel="Take it off"
    success="The discount is taken off."
  >
    <FormGrid>
      <ChoiceInput source="basisPoints" label="How much" choices={SHARES} required />
      <AmountWhereAsked />
      <DayInput source="takenOn" label="On" required />
    </FormGrid>
    <ReasonInput helperText="For example: paid within ten days." />
  </CommandButton>
);
