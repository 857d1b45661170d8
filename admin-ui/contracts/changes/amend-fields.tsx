import { Box, Typography } from '@mui/material';
import { ArrayInput, SimpleFormIterator } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { AddRow } from '../../forms/add-row.tsx';
import { FormGrid, FormPart } from '../../forms/form-grid.tsx';
import { RemoveRow } from '../../forms/remove-row.tsx';
import { moneyText } from '../../format/money.ts';
import { ChoiceInput } from '../../inputs/choice-input.tsx';
import { CountInput } from '../../inputs/count-input.tsx';
import { MoneyInput } from '../../inputs/money-input.tsx';
import { PickInput } from '../../inputs/pick-input.tsx';
import { WordsInput } from '../../inputs/words-input.tsx';
import { CommitmentFields } from '../form/commitment-fields.tsx';
import type { Contract } from '../types.ts';
import type { LineChoice } from './lines-of.ts';
import { PRICE_CHANGES, linesOf } from './lines-of.ts';
import { MemoReason } from './simple-fields.tsx';

function LineFields({ line, place, contract }: { line: LineChoice; place: number; contract: Contract }) {
  const source = (name: string) => `changes.${place}.${name}`;
  const [reads, how] = useWatch({ name: [source('reads'), source('priceHow')] }) as [number | null, string | undefined];
  const perRead = contract.term.pricing === 'perRead' && line.counting !== null;
  return (
    <Box component="fieldset" sx={{ border: 0, p: 0, m: 0, mb: 1.5, minWidth: 0 }}>
      <Typography component="legend" sx={{ fontWeight: 700, p: 0 }}>{line.name}</Typography>
      <FormGrid columns={perRead ? 1 : 2}>
        <CountInput source={source('reads')} label="How many more" helperText="A minus for fewer" min={-10_000} max={10_000} />
        {line.counting === 'perGame' && <PickInput source={source('gameId')} reference="games" label="In which game" shows="label" sort={{ field: 'playedOn', order: 'ASC' }} filter={{ seasonId: contract.term.seasonId }} />}
        {line.counting === 'perNight' && <PickInput source={source('gameId')} reference="nights" label="On which night" shows="title" sort={{ field: 'heldOn', order: 'ASC' }} />}
        {!perRead && <ChoiceInput source={source('priceHow')} label="Price" choices={[{ id: 'rateCard', name: `At the rate card, ${moneyText((reads ?? 0) * line.rateCents)}` }, ...PRICE_CHANGES]} defaultValue="rateCard" required />}
        {!perRead && how !== undefined && how !== 'rateCard' && <MoneyInput source={source('priceCents')} label="By" required />}
      </FormGrid>
    </Box>
  );
}

function NewLines() {
  return (
    <>
      <ArrayInput source="newCommitments" label={false} helperText={false}>
        <SimpleFormIterator addButton={<AddRow label="Add a line of reads" />} removeButton={<RemoveRow label="Take out these reads" />} disableReordering disableClear fullWidth sx={{ '& .RaSimpleFormIterator-line': { py: 2 } }}>
          <CommitmentFields />
          <MoneyInput source="priceCents" label="Adds to the price" required />
        </SimpleFormIterator>
      </ArrayInput>
      <ArrayInput source="newBenefits" label={false} helperText={false}>
        <SimpleFormIterator addButton={<AddRow label="Add a benefit" />} removeButton={<RemoveRow label="Take out the benefit" />} disableReordering disableClear fullWidth sx={{ '& .RaSimpleFormIterator-line': { py: 2 } }}>
          <FormGrid>
            <WordsInput source="name" label="What" longest={120} required helperText="Banner, program page, passes" />
            <CountInput source="quantity" label="How many" min={1} defaultValue={1} required />
            <MoneyInput source="rateCents" label="Rate-card price of one" required />
            <MoneyInput source="priceCents" label="Adds to the price" required />
          </FormGrid>
        </SimpleFormIterator>
      </ArrayInput>
    </>
  );
}

/** Every line of the contract, and new ones. */
export function AmendFields({ contract }: { contract: Contract }) {
  return (
    <>
      {linesOf(contract).map((line, place) => <LineFields key={line.id} line={line} place={place} contract={contract} />)}
      <MemoReason />
      <FormPart title="New lines"><NewLines /></FormPart>
    </>
  );
}
