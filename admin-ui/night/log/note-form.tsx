import { useState } from 'react';
import type { FormEvent } from 'react';
import { useDesk } from '../desk.ts';

/** A note in the log: what no button is there for. */
export function NoteForm() {
  const { write } = useDesk();
  const [words, setWords] = useState('');
  const store = async (event: FormEvent) => {
    event.preventDefault();
    const reason = words.trim();
    if (reason === '') return;
    setWords('');
    // What cannot be stored stays on the screen in the status line.
    await write({ kind: 'note', reason }).catch(() => {});
  };
  return (
    <form className="desk-note" onSubmit={(event) => void store(event)}>
      <label htmlFor="note">Note</label>
      <input id="note" className="desk-input" maxLength={300} autoComplete="off" value={words} onChange={(event) => setWords(event.target.value)} />
      <button type="submit" className="desk-button">Log the note</button>
    </form>
  );
}
