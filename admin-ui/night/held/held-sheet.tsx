import { useState } from 'react';
import type { DeskLine } from '../../../server/domain/night/desk/desk-entry.ts';
import { sentenceOfLine } from '../../../server/domain/night/desk/line-sentence.ts';
import { countsInWords } from '../../../server/domain/night/desk/outbox/outbox.ts';
import { triedAgain } from '../../../server/domain/night/desk/outbox/outbox-sending.ts';
import { goTo } from '../address.ts';
import type { Keeper, Snapshot } from '../store/keeper.ts';
import type { Sync } from '../sync/sync.ts';
import { EntriesFile } from './entries-file.tsx';
import './held-sheet.css';

interface Props {
  keeper: Keeper;
  sync: Sync;
  snapshot: Snapshot;
}

/** Where this device's entries are, why some are held, and the ways out for each of them. */
export function HeldSheet({ keeper, sync, snapshot }: Props) {
  const { lines, night, unstored, counts, waitsForSignIn } = snapshot;
  const held = lines.filter((line) => line.place === 'needsAttention');
  const waiting = lines.filter((line) => line.place === 'onDevice');
  return (
    <>
      <p>{countsInWords(counts)}</p>
      {waitsForSignIn && <SignInAgain nightId={night.nightId} sync={sync} />}
      {unstored.length > 0 && <Unstored keeper={keeper} sync={sync} snapshot={snapshot} />}
      <h3>Needs attention</h3>
      {held.length === 0 ? <p>No entry is held back.</p> : (
        <>
          <p>The server did not take these as they are. They stay here; nothing is lost. Try again once the reason is gone, or save them as a file for the director.</p>
          <Lines lines={held} snapshot={snapshot} />
          <button type="button" className="desk-button desk-button-main" onClick={() => void keeper.become(triedAgain).then(sync.tryNow)}>Send the held ones again</button>
        </>
      )}
      <h3>On this device, not yet sent</h3>
      {waiting.length === 0 ? <p>Nothing waits.</p> : <Lines lines={waiting.slice(-20).toReversed()} snapshot={snapshot} />}
      {waiting.length > 20 && <p className="desk-soft">The last 20 of {waiting.length} are shown.</p>}
      <EntriesFile keeper={keeper} sync={sync} night={night} lines={lines} />
    </>
  );
}

function SignInAgain({ nightId, sync }: { nightId: string; sync: Sync }) {
  const [isTrying, setIsTrying] = useState(false);
  return (
    <div className="desk-notice desk-notice-care">
      <p><strong>The server asks who you are.</strong> With an account, sign in at <a href="/" target="_blank" rel="noreferrer">the office pages</a> in another window and come back. With a table link, open it again. What waits here is sent then.</p>
      <button type="button" className="desk-button" disabled={isTrying} onClick={() => {
        setIsTrying(true);
        void sync.signedIn().finally(() => setIsTrying(false));
      }}>I am signed in again</button>{' '}
      <button type="button" className="desk-button" onClick={() => goTo(`#open/${nightId}`)}>Open the night anew</button>
    </div>
  );
}

function Unstored({ keeper, sync, snapshot }: Props) {
  return (
    <div className="desk-notice desk-notice-bad">
      <p><strong>Not stored.</strong> {snapshot.unstored[0]!.sentence}</p>
      <ul className="desk-held">
        {snapshot.unstored.map(({ said }, place) => (
          <li key={place}>{sentenceOfLine(asLine(said), snapshot.night.bundle, snapshot.lines)}</li>
        ))}
      </ul>
      <button type="button" className="desk-button desk-button-main" onClick={() => void keeper.storeAgain().then(sync.nudge)}>Store them now</button>
    </div>
  );
}

const asLine = (said: Snapshot['unstored'][number]['said']): DeskLine => ({
  id: '', deviceId: '', sequence: 0, outcome: null, reason: null, gameId: null, cueKey: null, placementId: null, commitmentId: null, windowKey: null, teamId: null,
  playerNumber: null, period: null, clock: null, detail: null, happeningEntryId: null, takesBackEntryId: null, occurredAt: '', place: 'needsAttention', number: null,
  isOwn: true, sentence: null, ...said,
});

function Lines({ lines, snapshot }: { lines: readonly DeskLine[]; snapshot: Snapshot }) {
  return (
    <ul className="desk-held">
      {lines.map((line) => (
        <li key={line.id}>
          {sentenceOfLine(line, snapshot.night.bundle, snapshot.lines)}
          {line.sentence && <span className="desk-held-why">{line.sentence}</span>}
        </li>
      ))}
    </ul>
  );
}
