import { ArrayInput, SimpleFormIterator } from 'react-admin';
import { AddRow } from '../../forms/add-row.tsx';
import { RemoveRow } from '../../forms/remove-row.tsx';
import { FormPart } from '../../forms/form-grid.tsx';
import { CommitmentFields } from './commitment-fields.tsx';

export function CommitmentsFields() {
  return (
    <FormPart title="Reads promised" why="Each line promises reads of one kind. The price of the term is shared over the lines by their rate-card prices.">
      <ArrayInput source="commitments" label={false} helperText={false}>
        <SimpleFormIterator addButton={<AddRow label="Add a line of reads" />} removeButton={<RemoveRow label="Take out these reads" />} disableReordering disableClear fullWidth sx={{ '& .RaSimpleFormIterator-line': { py: 2 } }}>
          <CommitmentFields />
        </SimpleFormIterator>
      </ArrayInput>
    </FormPart>
  );
}
