import { CreatePage } from '../forms/record-form.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { FlagInput } from '../inputs/flag-input.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { ROTATES } from './rotates.ts';
import { WordsFields } from './words-fields.tsx';

export const CopyCreate = () => (
  <CreatePage title="Add copy">
    <FormGrid>
      <PickInput source="sponsorId" reference="sponsors" label="Sponsor" required />
      <PickInput source="readKindId" reference="read-kinds" label="Read kind" required />
    </FormGrid>
    <WordsInput source="title" label="Title" longest={120} required helperText="To tell two copies of one sponsor apart" />
    <WordsFields />
    <WordsInput source="fallbackText" label="Neutral line" longest={500} lines={2} required helperText="Read where no words are approved: “This game ball is presented by Juniper & Pike Hardware.”" />
    <FlagInput source="rotates" {...ROTATES} defaultValue={false} />
  </CreatePage>
);
