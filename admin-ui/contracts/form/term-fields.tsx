import { useWatch } from 'react-hook-form';
import { FormGrid, FormPart } from '../../forms/form-grid.tsx';
import { ChoiceInput } from '../../inputs/choice-input.tsx';
import { DayInput } from '../../inputs/day-input.tsx';
import { MoneyInput } from '../../inputs/money-input.tsx';
import { PickInput } from '../../inputs/pick-input.tsx';
import { PRICINGS } from '../../words/choices.ts';

export function TermFields() {
  const pricing = useWatch({ name: 'term.pricing' }) as string | undefined;
  return (
    <FormPart title="Term and price">
      <FormGrid columns={3}>
        <PickInput source="term.seasonId" reference="seasons" label="Season" required />
        <DayInput source="term.startsOn" label="First day" required />
        <DayInput source="term.endsOn" label="Last day" required />
        <ChoiceInput source="term.pricing" label="Priced as" choices={PRICINGS} defaultValue="fixed" required />
        {pricing === 'perRead' ? (
          <>
            <MoneyInput source="term.billAtLeastCents" label="Bill at least" helperText="Even when fewer reads are given" />
            <MoneyInput source="term.billAtMostCents" label="Bill at most" helperText="However many are given" />
          </>
        ) : (
          <MoneyInput source="term.priceCents" label="Price of the whole term" required />
        )}
      </FormGrid>
    </FormPart>
  );
}
