import { useEffect, useState } from 'react';
import { storedNights } from '../store/nights.ts';
import type { StoredNight } from '../store/nights.ts';
import { Frame } from './frame.tsx';
import { HomeScreenHint } from './inner-browser-warning.tsx';
import { NightLinks } from './night-links.tsx';

/** The nights on this device, and how to get one. */
export function NightList() {
  const [nights, setNights] = useState<StoredNight[] | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  useEffect(() => {
    storedNights().then(setNights, () => setProblem('This browser keeps nothing for this page, perhaps because it is in private mode. Use a normal window.'));
  }, []);
  return (
    <Frame>
      <h1>Nights on this device</h1>
      {problem && <p className="desk-notice desk-notice-bad" role="alert">{problem}</p>}
      {nights?.length === 0 && <p>No night is stored here yet.</p>}
      {nights && nights.length > 0 && <NightLinks nights={nights} />}
      <h2>To get a night</h2>
      <p>
        With an account: sign in at <a href="/">the office pages</a>, open the night and choose “Open the desk”. Without one: open the link that the athletic
        department sent you, and type the PIN that came with it.
      </p>
      <HomeScreenHint />
    </Frame>
  );
}
