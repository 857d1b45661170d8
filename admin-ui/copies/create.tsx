import { CreatePage } from '../forms/record-form.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { LANGUAGES } from '../words/choices.ts';
import { WordsCaution } from './words-caution.tsx';

export const CopyCreate = () => (
  <CreatePage title="Add copy">
    <FormGrid>
      <PickInput source="sponsorId" reference="sponsors" label="Sponsor" required />
      <PickInput source="readKindId" reference="read-kinds" label="Read kind" required />
    </FormGrid>
    <WordsInput source="title" label="Title" longest={120} required helperText="To tell two copies of one sponsor apart" />
    <WordsCaution />
    <WordsInput source="text" label="Words to be read" longest={2000} lines={4} required />
    <WordsInput source="fallbackText" label="Neutral line" longest={500} lines={2} required helperText="Read where no words are approved: “This game ball is presented by Juniper & Pike Hardware.”" />
    <FormGrid columns={3}>
      <ChoiceInput source="language" label="Language" choices={LANGUAGES} defaultValue="en" required />
      <DayInput source="startsOn" label="From" />
      <DayInput source="endsOn" label="To" />
    </FormGrid>
  </CreatePage>
);
