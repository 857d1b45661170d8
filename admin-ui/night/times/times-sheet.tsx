import type { FormEvent } from 'react';
import type { DeskGame } from '../../../server/domain/night/desk/bundle.ts';
import { startsTonight, timesTonight } from '../../../server/domain/night/desk/reading/moved-times.ts';
import { spokenClock } from '../../../server/domain/season/night.ts';
import { useDesk } from '../desk.ts';
import { useLogging } from '../now/logging.ts';
import { jumpTo } from '../now/current-cue.ts';
import { useReading } from '../now/reading.ts';
import { countOf, secondsText } from '../now/words.ts';
import { Sheet } from '../shell/sheet.tsx';
import './times.css';

interface GameTimesProps {
  game: DeskGame;
  startText: string;
  halftimeSeconds: number | undefined;
  say: (gameId: string, said: string, detail: Record<string, unknown>) => void;
}

const send = (action: (value: string) => void) => (event: FormEvent<HTMLFormElement>): void => {
  event.preventDefault();
  const value = new FormData(event.currentTarget).get('value');
  if (typeof value === 'string' && value !== '') action(value);
};

function GameTimes({ game, startText, halftimeSeconds, say }: GameTimesProps) {
  const halftime = game.rules?.breaks.find((one) => one.halftime);
  const planned = halftime && (halftimeSeconds ?? halftime.seconds) / 60;
  return (
    <section className="desk-times-game">
      <h3>{game.title}</h3>
      <form onSubmit={send((clock) => say(game.gameId, `The start is now ${spokenClock(clock)}.`, { what: 'start', clock }))}>
        <p>Start: {startText}</p>
        <label>The start is now <input type="time" name="value" required /></label>
        <button type="submit" className="desk-button">Move the start</button>
      </form>
      {halftime && (
        <form onSubmit={send((minutes) => say(game.gameId, `Halftime is now ${countOf(Number(minutes), 'minute')}.`, { what: 'halftime', seconds: Number(minutes) * 60 }))}>
          <p>Halftime: {countOf(planned!, 'minute')}. By the rules {halftime.seconds / 60}, at most {halftime.longestSeconds / 60}.</p>
          <label>Halftime is now <input type="number" name="value" min={1} max={60} inputMode="numeric" required /> minutes</label>
          <button type="submit" className="desk-button">Change halftime</button>
        </form>
      )}
    </section>
  );
}

/** "Tip is now 7:12", "halftime is now 10": what slides, and what has no room any more. */
export function TimesSheet({ close }: { close: () => void }) {
  const { bundle, lines } = useDesk();
  const { shorter } = useReading();
  const logging = useLogging();
  const times = timesTonight(lines);
  const starts = startsTonight(bundle.games, times);
  const say = (gameId: string, said: string, detail: Record<string, unknown>): void => void logging.log('times', said, { kind: 'timeMoved', gameId, detail });
  return (
    <Sheet title="Times tonight" onClose={close}>
      {bundle.games.map((game) => <GameTimes key={game.gameId} game={game} startText={starts.find(({ gameId }) => gameId === game.gameId)!.text} halftimeSeconds={times.halftimeSeconds.get(game.gameId)} say={say} />)}
      <p className={logging.isTrouble ? 'desk-now-trouble' : undefined} role="status">{logging.said}</p>
      {shorter.map((window) => (
        <section key={`${window.gameId} ${window.windowKey}`} className="desk-times-short">
          <h3>{window.title}: {secondsText(window.capacitySeconds)} to speak in, planned {secondsText(window.plannedSeconds)}</h3>
          {window.fallsOut.length === 0 ? <p>Everything still fits.</p> : <p>No room any more. Read them in another window, or leave them:</p>}
          <ul>
            {window.fallsOut.map((cue) => (
              <li key={cue.cueKey}>
                <button type="button" className="desk-button" onClick={() => {
                  jumpTo(bundle.nightId, cue.cueKey);
                  close();
                }}>{cue.code} {cue.sponsorName ?? cue.title}, {secondsText(cue.seconds)}</button>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </Sheet>
  );
}
