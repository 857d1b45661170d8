import { Box } from '@mui/material';
import { ArrayInput, FormDataConsumer, SimpleFormIterator } from 'react-admin';
import { AddRow } from '../forms/add-row.tsx';
import { FormPart } from '../forms/form-grid.tsx';
import { RemoveRow } from '../forms/remove-row.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { CountInput } from '../inputs/count-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { FIELD_CHOICES } from './field-words.ts';

/** The columns of the file from left to right. */
export const ColumnsFields = () => (
  <FormPart title="Columns" why="From left to right. The file needs a column of signed amounts, or a debit and a credit column.">
    <ArrayInput source="columns" label={false} helperText={false}>
      <SimpleFormIterator addButton={<AddRow label="Add a column" />} removeButton={<RemoveRow label="Take out" />} inline disableClear fullWidth sx={{ '& .RaSimpleFormIterator-action': { visibility: 'visible' } }}>
        <Box sx={{ flex: { sm: '2 1 220px' } }}><ChoiceInput source="field" label="What it holds" choices={FIELD_CHOICES} required /></Box>
        <Box sx={{ flex: { sm: '2 1 160px' } }}><WordsInput source="heading" label="Heading" longest={60} /></Box>
        <FormDataConsumer>
          {({ scopedFormData }) => (
            <>
              {scopedFormData?.field === 'text' && <Box sx={{ flex: { sm: '1 1 140px' } }}><WordsInput source="text" label="Words" longest={60} /></Box>}
              {scopedFormData?.field === 'codePart' && <Box sx={{ flex: { sm: '1 1 100px' } }}><CountInput source="part" label="Which part" min={1} max={9} required /></Box>}
            </>
          )}
        </FormDataConsumer>
      </SimpleFormIterator>
    </ArrayInput>
  </FormPart>
);
