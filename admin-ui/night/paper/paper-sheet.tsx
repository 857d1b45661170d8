import { useState } from 'react';
import { focusOnArrival } from '../shell/focus.ts';
import { paperRest, paperSteps, paperTally, withCodeInstead } from '../../../server/domain/night/desk/reading/paper-tally.ts';
import { useDesk } from '../desk.ts';
import { useReading } from '../now/reading.ts';
import { countOf } from '../now/words.ts';
import { Sheet } from '../shell/sheet.tsx';
import './paper.css';

/** What the device could not store is kept in the status line and stored from there, so it counts as logged. */
function saidOf(done: number, unstored: number, left: number): string {
  const logged = `${countOf(done, 'read')} logged from paper.`;
  if (left > 0) return `${logged} This device could not store what comes next. Close this sheet, choose “Try again” in the red line, then log the ${left === 1 ? 'one' : left} left here.`;
  return unstored > 0 ? `${logged} ${unstored === 1 ? 'One waits' : `${unstored} wait`} in the red line above and ${unstored === 1 ? 'is' : 'are'} stored from there. Do not log ${unstored === 1 ? 'it' : 'them'} again.` : logged;
}

/** What was ticked on paper, typed in afterwards: by code and window, without a clock. */
export function PaperSheet({ close }: { close: () => void }) {
  const { bundle, write } = useDesk();
  const { queue } = useReading();
  const [text, setText] = useState('');
  const [said, setSaid] = useState('');
  const [isBusy, setIsBusy] = useState(false);
  const { lines, problems } = paperTally(text, bundle);
  const steps = paperSteps(lines, queue, (gameId) => bundle.games.find((game) => game.gameId === gameId)?.ourTeamIds[0] ?? null);
  const logAll = async (): Promise<void> => {
    setIsBusy(true);
    let done = 0;
    let unstored = 0;
    for (const { entry, happening } of steps) {
      const before = happening === null ? null : await write(happening).catch(() => 'unstored' as const);
      // The mention needs the entry of what happened; it stays in the tally until that is stored.
      if (before === 'unstored') break;
      await write(before === null ? entry : { ...entry, happeningEntryId: before.id }).catch(() => (unstored += 1));
      done += 1;
    }
    setText(paperRest(lines, done));
    setSaid(saidOf(done, unstored, steps.length - done));
    setIsBusy(false);
  };
  return (
    <Sheet title="A tally kept on paper" onClose={close}>
      <p id="paper-how">Codes as the packet prints them, how often, and the window where it was another one: <b>H3, T1 x2, M1 x4, T2 in halftime</b>. No times are needed.</p>
      <label className="desk-paper-text">The tally<textarea rows={4} value={text} aria-describedby="paper-how" ref={focusOnArrival} onChange={(event) => setText(event.target.value)} /></label>
      <div role="alert">
      <ul className="desk-paper-problems">
        {problems.map(({ text: piece, sentence, nearestCode }) => (
          <li key={piece}>{sentence} {nearestCode !== null && <button type="button" className="desk-link" onClick={() => setText(withCodeInstead(text, piece, nearestCode))}>Take {nearestCode}</button>}</li>
        ))}
      </ul>
      </div>
      <ul className="desk-paper-lines">
        {lines.map((line) => (
          <li key={line.text}><b>{line.cue.code}</b> {line.cue.sponsorName ?? line.cue.title}{line.times > 1 && ` × ${line.times}`}{line.windowKey !== null && `, in: ${bundle.windows.find((one) => one.gameId === line.cue.gameId && one.windowKey === line.windowKey)?.title.toLowerCase()}`}{line.times > 1 && line.mention === null && '. A planned read counts once'}</li>
        ))}
      </ul>
      <button type="button" className="desk-button desk-paper-log" disabled={steps.length === 0 || problems.length > 0 || isBusy} onClick={() => void logAll()}>Log {countOf(steps.length, 'read')} from paper</button>
      <p role="status">{said}</p>
    </Sheet>
  );
}
