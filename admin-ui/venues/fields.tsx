import { ArrayInput, SimpleFormIterator } from 'react-admin';
import { AddRow } from '../forms/add-row.tsx';
import { RemoveRow } from '../forms/remove-row.tsx';
import { FormGrid, FormPart } from '../forms/form-grid.tsx';
import { FlagInput } from '../inputs/flag-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';

export function VenueFields() {
  return (
    <>
      <FormGrid>
        <WordsInput source="name" label="Name" longest={120} required />
        <WordsInput source="sayAs" label="Say it as" longest={120} />
      </FormGrid>
      <WordsInput source="address" label="Address" longest={300} lines={2} />
      <FlagInput source="isOurs" label="This is one of our venues" defaultValue />
      <FormPart title="Floors" why="A floor holds one game at a time. Give it the name people use: the Perch, East court.">
        <ArrayInput source="floors" label={false} helperText={false}>
          <SimpleFormIterator addButton={<AddRow label="Add a floor" />} removeButton={<RemoveRow label="Take out" />} inline disableReordering disableClear fullWidth>
            <WordsInput source="name" label="Floor" longest={80} required />
          </SimpleFormIterator>
        </ArrayInput>
      </FormPart>
      <FormPart title="When something happens" why="These words are printed on every packet for this venue. Write them with the people who know the building.">
        <WordsInput source="exitsText" label="Where the exits are" longest={1000} lines={2} />
        <WordsInput source="defibrillatorPlace" label="Where the defibrillator hangs" longest={300} />
        <WordsInput source="evacuationText" label="To be read when the building is cleared" longest={2000} lines={3} />
        <WordsInput source="weatherText" label="To be read in bad weather" longest={2000} lines={3} />
        <WordsInput source="injuryText" label="To be read when someone is hurt" longest={2000} lines={3} />
        <WordsInput source="threatText" label="To be read on a threat" longest={2000} lines={3} />
      </FormPart>
    </>
  );
}
