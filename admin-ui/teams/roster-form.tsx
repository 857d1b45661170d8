import { Box, Button } from '@mui/material';
import { ArrayInput, Form, regex, required, SaveButton, SimpleFormIterator, TextInput } from 'react-admin';
import { AddRow } from '../forms/add-row.tsx';
import { RemoveRow } from '../forms/remove-row.tsx';
import { useSend } from '../api/command.ts';
import { only } from '../api/changes.ts';
import { FormError } from '../forms/form-error.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { FlagInput } from '../inputs/flag-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { ANNOUNCES } from '../words/choices.ts';
import { NumberWarnings } from './number-warnings.tsx';
import { withChoice, WhichPlayer } from './which-player.tsx';
import type { RosterPlayer, Team } from './types.ts';

const isNumber = [required(), regex(/^[0-9]{1,3}$/, 'One to three digits; 0 and 00 differ.')];
const SENT = ['id', 'playerId', 'isNew', 'number', 'name', 'sayAs', 'announce', 'position', 'grade', 'isStarter'] as const;

/** The whole roster as one grid, kept at once. */
export function RosterForm({ team, onDone }: { team: Team; onDone: () => void }) {
  const { send, sending } = useSend();
  const submit = async (values: object) => {
    const players = ((values as { players?: RosterPlayer[] }).players ?? []).map((player) => only(withChoice(player), ...SENT));
    const { errors } = await send(`/teams/${team.id}/roster`, { method: 'PUT', body: { players }, version: team.version }, 'The roster is saved.');
    if (!errors) onDone();
    return errors;
  };
  return (
    <Form onSubmit={submit} record={{}} defaultValues={{ players: team.roster ?? [] }}>
      <ArrayInput source="players" label={false} helperText={false}>
        <SimpleFormIterator addButton={<AddRow label="Add a player" />} removeButton={<RemoveRow label="Take out" />} inline disableReordering disableClear fullWidth getItemLabel={(place) => `${place + 1}`} sx={{ '& .RaSimpleFormIterator-line': { py: 1 } }}>
          <Box sx={{ width: { xs: '100%', sm: 96 } }}><TextInput source="number" label="Number" validate={isNumber} helperText={false} slotProps={{ htmlInput: { inputMode: 'numeric', maxLength: 3 } }} /></Box>
          <Box sx={{ flex: { sm: '2 1 180px' } }}><WordsInput source="name" label="Name" longest={120} required /></Box>
          <Box sx={{ flex: { sm: '2 1 150px' } }}><WordsInput source="sayAs" label="Say it as" longest={120} /></Box>
          <Box sx={{ flex: { sm: '1 1 170px' } }}><ChoiceInput source="announce" label="Announce" choices={ANNOUNCES} defaultValue="name" required /></Box>
          <Box sx={{ flex: { sm: '1 1 90px' } }}><WordsInput source="position" label="Position" longest={40} /></Box>
          <Box sx={{ flex: { sm: '1 1 80px' } }}><WordsInput source="grade" label="Grade" longest={20} /></Box>
          <FlagInput source="isStarter" label="Starts" defaultValue={false} />
          <WhichPlayer schoolId={team.schoolId} />
        </SimpleFormIterator>
      </ArrayInput>
      <NumberWarnings seasonId={team.seasonId} />
      <FormError />
      <Box sx={{ display: 'flex', gap: 1, mt: 1 }}>
        <SaveButton label={sending ? 'Saving…' : 'Save the roster'} alwaysEnable={!sending} icon={<span />} sx={{ '& .MuiButton-startIcon': { display: 'none' } }} />
        <Button onClick={onDone}>Cancel</Button>
      </Box>
    </Form>
  );
}
