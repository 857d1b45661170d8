import { CommandButton } from '../forms/command-button.tsx';
import type { Copy } from './types.ts';

/** The sponsor wants it off tonight. */
export const StopButton = ({ copy }: { copy: Copy }) => (
  <CommandButton
    label="Stop now"
    title={`Stop ${copy.title} now?`}
    explains="These words are not read any more, tonight included; packets already issued show as out of date. The reads stay owed, and the neutral line is read in their place."
    path={`/copies/${copy.id}/stop`}
    body={() => ({})}
    confirmLabel="Stop it"
    color="error"
    success="The copy is stopped."
  />
);
