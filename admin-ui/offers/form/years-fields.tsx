import { NumberInput, maxValue, minValue } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { centsOf } from '../../../server/domain/money.ts';
import { pricesOfYears } from '../../../server/domain/sponsorship/offers/prices-of-years.ts';
import { FormGrid } from '../../forms/form-grid.tsx';
import { moneyText } from '../../format/money.ts';
import { ChoiceInput } from '../../inputs/choice-input.tsx';

const YEARS = [1, 2, 3, 4, 5].map((id) => ({ id, name: id === 1 ? 'One year' : `${id} years` }));

/** One year, or several with an increase from year to year. */
export function YearsFields() {
  const [years, percent, price] = useWatch({ name: ['years', 'increasePercent', 'term.priceCents'] }) as [unknown, unknown, unknown];
  const several = Number(years ?? 1);
  const basisPoints = Math.round(Number(percent ?? 0) * 100);
  const isKnown = typeof price === 'number' && Number.isSafeInteger(price) && several > 1 && basisPoints >= 0 && basisPoints <= 10_000;
  return (
    <>
      <FormGrid>
        <ChoiceInput source="years" label="For" choices={YEARS} defaultValue={1} required />
        {several > 1 && <NumberInput source="increasePercent" label="Increase from year to year, percent" min={0} max={100} step={0.25} validate={[minValue(0), maxValue(100)]} helperText={false} />}
      </FormGrid>
      {isKnown && (
        <p role="status">
          {pricesOfYears(centsOf(price), basisPoints, several).map((cents, place) => `Year ${place + 1}: ${moneyText(cents)}`).join(' · ')}. Each year is rounded to the cent, half a cent up. The first year is signed with the offer; the later ones are made when their season is.
        </p>
      )}
    </>
  );
}
