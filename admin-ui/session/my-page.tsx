import { Paper } from '@mui/material';
import { useState } from 'react';
import { Form, SaveButton, Title } from 'react-admin';
import { useSend } from '../api/command.ts';
import { FormError } from '../forms/form-error.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ROLE_WORDS, wordFor } from '../words/choices.ts';
import { knownMe } from './me.ts';
import { ReadingRate } from './reading-rate.tsx';

/** Who I am here, how fast I read, and a new password. */
export function MyPage() {
  const { send } = useSend();
  const [round, setRound] = useState(0);
  const me = knownMe();
  const submit = async (values: object) => {
    const { errors } = await send('/me/password', { method: 'POST', body: values }, 'Your password is changed.');
    if (!errors) setRound(round + 1);
    return errors;
  };
  return (
    <>
      <Title title="You" />
      <Section title="In this department">
        <Facts facts={[['Name', me?.person.name], ['Department', me?.department.name], ['Roles', me?.roles.map((role) => wordFor(ROLE_WORDS, role)).join(', ')]]} />
      </Section>
      <ReadingRate />
      <Paper variant="outlined" sx={{ p: 2.5, maxWidth: 480 }}>
        <Form key={round} onSubmit={submit} record={{}}>
          <WordsInput source="current" label="Password now" type="password" autoComplete="current-password" required />
          <WordsInput source="next" label="New password" type="password" autoComplete="new-password" required helperText="15 letters or more; a short sentence is easiest to remember." />
          <FormError />
          <SaveButton label="Change password" alwaysEnable icon={<span />} sx={{ '& .MuiButton-startIcon': { display: 'none' } }} />
        </Form>
      </Paper>
    </>
  );
}
