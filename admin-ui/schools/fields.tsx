import { ColourInput } from '../inputs/colour-input.tsx';
import { FlagInput } from '../inputs/flag-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { FormGrid, FormPart } from '../forms/form-grid.tsx';

export function SchoolFields() {
  return (
    <>
      <FormGrid>
        <WordsInput source="name" label="Name" longest={120} required helperText="As it stands on paper: Tamarack Ridge High School" />
        <WordsInput source="shortName" label="Short name" longest={40} required helperText="As a scoreboard shows it" />
        <WordsInput source="nickname" label="Nickname" longest={60} required helperText="Kestrels, Herons, Miners …" />
        <WordsInput source="sayAs" label="Say it as" longest={120} helperText="How to say the name, where it is not read as it is spelled" />
        <ColourInput source="firstColour" label="First color" defaultValue="#33415c" />
        <ColourInput source="secondColour" label="Second color" defaultValue="#d9cfbd" />
      </FormGrid>
      <FlagInput source="isOurs" label="This is one of our schools" defaultValue={false} />
      <FormPart title="For the office">
        <FormGrid>
          <WordsInput source="accountCode" label="Account code" longest={40} />
          <WordsInput source="outsideId" label="Id in the file you import" longest={60} helperText="So that the same file again changes nothing" />
        </FormGrid>
      </FormPart>
    </>
  );
}
