import { FormGrid } from '../forms/form-grid.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { SPORTS } from './sports.ts';

export function SeasonFields() {
  return (
    <FormGrid>
      <WordsInput source="name" label="Name" longest={80} required helperText="Boys basketball 2026–27" />
      <ChoiceInput source="sport" label="Sport" choices={SPORTS} required />
      <DayInput source="startsOn" label="First day" required />
      <DayInput source="endsOn" label="Last day" required />
    </FormGrid>
  );
}
