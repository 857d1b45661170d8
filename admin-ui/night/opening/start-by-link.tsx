import { useState } from 'react';
import type { FormEvent } from 'react';
import { goTo } from '../address.ts';
import { storedNights } from '../store/nights.ts';
import type { StoredNight } from '../store/nights.ts';
import { ServerSaysNo } from '../sync/server.ts';
import { openByLink } from './fetch-night.ts';
import { Frame } from './frame.tsx';
import { NightLinks } from './night-links.tsx';

/** Whoever holds the link types the short PIN that came with it. Programs that only look at links never get this far. */
export function StartByLink({ token }: { token: string }) {
  const [pin, setPin] = useState('');
  const [problem, setProblem] = useState<string | null>(null);
  const [stored, setStored] = useState<readonly StoredNight[]>([]);
  const [isWorking, setIsWorking] = useState(false);
  const start = async (event: FormEvent) => {
    event.preventDefault();
    setIsWorking(true);
    setProblem(null);
    try {
      const night = await openByLink(token, pin.trim());
      goTo(`#night/${night.nightId}`);
    } catch (failure) {
      // Without a network the link cannot say which night it opens; what is stored opens all the same.
      const isSilent = failure instanceof ServerSaysNo && failure.status === 0;
      setStored(isSilent ? await storedNights().catch(() => []) : []);
      setProblem((failure as Error).message);
      setIsWorking(false);
    }
  };
  return (
    <Frame>
      <h1>Work the table</h1>
      <p>This link opens one night. Open it once while you have a network, the day before if the gym has none: everything is stored on this device.</p>
      <form className="desk-form" onSubmit={(event) => void start(event)}>
        <label htmlFor="pin">PIN</label>
        <input id="pin" className="desk-input" inputMode="numeric" autoComplete="one-time-code" required value={pin} onChange={(event) => setPin(event.target.value)} aria-describedby="pin-says" />
        <span id="pin-says" className="desk-soft">The short number you were told with the link.</span>
        {problem && <p className="desk-notice desk-notice-bad" role="alert">{problem}</p>}
        <button type="submit" className="desk-button desk-button-main" disabled={isWorking}>{isWorking ? 'Opening…' : 'Start'}</button>
      </form>
      {problem && stored.length > 0 && (
        <>
          <h2>Stored on this device already</h2>
          <NightLinks nights={stored} />
        </>
      )}
    </Frame>
  );
}
