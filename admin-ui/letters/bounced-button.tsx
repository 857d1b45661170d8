import { CommandButton } from '../forms/command-button.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import type { Letter } from './types.ts';

/** A letter that came back is told by whoever reads the mailbox. */
export const BouncedButton = ({ letter }: { letter: Letter }) => (
  <CommandButton
    label="It came back"
    title="Did this letter come back?"
    explains="The log keeps it. Put the address right at the payer or the sponsor and send the letter once more."
    path={`/messages/${letter.id}/bounced`}
    confirmLabel="It came back"
    success="The letter is marked as come back."
  >
    <WordsInput source="detail" label="What the mail that came back says" longest={500} lines={2} required />
  </CommandButton>
);
