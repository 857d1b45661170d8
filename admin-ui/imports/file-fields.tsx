import { useEffect } from 'react';
import { Box, Button } from '@mui/material';
import { required, TextInput } from 'react-admin';
import { useFormContext, useWatch } from 'react-hook-form';
import { FormError } from '../forms/form-error.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import { IMPORTS } from './kinds.ts';

const needsFile = [required('Choose a file or paste its text.')];

function Upload() {
  const { setValue } = useFormContext();
  return (
    <Button component="label" role={undefined} tabIndex={-1} variant="outlined" sx={{ mb: 1, '&:focus-within': { outline: '3px solid', outlineColor: 'secondary.main', outlineOffset: 2 } }}>
      Choose a file
      <Box
        component="input"
        type="file"
        accept=".csv,.txt,text/csv"
        aria-label="Choose a file"
        sx={{ position: 'absolute', width: 1, height: 1, opacity: 0, overflow: 'hidden' }}
        onChange={(event) => {
          const file = (event.target as HTMLInputElement).files?.[0];
          if (file) void file.text().then((text) => setValue('csv', text, { shouldDirty: true, shouldValidate: true }));
        }}
      />
    </Button>
  );
}

export function FileFields({ working, onOther }: { working: boolean; onOther: () => void }) {
  const kind = useWatch({ name: 'kind' }) as string | undefined;
  const seasonId = useWatch({ name: 'seasonId' }) as string | undefined;
  // A plan says what one kind of file would do in one season; for another it would mislead.
  useEffect(onOther, [kind, seasonId]);
  const chosen = IMPORTS.find((one) => one.id === kind) ?? IMPORTS[0]!;
  return (
    <>
      <FormGrid>
        <ChoiceInput source="kind" label="What the file holds" choices={IMPORTS} defaultValue="rosters" required />
        <PickInput source="seasonId" reference="seasons" label="Season" required />
      </FormGrid>
      <p>{chosen.holds} The first row names the columns, in any order; commas or semicolons both work.</p>
      <Box component="pre" tabIndex={0} aria-label="An example of the file" sx={{ overflowX: 'auto', bgcolor: 'background.default', p: 1.5, borderRadius: 1, fontSize: '0.9rem' }}>{chosen.example}</Box>
      <Upload />
      <TextInput source="csv" label="… or paste the text of the file" multiline minRows={6} maxRows={18} validate={needsFile} helperText={false} parse={(text: string) => text} slotProps={{ htmlInput: { spellCheck: false, style: { fontFamily: 'monospace' } } }} />
      <FormError />
      <Button type="submit" variant="contained" disabled={working} sx={{ mt: 1 }}>{working ? 'Reading…' : 'Show what would happen'}</Button>
    </>
  );
}
