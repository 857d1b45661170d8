import { useContext, useState } from 'react';
import { createPortal } from 'react-dom';
import type { CueStanding, WindowTonight } from '../../../server/domain/night/desk/reading/reads-left.ts';
import { useDesk } from '../desk.ts';
import { keyName, useKey } from '../keys.ts';
import { useCurrentCue } from '../now/current-cue.ts';
import { useReading } from '../now/reading.ts';
import type { Reading } from '../now/reading.ts';
import { useRequestCues } from '../now/use-request-cues.ts';
import { capital, countOf, secondsText, standingText } from '../now/words.ts';
import { PaperSheet } from '../paper/paper-sheet.tsx';
import { ShowRegion } from '../shell/show-region.ts';
import { TimesSheet } from '../times/times-sheet.tsx';
import './coming.css';

const MARKS = { open: '○', read: '✓', cutShort: '½', notRead: '–' } as const;

interface RowProps {
  standing: CueStanding;
  reading: Reading;
  isCurrent: boolean;
  isOut: boolean;
  jump: (cueKey: string) => void;
}

function CueRow({ standing, reading, isCurrent, isOut, jump }: RowProps) {
  const { cue, state } = standing;
  const note = standingText(standing, reading.bundle) || (isOut ? 'No room any more: read it in another window' : '');
  return (
    <li>
      <button type="button" className="desk-coming-cue" data-state={state} data-sponsored={cue.isSponsored} aria-current={isCurrent ? 'true' : undefined} onClick={() => jump(cue.cueKey)}>
        <span className="desk-coming-mark" aria-hidden="true">{MARKS[state]}</span>
        <span className="desk-coming-code">{cue.code}</span>
        <span className="desk-coming-title">{cue.sponsorName ?? cue.title}{note && <small>{note}</small>}</span>
        <span className="desk-coming-time">{reading.startsTexts.get(cue.cueKey) ?? secondsText(cue.seconds)}</span>
      </button>
    </li>
  );
}

function WindowGroup({ window, reading, currentKey, out, jump }: { window: WindowTonight; reading: Reading; currentKey: string; out: ReadonlySet<string>; jump: (cueKey: string) => void }) {
  const { bundle } = reading;
  const game = bundle.games.length > 1 ? `${bundle.games.find(({ gameId }) => gameId === window.gameId)?.level ?? ''}: ` : '';
  const room = window.capacitySeconds === null ? '' : ` · ${secondsText(window.capacitySeconds)} to speak in`;
  return (
    <section className="desk-coming-window">
      <h3>{capital(`${game}${window.title}`)}<small>{window.readsLeft === 0 ? 'nothing of a sponsor left' : `${countOf(window.readsLeft, 'read')}`} · {secondsText(window.secondsLeft)}{room}{window.isUncertain ? ' · if it comes' : ''}</small></h3>
      <ol>{window.cues.map((standing) => <CueRow key={standing.cue.cueKey} standing={standing} reading={reading} isCurrent={standing.cue.cueKey === currentKey} isOut={out.has(standing.cue.cueKey)} jump={jump} />)}</ol>
    </section>
  );
}

/** The order of the night, where each cue stands and what is left; a tap takes a cue in hand. */
export function ComingRegion() {
  const { bundle, isSignedOff } = useDesk();
  const reading = useReading();
  const requests = useRequestCues().filter(({ isOpen }) => isOpen);
  const { cueKey, jump: take } = useCurrentCue(reading);
  const show = useContext(ShowRegion);
  const jump = (key: string): void => {
    take(key);
    show('now');
  };
  const [sheet, setSheet] = useState<'times' | 'paper' | null>(null);
  useKey(isSignedOff ? null : 't', 'Times tonight', () => setSheet('times'));
  useKey(isSignedOff ? null : 'y', 'Type in a paper tally', () => setSheet('paper'));
  const out = new Set(reading.shorter.flatMap(({ fallsOut }) => fallsOut.map((cue) => cue.cueKey)));
  const outside = bundle.cues.filter((cue) => cue.windowKey === null && !cue.code.startsWith('E') && !cue.code.includes('-E'));
  const waiting = new Set(bundle.nextTimeOut);
  const nextTimeOut = bundle.nextTimeOut.flatMap((code) => bundle.cues.filter((cue) => cue.code === code)).find((cue) => reading.standings.get(cue.cueKey)?.state === 'open');
  const { left, queue } = reading;
  const rows = (standings: readonly CueStanding[]) => standings.map((standing) => <CueRow key={standing.cue.cueKey} standing={standing} reading={reading} isCurrent={standing.cue.cueKey === cueKey} isOut={false} jump={jump} />);
  return (
    <div className="desk-coming">
      <h2>What is coming</h2>
      <p className="desk-coming-left">
        {left.reads === 0 ? 'No sponsor’s read left tonight' : <><b>{countOf(left.reads, 'read')}</b> left tonight, {secondsText(left.seconds)}</>}{left.ifItComes > 0 && <>; {left.ifItComes} more if the time-out comes</>}. <b>{countOf(queue.length, 'mention')}</b> owed.
      </p>
      <div className="desk-coming-buttons">
        <button type="button" className="desk-button" disabled={isSignedOff} onClick={() => setSheet('times')}>Times <kbd>{keyName('t')}</kbd></button>
        <button type="button" className="desk-button" disabled={isSignedOff} onClick={() => setSheet('paper')}>From paper <kbd>{keyName('y')}</kbd></button>
        {waiting.size > 0 && <button type="button" className="desk-button" disabled={!nextTimeOut} onClick={() => nextTimeOut && jump(nextTimeOut.cueKey)}>Next time-out: {nextTimeOut ? nextTimeOut.code : 'none'}</button>}
      </div>
      {reading.windows.map((window) => <WindowGroup key={`${window.gameId} ${window.windowKey}`} window={window} reading={reading} currentKey={cueKey} out={out} jump={jump} />)}
      {outside.length > 0 && <section className="desk-coming-window"><h3>At any time</h3><ol>{rows(outside.map((cue) => reading.standings.get(cue.cueKey)!))}</ol></section>}
      {requests.length > 0 && (
        <section className="desk-coming-window"><h3>Requests to read</h3><ol>{rows(requests.map(({ cue }) => ({ cue, state: 'open', line: null, isDoubled: false, movedTo: null, timesRead: 0 })))}</ol></section>
      )}
      {sheet === 'times' && !isSignedOff && createPortal(<TimesSheet close={() => setSheet(null)} />, document.body)}
      {sheet === 'paper' && !isSignedOff && createPortal(<PaperSheet close={() => setSheet(null)} />, document.body)}
    </div>
  );
}
