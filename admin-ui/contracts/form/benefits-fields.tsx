import { Box } from '@mui/material';
import { ArrayInput, SimpleFormIterator, useWrappedSource } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { AddRow } from '../../forms/add-row.tsx';
import { RemoveRow } from '../../forms/remove-row.tsx';
import { FormGrid, FormPart } from '../../forms/form-grid.tsx';
import { ChoiceInput } from '../../inputs/choice-input.tsx';
import { CountInput } from '../../inputs/count-input.tsx';
import { DayInput } from '../../inputs/day-input.tsx';
import { FlagInput } from '../../inputs/flag-input.tsx';
import { MoneyInput } from '../../inputs/money-input.tsx';
import { WordsInput } from '../../inputs/words-input.tsx';
import { EARNINGS } from '../../words/choices.ts';

function BenefitFields() {
  const earns = useWatch({ name: useWrappedSource('earns') }) as string | undefined;
  return (
    <Box sx={{ width: '100%' }}>
      <FormGrid columns={3}>
        <WordsInput source="name" label="What" longest={120} required helperText="Banner, program page, passes" />
        <CountInput source="quantity" label="How many" min={1} defaultValue={1} required />
        <MoneyInput source="rateCents" label="Rate-card price of one" required />
        <MoneyInput source="fairValueCents" label="Fair value of one" helperText="For the two-percent line; empty where nobody knows" />
        <ChoiceInput source="earns" label="Its money is earned" choices={EARNINGS} defaultValue="onDelivery" required />
        {earns === 'overDays' ? (
          <>
            <DayInput source="startsOn" label="First day" required />
            <DayInput source="endsOn" label="Last day" required />
          </>
        ) : (
          <DayInput source="dueOn" label="To be delivered by" />
        )}
      </FormGrid>
      <FlagInput source="isTaxed" label="Sales tax is charged on it, where the seller charges any" defaultValue />
    </Box>
  );
}

export function BenefitsFields() {
  return (
    <FormPart title="Other benefits" why="What the deal carries besides reads. Leave empty where there is nothing else.">
      <ArrayInput source="benefits" label={false} helperText={false}>
        <SimpleFormIterator addButton={<AddRow label="Add a benefit" />} removeButton={<RemoveRow label="Take out the benefit" />} disableReordering disableClear fullWidth sx={{ '& .RaSimpleFormIterator-line': { py: 2 } }}>
          <BenefitFields />
        </SimpleFormIterator>
      </ArrayInput>
    </FormPart>
  );
}
