import { FormGrid } from '../forms/form-grid.tsx';
import { CreatePage } from '../forms/record-form.tsx';
import { today } from '../format/day.ts';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { MoneyInput } from '../inputs/money-input.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { METHODS } from '../words/choices.ts';
import { ApplicationsFields } from './applications-fields.tsx';

export const PaymentCreate = () => (
  <CreatePage title="Record a payment" saveLabel="Record the payment">
    <FormGrid>
      <PickInput source="payerId" reference="payers" label="From" required />
      <PickInput source="sellerId" reference="sellers" label="To" required />
      <MoneyInput source="amountCents" label="Amount" required />
      <DayInput source="receivedOn" label="Received on" defaultValue={today()} required />
      <ChoiceInput source="method" label="By" choices={METHODS} defaultValue="check" required />
      <WordsInput source="reference" label="Check number or reference" longest={80} />
    </FormGrid>
    <ApplicationsFields />
    <WordsInput source="note" label="Note" longest={500} />
  </CreatePage>
);
