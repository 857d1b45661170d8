import { useState } from 'react';
import { createPortal } from 'react-dom';
import { HOLD_SITUATIONS } from '../../../server/domain/night/desk/bundle.ts';
import type { HoldSituation } from '../../../server/domain/night/desk/bundle.ts';
import { useDesk } from '../desk.ts';
import { keyName, useKey } from '../keys.ts';
import { useReading } from '../now/reading.ts';
import { SITUATION_WORDS } from '../now/words.ts';
import { Sheet } from '../shell/sheet.tsx';
import { HoldWords } from './hold-words.tsx';
import { minutesText, useLightningSeconds } from './lightning-clock.tsx';
import './hold.css';

function SituationButton({ situation, number, isOn, begin }: { situation: HoldSituation; number: number; isOn: boolean; begin: () => void }) {
  useKey(String(number), `Hold: ${SITUATION_WORDS[situation]}`, begin);
  return <button type="button" className="desk-button desk-hold-situation" aria-pressed={isOn} onClick={begin}>{SITUATION_WORDS[situation]} <kbd>{number}</kbd></button>;
}

/** Two controls at two places: nobody restarts by a slip. */
function Restart({ end }: { end: () => void }) {
  const [isReady, setIsReady] = useState(false);
  return (
    <div className="desk-hold-restart">
      <label><input type="checkbox" checked={isReady} onChange={(event) => setIsReady(event.target.checked)} /> The officials or the administrator have said that the night goes on</label>
      <button type="button" className="desk-button" disabled={!isReady} onClick={end}>End the hold</button>
    </div>
  );
}

function HoldInside({ close }: { close: () => void }) {
  const { write } = useDesk();
  const { hold } = useReading();
  const [trouble, setTrouble] = useState('');
  const say = (state: 'begun' | 'flash' | 'ended', situation: HoldSituation): void => {
    write({ kind: 'hold', detail: { state, situation } }).then(
      () => state === 'ended' && close(),
      () => setTrouble('This device could not store it. Hold all the same, and write the time down.'),
    );
  };
  useKey(hold.isOn ? 'f' : null, 'Thunder or flash', () => say('flash', 'weather'));
  return (
    <>
      <p role="alert" className="desk-hold-trouble">{trouble}</p>
      {hold.isOn ? <HoldWords hold={hold} /> : <p className="desk-now-direction">One tap stops every sponsor’s words and shows the approved text.</p>}
      <div className="desk-hold-situations" role="group" aria-label={hold.isOn ? 'Another situation' : 'What has happened'}>
        {HOLD_SITUATIONS.map((situation, place) => <SituationButton key={situation} situation={situation} number={place + 1} isOn={hold.isOn && hold.situation === situation} begin={() => (hold.isOn && hold.situation === situation) || say('begun', situation)} />)}
      </div>
      {hold.isOn && hold.situation === 'weather' && <button type="button" className="desk-button desk-hold-flash" onClick={() => say('flash', 'weather')}>Thunder or flash just now <kbd>{keyName('f')}</kbd></button>}
      {hold.isOn && <Restart end={() => say('ended', hold.situation ?? 'delay')} />}
    </>
  );
}

/** One control, always in sight, with or without a network. */
export function HoldControl() {
  const { hold } = useReading();
  const [isOpen, setIsOpen] = useState(false);
  const left = useLightningSeconds(hold.isOn ? hold.lastFlash : null);
  useKey('h', 'Emergency hold', () => setIsOpen(true));
  const text = hold.isOn ? `Hold: ${SITUATION_WORDS[hold.situation ?? 'delay']}${left === null ? '' : ` ${minutesText(left)}`}` : 'Hold';
  return (
    <>
      <button type="button" className="desk-button desk-hold-button" data-on={hold.isOn} onClick={() => setIsOpen(true)}>{text} <kbd>{keyName('h')}</kbd></button>
      {isOpen && createPortal(<Sheet title={hold.isOn ? 'The hold is on' : 'Hold everything'} onClose={() => setIsOpen(false)}><HoldInside close={() => setIsOpen(false)} /></Sheet>, document.body)}
    </>
  );
}
