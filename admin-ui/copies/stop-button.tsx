import { only } from '../api/changes.ts';
import { CommandButton } from '../forms/command-button.tsx';
import { ReasonInput } from '../forms/reason-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import type { Copy } from './types.ts';

/** The sponsor wants it off tonight. */
export const StopButton = ({ copy }: { copy: Copy }) => (
  <CommandButton
    label="Stop now"
    title={`Stop ${copy.title} now?`}
    explains={
      <>
        These words are not read any more, tonight included; packets already issued show as out of date. The reads stay owed, and the neutral line
        is read in their place: “{copy.fallbackText}” Stopped copy stays stopped: for new words, add new copy.
      </>
    }
    path={`/copies/${copy.id}/stop`}
    body={(values) => only(values, 'stoppedByName', 'reason')}
    confirmLabel="Stop it"
    color="error"
    success="The copy is stopped."
  >
    <WordsInput source="stoppedByName" label="Who asked for it" longest={120} required helperText="At the sponsor, or at the school" />
    <ReasonInput />
  </CommandButton>
);
