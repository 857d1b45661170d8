import { Paper } from '@mui/material';
import { Form, SaveButton, type RaRecord } from 'react-admin';
import { changesOf } from '../api/changes.ts';
import { useSend } from '../api/command.ts';
import { FormError } from '../forms/form-error.tsx';
import { FormGrid, FormPart } from '../forms/form-grid.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { department as known, forget, me } from '../session/me.ts';
import { SettingsFields } from './settings-fields.tsx';
import type { DepartmentView } from './types.ts';

const LOCALES = [
  { id: 'en-US', name: 'English, United States' },
  { id: 'en-CA', name: 'English, Canada' },
  { id: 'en-GB', name: 'English, United Kingdom' },
  { id: 'es-US', name: 'Spanish, United States' },
];

function months(): { id: number; name: string }[] {
  const name = new Intl.DateTimeFormat(known().locale, { month: 'long', timeZone: 'UTC' });
  return Array.from({ length: 12 }, (_, place) => ({ id: place + 1, name: name.format(Date.UTC(2026, place, 15)) }));
}

const ZONES = ['America/New_York', 'America/Detroit', 'America/Chicago', 'America/Denver', 'America/Phoenix', 'America/Los_Angeles', 'America/Anchorage', 'Pacific/Honolulu'];

export function DepartmentForm({ department }: { department: DepartmentView }) {
  const { send, sending } = useSend();
  const zones = [...new Set([department.zone, ...ZONES])].map((id) => ({ id, name: id.replaceAll('_', ' ') }));
  const submit = async (values: object) => {
    const changed = changesOf(values as RaRecord, department as unknown as RaRecord);
    const { errors } = await send('/department', { method: 'PATCH', body: changed, version: department.version }, 'The department is saved.');
    if (errors) return errors;
    forget();
    await me();
    return undefined;
  };
  return (
    <Paper variant="outlined" sx={{ p: { xs: 2, sm: 3 }, maxWidth: 960 }}>
      <Form onSubmit={submit} record={department}>
        <FormGrid>
          <WordsInput source="name" label="Name" longest={120} required />
          <ChoiceInput source="zone" label="Time zone" choices={zones} required />
          <ChoiceInput source="locale" label="How numbers and days are written" choices={LOCALES} required />
        </FormGrid>
        <FormPart title="Years" why="The fiscal year numbers the invoices; the school year names the seasons. They are two things.">
          <FormGrid>
            <ChoiceInput source="fiscalYearStartsInMonth" label="Fiscal year begins in" choices={months()} required />
            <ChoiceInput source="schoolYearStartsInMonth" label="School year begins in" choices={months()} required />
          </FormGrid>
        </FormPart>
        <SettingsFields />
        <FormError />
        <SaveButton label={sending ? 'Saving…' : 'Save'} alwaysEnable={!sending} icon={<span />} sx={{ mt: 2, '& .MuiButton-startIcon': { display: 'none' } }} />
      </Form>
    </Paper>
  );
}
