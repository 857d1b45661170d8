import { useQueryClient } from '@tanstack/react-query';
import { CommandButton } from '../forms/command-button.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import type { NightLock } from './types.ts';

/** Locks the plan of a night, or opens it again; a night whose packet is issued asks why. */
export function LockButton({ lock }: { lock: NightLock }) {
  const queries = useQueryClient();
  const again = () => void queries.invalidateQueries({ queryKey: ['server'] });
  if (!lock.isLocked) {
    return (
      <CommandButton
        label="Lock this night"
        title="Lock the plan of this night?"
        explains="Its planned reads stay as they are: planning the season takes none out, moves none and adds none. It can be opened again."
        path={`/nights/${lock.nightId}/lock`}
        body={({ note }) => ({ note: note || null })}
        confirmLabel="Lock it"
        success="The night is locked."
        onDone={again}
      >
        <WordsInput source="note" label="Why" longest={500} helperText="It may be left empty" />
      </CommandButton>
    );
  }
  const isIssued = lock.why === 'issued';
  return (
    <CommandButton
      label="Unlock this night"
      title="Unlock the plan of this night?"
      explains={isIssued ? 'Its packet is issued. Once it is unlocked, its reads can be planned anew, and what is printed is out of date as soon as one of them moves.' : 'Its reads can be planned anew.'}
      path={`/nights/${lock.nightId}/unlock`}
      body={({ note }) => ({ note: note || null })}
      confirmLabel="Unlock it"
      success="The night is open for planning again."
      onDone={again}
    >
      {isIssued && <WordsInput source="note" label="Why, although its packet is issued" longest={500} required />}
    </CommandButton>
  );
}
