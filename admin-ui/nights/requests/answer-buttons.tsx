import { Box } from '@mui/material';
import { BooleanInput } from 'react-admin';
import { CommandButton } from '../../forms/command-button.tsx';
import { WordsInput } from '../../inputs/words-input.tsx';
import { iMay } from '../../session/rights.ts';
import type { NightRequest } from './types.ts';

/** What the office may answer. What was asked at the table alone is answered there. */
export function AnswerButtons({ request, onDone }: { request: NightRequest; onDone: () => void }) {
  if (request.source === 'table') return <>Answered at the table</>;
  const path = `/requests/${request.id}`;
  const needsName = request.namesPerson && !iMay('links', 'edit');
  return (
    <Box sx={{ display: 'flex', flexWrap: 'wrap', gap: 1 }}>
      {request.state === 'waiting' && (
        <CommandButton
          label="Approve" title="Approve this request?" path={`${path}/approve`} success="The request is approved." onDone={onDone} variant="text"
          explains={request.namesPerson ? 'It may name a person. Approve it only where the director allows that.' : 'It is read at the table as its script says.'}
        >
          {needsName && <WordsInput source="nameAllowedBy" label="Who allowed the name" longest={120} required />}
          {request.kind === 'music' && <BooleanInput source="wordsChecked" label="I read the words of the song from end to end" defaultValue={false} />}
        </CommandButton>
      )}
      {request.state === 'waiting' && (
        <CommandButton label="Decline" title="Decline this request?" path={`${path}/decline`} success="The request is declined." onDone={onDone} variant="text" color="error" explains="Say why, for whoever asks later.">
          <WordsInput source="reason" label="Why" longest={200} required />
        </CommandButton>
      )}
    </Box>
  );
}
