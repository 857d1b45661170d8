import { useWatch } from 'react-hook-form';
import { FormGrid } from '../../forms/form-grid.tsx';
import { ReasonInput } from '../../forms/reason-input.tsx';
import { ChoiceInput } from '../../inputs/choice-input.tsx';
import { CountInput } from '../../inputs/count-input.tsx';
import { FlagInput } from '../../inputs/flag-input.tsx';
import { MoneyInput } from '../../inputs/money-input.tsx';
import { PickInput } from '../../inputs/pick-input.tsx';
import { WordsInput } from '../../inputs/words-input.tsx';
import type { Contract } from '../types.ts';
import { PRICE_CHANGES, linesOf } from './lines-of.ts';

export const MemoReason = () => <WordsInput source="reason" label="Why" longest={500} lines={2} helperText="Stands on the credit memo, where one is written" />;

export function EndFields({ contract }: { contract: Contract }) {
  return (
    <>
      <MoneyInput source="feeCents" label="Fee for ending early" helperText="Empty where none is agreed" />
      {contract.term.billAtLeastCents !== null && <FlagInput source="keepsMinimum" label="The least amount agreed is still billed" defaultValue={false} />}
      <MemoReason />
    </>
  );
}

export function LowerPriceFields() {
  return (
    <>
      <MoneyInput source="byCents" label="Lower the price by" required helperText="Taken off what is still to come; what was given keeps its amount" />
      <MemoReason />
    </>
  );
}

export function SwapFields({ contract }: { contract: Contract }) {
  const choices = linesOf(contract);
  const how = useWatch({ name: 'priceHow' }) as string | undefined;
  const fromLineId = useWatch({ name: 'fromLineId' }) as string | undefined;
  return (
    <>
      <FormGrid>
        <CountInput source="fromReads" label="Give up" min={1} required />
        <ChoiceInput source="fromLineId" label="Of" choices={choices} required />
        <CountInput source="toReads" label="Take" min={1} required />
        <ChoiceInput source="toLineId" label="Of these instead" choices={choices.filter(({ id }) => id !== fromLineId)} required />
        <ChoiceInput source="priceHow" label="Price" choices={[{ id: 'same', name: 'Stays the same' }, ...PRICE_CHANGES]} defaultValue="same" required />
        {how !== undefined && how !== 'same' && <MoneyInput source="priceCents" label="By" required />}
      </FormGrid>
      <MemoReason />
    </>
  );
}

export const HoldFields = () => <ReasonInput />;

export function AssignFields() {
  const sponsorId = useWatch({ name: 'toSponsorId' }) as string | undefined;
  return (
    <>
      <PickInput source="toSponsorId" reference="sponsors" label="New owner (sponsor)" required />
      <PickInput source="toPayerId" reference="payers" label="Who pays from now on" required helperText={sponsorId ? 'Add the payer first where it is not in the list' : ''} />
      <ReasonInput />
    </>
  );
}
