import { useCallback, useEffect, useState } from 'react';
import { goTo } from '../address.ts';
import { storedNight } from '../store/nights.ts';
import { ServerSaysNo } from '../sync/server.ts';
import { openAsPerson } from './fetch-night.ts';
import { Frame } from './frame.tsx';

/** A signed-in person opens a night. What is stored already opens without the server. */
export function OpenNight({ nightId }: { nightId: string }) {
  const [problem, setProblem] = useState<{ sentence: string; status: number } | null>(null);
  const open = useCallback(async () => {
    setProblem(null);
    try {
      await openAsPerson(nightId);
      goTo(`#night/${nightId}`);
    } catch (failure) {
      if (await storedNight(nightId).catch(() => null)) return goTo(`#night/${nightId}`);
      setProblem({ sentence: (failure as Error).message, status: failure instanceof ServerSaysNo ? failure.status : 0 });
    }
  }, [nightId]);
  useEffect(() => void open(), [open]);
  return (
    <Frame>
      <h1>Opening the table</h1>
      {problem === null ? <p role="status">Everything for this night is being stored on this device…</p> : (
        <>
          <p className="desk-notice desk-notice-bad" role="alert">{problem.sentence}</p>
          {problem.status === 401 && <p>Sign in at <a href="/">the office pages</a>, then open this night’s table again.</p>}
          <button type="button" className="desk-button desk-button-main" onClick={() => void open()}>Try again</button>
        </>
      )}
    </Frame>
  );
}
