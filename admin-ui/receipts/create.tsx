import { AutocompleteInput, required as isNeeded } from 'react-admin';
import { useFormContext, useWatch } from 'react-hook-form';
import { useServer } from '../api/use-server.ts';
import { FormGrid } from '../forms/form-grid.tsx';
import { CreatePage } from '../forms/record-form.tsx';
import { today } from '../format/day.ts';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { MoneyInput } from '../inputs/money-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { knownMe } from '../session/me.ts';
import { Reading } from '../show/reading.tsx';
import type { ReceiptParties } from './types.ts';

const METHODS = [{ id: 'cash', name: 'Cash' }, { id: 'check', name: 'Check' }];

function CheckNumber() {
  const method = useWatch({ name: 'method' }) as string;
  return method === 'check' ? <WordsInput source="reference" label="Check number" longest={80} required /> : null;
}

/** Whose account it goes on; who hands it over is often the same. */
function PayerInput({ payers }: { payers: ReceiptParties['payers'] }) {
  const { getValues, setValue } = useFormContext();
  const fill = (_: unknown, payer: { name?: string } | undefined) => {
    if (payer?.name && !getValues('fromWhom')) setValue('fromWhom', payer.name, { shouldDirty: true });
  };
  return <AutocompleteInput source="payerId" label="Payer" choices={payers} validate={[isNeeded()]} helperText="Whose account it goes on" onChange={fill as never} />;
}

function ReceiptForm({ parties }: { parties: ReceiptParties }) {
  const { sellers, payers } = parties;
  return (
    <CreatePage title="Write a receipt" saveLabel="Write the receipt" defaults={{ takenOn: today(), method: 'check', sellerId: sellers.length === 1 ? sellers[0]!.id : undefined }}>
      <FormGrid>
        <PayerInput payers={payers} />
        <ChoiceInput source="sellerId" label="Seller of record" choices={sellers} required />
        <WordsInput source="fromWhom" label="Handed over by" longest={120} required />
        <MoneyInput source="amountCents" label="Amount" required />
        <ChoiceInput source="method" label="In" choices={METHODS} required />
        <CheckNumber />
        <WordsInput source="whatFor" label="For" longest={200} helperText="A sponsorship, a banner, a night" />
        <DayInput source="takenOn" label="Taken on" required />
        <WordsInput source="takenByName" label="Taken by" longest={120} helperText={`Empty: ${knownMe()?.person.name ?? 'you'}`} />
      </FormGrid>
    </CreatePage>
  );
}

export function ReceiptCreate() {
  const asked = useServer<ReceiptParties>('/receipt-parties');
  return <Reading of={asked}>{(parties) => <ReceiptForm parties={parties} />}</Reading>;
}
