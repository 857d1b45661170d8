import { only } from '../api/changes.ts';
import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { today } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { MoneyInput } from '../inputs/money-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { METHODS } from '../words/choices.ts';

/** Pays back what is left of a payment or of a credit memo. */
export const RefundButton = ({ path, leftCents, payerName }: { path: string; leftCents: number; payerName: string }) => (
  <CommandButton
    label="Refund"
    title={`Pay back to ${payerName}`}
    explains={`${moneyText(leftCents)} of this credit is left. Refund it here when the money goes out.`}
    path={path}
    defaults={{ amountCents: leftCents, refundedOn: today(), method: 'check' }}
    body={(values) => only(values, 'amountCents', 'refundedOn', 'method', 'reference')}
    confirmLabel="Record the refund"
    success="The refund is recorded."
  >
    <FormGrid>
      <MoneyInput source="amountCents" label="Amount" required />
      <DayInput source="refundedOn" label="Paid back on" required />
      <ChoiceInput source="method" label="By" choices={METHODS} required />
      <WordsInput source="reference" label="Check number or reference" longest={80} />
    </FormGrid>
  </CommandButton>
);
