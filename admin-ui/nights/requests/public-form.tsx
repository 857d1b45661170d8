import { Box, Button } from '@mui/material';
import { useState } from 'react';
import { useSend } from '../../api/command.ts';
import { useServer } from '../../api/use-server.ts';
import { Tag } from '../../fields/tag.tsx';
import { CommandButton } from '../../forms/command-button.tsx';
import { instantText } from '../../format/instant.ts';
import { Reading } from '../../show/reading.tsx';
import { Section } from '../../show/section.tsx';
import type { Night } from '../types.ts';
import { CodeDialog } from './code-dialog.tsx';
import type { OpenedRequestForm, RequestForm } from './types.ts';

const LEAD =
  'Off unless you open it for this night. People in the building point a phone at the code and ask without an account; what they ask waits at the table, and the table decides. ' +
  'A lost child, a found item or a medical matter is never taken there.';

/** Opens and closes the public form of the night; the code to print is shown once. */
export function PublicForm({ night }: { night: Night }) {
  const path = `/nights/${night.id}/request-form`;
  const form = useServer<RequestForm>(path);
  const { send, sending } = useSend();
  const [address, setAddress] = useState<string | null>(null);
  const opened = (answer?: { address?: string | null }) => {
    if (answer?.address) setAddress(new URL(answer.address, window.location.origin).href);
    void form.refetch();
  };
  const change = async (verb: 'open' | 'close', success: string) => opened((await send<Partial<OpenedRequestForm>>(`${path}/${verb}`, { method: 'POST', body: {} }, success)).answer);
  return (
    <Section title="Public form" lead={LEAD}>
      <Reading of={form}>
        {({ isOpen, hasCode, endsAt }) => (
          <Box sx={{ display: 'flex', flexWrap: 'wrap', gap: 1.5, alignItems: 'center' }}>
            <Box sx={{ flex: '1 1 14rem' }}>
              <Tag mood={isOpen ? 'good' : 'plain'}>{isOpen ? 'Open' : 'Closed'}</Tag>
              {isOpen && <> until {instantText(endsAt)}, or until the night is signed off</>}
            </Box>
            {night.state === 'open' && (isOpen
              ? <Button variant="outlined" disabled={sending} onClick={() => void change('close', 'The form is closed.')}>Close the form</Button>
              : <Button variant="contained" disabled={sending} onClick={() => void change('open', 'The form is open.')}>Open the form</Button>)}
            {night.state === 'open' && hasCode && (
              <CommandButton<OpenedRequestForm>
                label="New code" title="A new code for the form?" explains="The code that is printed opens nothing from then on. Use it when the code went around where it should not."
                path={`${path}/new-code`} body={() => ({})} onDone={opened} success="There is a new code."
              />
            )}
          </Box>
        )}
      </Reading>
      {address && <CodeDialog night={night} address={address} onClose={() => setAddress(null)} />}
    </Section>
  );
}
