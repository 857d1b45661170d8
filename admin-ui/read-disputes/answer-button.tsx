import { CommandButton } from '../forms/command-button.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import type { ReadDispute } from './types.ts';

const STANDS = { id: 'stands', name: 'The log is right: it stays as it is' };
const MAKEGOOD = { id: 'makegood', name: 'A makegood will be proposed' };
const TAKEN_BACK = { id: 'takenBack', name: 'The sponsor is right: the read is taken back' };
const ADDED = { id: 'added', name: 'The sponsor is right: the read is added to the log' };

/** Answered once; the sponsor reads the words on its page. */
export const AnswerButton = ({ dispute }: { dispute: ReadDispute }) => (
  <CommandButton
    label="Answer"
    title="Answer the sponsor"
    explains="The sponsor sees the answer on its page. A read that is taken back is owed again, and one that is added counts at once; both are an amendment of the night."
    path={`/read-disputes/${dispute.id}/answer`}
    version={dispute.version}
    defaults={{ outcome: 'stands' }}
    confirmLabel="Send the answer"
    success="The question is answered."
    variant="contained"
  >
    <ChoiceInput source="outcome" label="What becomes of the read" choices={dispute.entryId ? [STANDS, TAKEN_BACK, MAKEGOOD] : [STANDS, ADDED, MAKEGOOD]} required />
    <WordsInput source="answer" label="What the sponsor is told" longest={1000} lines={3} required />
  </CommandButton>
);
