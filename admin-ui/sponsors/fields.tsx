import { CallerInput } from '../calls/caller-input.tsx';
import { FormGrid, FormPart } from '../forms/form-grid.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { SPONSOR_STATUSES } from '../words/choices.ts';

export function SponsorFields() {
  return (
    <>
      <FormGrid>
        <WordsInput source="name" label="Name" longest={120} required />
        <WordsInput source="sayAs" label="Say it as" longest={120} helperText="How the announcer says it, where it is not read as it is spelled" />
        <PickInput source="categoryId" reference="sponsor-categories" label="Category" required helperText="For separation from rivals and for what the department does not take" />
        <ChoiceInput source="status" label="State" choices={SPONSOR_STATUSES} defaultValue="prospect" required />
      </FormGrid>
      <FormPart title="Who to speak to">
        <FormGrid>
          <WordsInput source="contactName" label="Contact" longest={120} />
          <WordsInput source="email" label="E-mail" longest={254} type="email" />
          <WordsInput source="phone" label="Telephone" longest={40} type="tel" />
          <WordsInput source="address" label="Address" longest={300} lines={2} />
        </FormGrid>
      </FormPart>
      <FormPart title="What comes next">
        <FormGrid>
          <DayInput source="lastContactOn" label="Last contact" />
          <DayInput source="nextStepOn" label="Next step on" />
          <WordsInput source="nextStep" label="Next step" longest={300} />
          <CallerInput />
        </FormGrid>
        <WordsInput source="note" label="Note" longest={2000} lines={3} />
        <WordsInput source="outsideId" label="Id in the file you import" longest={60} />
      </FormPart>
    </>
  );
}
