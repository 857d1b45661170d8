import { Box, Button } from '@mui/material';
import { useState } from 'react';
import { ArrayInput, Form, SaveButton, SimpleFormIterator, useGetList } from 'react-admin';
import { AddRow } from '../forms/add-row.tsx';
import { RemoveRow } from '../forms/remove-row.tsx';
import { only } from '../api/changes.ts';
import { useSend } from '../api/command.ts';
import { Name } from '../fields/name.tsx';
import { FormError } from '../forms/form-error.tsx';
import { clockText } from '../format/instant.ts';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { ClockInput } from '../inputs/clock-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import type { Person } from '../people/types.ts';
import { iMay } from '../session/rights.ts';
import { Section } from '../show/section.tsx';
import { NIGHT_ROLE_WORDS, NIGHT_ROLES, wordFor } from '../words/choices.ts';
import { PersonPick } from './person-pick.tsx';
import type { Night, PersonOfNight } from './types.ts';

function PeopleForm({ night, onDone }: { night: Night; onDone: () => void }) {
  const { send, sending } = useSend();
  const mayPick = iMay('people', 'list');
  const { data: department = [] } = useGetList<Person>('people', { pagination: { page: 1, perPage: 100 }, sort: { field: 'name', order: 'ASC' } }, { enabled: mayPick });
  const submit = async (values: object) => {
    const people = ((values as { people?: PersonOfNight[] }).people ?? []).map((one) => ({ ...only(one, 'role', 'name', 'sayAs', 'arrivesAt', 'note'), personId: one.personId || null }));
    const { errors } = await send(`/nights/${night.id}/people`, { method: 'PUT', body: { people }, version: night.version }, 'The people of the night are saved.');
    if (!errors) onDone();
    return errors;
  };
  return (
    <Form onSubmit={submit} record={{}} defaultValues={{ people: night.people ?? [] }}>
      <ArrayInput source="people" label={false} helperText={false}>
        <SimpleFormIterator addButton={<AddRow label="Add a person" />} removeButton={<RemoveRow label="Take out" />} inline disableReordering disableClear fullWidth>
          <Box sx={{ flex: { sm: '1 1 150px' } }}><ChoiceInput source="role" label="Does what" choices={NIGHT_ROLES} required /></Box>
          {mayPick && <Box sx={{ flex: { sm: '1 1 200px' } }}><PersonPick people={department} /></Box>}
          <Box sx={{ flex: { sm: '2 1 180px' } }}><WordsInput source="name" label="Name" longest={120} required /></Box>
          <Box sx={{ flex: { sm: '2 1 150px' } }}><WordsInput source="sayAs" label="Say it as" longest={120} /></Box>
          <Box sx={{ flex: { sm: '1 1 120px' } }}><ClockInput source="arrivesAt" label="Arrives at" onDay={night.heldOn} /></Box>
          <Box sx={{ flex: { sm: '2 1 180px' } }}><WordsInput source="note" label="Note" longest={300} /></Box>
        </SimpleFormIterator>
      </ArrayInput>
      <FormError />
      <Box sx={{ display: 'flex', gap: 1, mt: 1 }}>
        <SaveButton label={sending ? 'Saving…' : 'Save the people'} alwaysEnable={!sending} icon={<span />} sx={{ '& .MuiButton-startIcon': { display: 'none' } }} />
        <Button onClick={onDone}>Cancel</Button>
      </Box>
    </Form>
  );
}

export function PeopleSheet({ night }: { night: Night }) {
  const [editing, setEditing] = useState(false);
  const people = night.people ?? [];
  const edit = iMay('nights', 'edit') && night.state === 'open' && !editing;
  return (
    <Section title="People of the night" actions={edit && <Button variant="contained" onClick={() => setEditing(true)}>Edit the people</Button>}>
      {editing && <PeopleForm night={night} onDone={() => setEditing(false)} />}
      {!editing && people.length === 0 && <EmptyList>Nobody is named yet. Name the announcer, the official scorer and who sings, so that the packet has them with how to say their names.</EmptyList>}
      {!editing && people.length > 0 && (
        <Rows<PersonOfNight>
          label="People of the night"
          rows={people}
          columns={[
            { label: 'Name', show: (one) => <Name name={one.name} sayAs={one.sayAs} /> },
            { label: 'Does what', show: (one) => wordFor(NIGHT_ROLE_WORDS, one.role) },
            { label: 'Arrives', show: (one) => clockText(one.arrivesAt) },
            { label: 'Note', show: (one) => one.note ?? '–' },
          ]}
        />
      )}
    </Section>
  );
}
