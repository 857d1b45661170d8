import { useState } from 'react';
import { focusOnArrival } from '../shell/focus.ts';
import { paperSteps, paperTally } from '../../../server/domain/night/desk/reading/paper-tally.ts';
import { useDesk } from '../desk.ts';
import { useReading } from '../now/reading.ts';
import { countOf } from '../now/words.ts';
import { Sheet } from '../shell/sheet.tsx';
import './paper.css';

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
    let stored = 0;
    try {
      for (const { entry, happening } of steps) {
        const before = happening === null ? null : await write(happening);
        await write(before === null ? entry : { ...entry, happeningEntryId: before.id });
        stored += 1;
      }
      setText('');
      setSaid(`${countOf(stored, 'read')} logged from paper.`);
    } catch {
      setSaid(`This device stored ${stored} of ${steps.length}, then could not go on. Take out of the tally what the log shows already.`);
    } finally {
      setIsBusy(false);
    }
  };
  return (
    <Sheet title="A tally kept on paper" onClose={close}>
      <p id="paper-how">Codes as the packet prints them, how often, and the window where it was another one: <b>H3, T1 x2, M1 x4, T2 in halftime</b>. No times are needed.</p>
      <label className="desk-paper-text">The tally<textarea rows={4} value={text} aria-describedby="paper-how" ref={focusOnArrival} onChange={(event) => setText(event.target.value)} /></label>
      <div role="alert">
      <ul className="desk-paper-problems">
        {problems.map(({ text: piece, sentence, nearestCode }) => (
          <li key={piece}>{sentence} {nearestCode !== null && <button type="button" className="desk-link" onClick={() => setText(text.replace(/(?:\d+-)?\p{L}\d+/giu, (code) => (piece.toLowerCase().startsWith(code.toLowerCase()) ? nearestCode : code)))}>Take {nearestCode}</button>}</li>
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
