import { FormGrid } from '../forms/form-grid.tsx';
import { MoneyInput } from '../inputs/money-input.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';

export function RateFields() {
  return (
    <FormGrid>
      <PickInput source="seasonId" reference="seasons" label="Season" required />
      <MoneyInput source="priceCents" label="Price of one" required />
      <PickInput source="readKindId" reference="read-kinds" label="Read kind" helperText="Either a read kind …" />
      <WordsInput source="benefitName" label="Other benefit" longest={120} helperText="… or another benefit: banner, program page" />
    </FormGrid>
  );
}
