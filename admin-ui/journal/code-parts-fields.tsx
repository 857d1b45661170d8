import { Box } from '@mui/material';
import { ArrayInput, FormDataConsumer, SimpleFormIterator } from 'react-admin';
import type { CodePartKind } from '../../server/domain/billing/journal-layout.ts';
import { AddRow } from '../forms/add-row.tsx';
import { FormPart } from '../forms/form-grid.tsx';
import { RemoveRow } from '../forms/remove-row.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { KIND_CHOICES } from './field-words.ts';

/** What a part can be told apart by: accounts, schools or teams under their names. */
export type Keys = Record<Exclude<CodePartKind, 'constant'>, { id: string; name: string }[]>;

const Values = ({ kind, keys }: { kind: Exclude<CodePartKind, 'constant'>; keys: Keys }) => (
  <ArrayInput source="values" label={`Codes by ${kind}`} helperText={false}>
    <SimpleFormIterator addButton={<AddRow label="Add a code" />} removeButton={<RemoveRow label="Take out" />} inline disableReordering disableClear fullWidth sx={{ '& .RaSimpleFormIterator-action': { visibility: 'visible' } }}>
      <Box sx={{ flex: { sm: '2 1 220px' } }}><ChoiceInput source="key" label={KIND_CHOICES.find(({ id }) => id === kind)?.name.replace('By ', 'For the ') ?? 'For'} choices={keys[kind]} required /></Box>
      <Box sx={{ flex: { sm: '1 1 110px' } }}><WordsInput source="text" label="Code" longest={20} required /></Box>
    </SimpleFormIterator>
  </ArrayInput>
);

/** Fund, function, object, school: the parts of a code string in their order. */
export const CodePartsFields = ({ keys }: { keys: Keys }) => (
  <FormPart title="Code string" why="Such as fund, function, object and school. Where a part goes by school or team, income is split by the teams that earned it; a school without a code here has that of its own record.">
    <ArrayInput source="codeParts" label={false} helperText={false}>
      <SimpleFormIterator addButton={<AddRow label="Add a part" />} removeButton={<RemoveRow label="Take the part out" />} disableClear fullWidth sx={{ '& .RaSimpleFormIterator-action': { visibility: 'visible' } }}>
        <WordsInput source="name" label="Name of the part" longest={40} required />
        <ChoiceInput source="kind" label="Where it comes from" choices={KIND_CHOICES} defaultValue="constant" required />
        <WordsInput source="otherwise" label="Code, or what stands where none is given below" longest={20} />
        <FormDataConsumer>
          {({ scopedFormData }) => {
            const kind = scopedFormData?.kind as CodePartKind | undefined;
            return kind && kind !== 'constant' ? <Values kind={kind} keys={keys} /> : null;
          }}
        </FormDataConsumer>
      </SimpleFormIterator>
    </ArrayInput>
    <WordsInput source="separator" label="Between the parts" longest={3} />
  </FormPart>
);
