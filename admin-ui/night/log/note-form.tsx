import { useState } from 'react';
import type { FormEvent } from 'react';
import { useDesk } from '../desk.ts';

/** A note in the log: what no button is there for. */
export function NoteForm({ onStored }: { onStored: (entryId: string) => void }) {
  const { write, isSignedOff } = useDesk();
  const [words, setWords] = useState('');
  const store = async (event: FormEvent) => {
    event.preventDefault();
    const reason = words.trim();
    if (reason === '' || isSignedOff) return;
    setWords('');
    // What cannot be stored stays on the screen in the status line.
    await write({ kind: 'note', reason }).then(({ id }) => onStored(id), () => {});
  };
  return (
    <form className="desk-note" onSubmit={(event) => void store(event)}>
      <label htmlFor="note">Note</label>
      <input id="note" className="desk-input" maxLength={300} autoComplete="off" disabled={isSignedOff} value={words} onChange={(event) => setWords(event.target.value)} />
      <button type="submit" className="desk-button" disabled={isSignedOff}>Log the note</button>
    </form>
  );
}
