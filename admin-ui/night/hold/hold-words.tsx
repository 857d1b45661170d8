import type { Hold } from '../../../server/domain/night/desk/reading/hold.ts';
import { useDesk } from '../desk.ts';
import { Segments } from '../now/cue-words.tsx';
import { SITUATION_WORDS, wallClock } from '../now/words.ts';
import { LightningClock } from './lightning-clock.tsx';
import './hold.css';

/** What is said while a hold is on: the approved text of the venue, and nothing of a sponsor. */
export function HoldWords({ hold }: { hold: Hold }) {
  const { bundle } = useDesk();
  const situation = hold.situation ?? 'delay';
  const text = bundle.holdTexts.find((one) => one.situation === situation);
  const { exitsText, defibrillatorPlace } = bundle.emergency;
  return (
    <div className="desk-hold-words">
      <h3>Hold: {SITUATION_WORDS[situation]}{hold.begun && `, since ${wallClock(hold.begun.occurredAt, bundle.zone)}`}</h3>
      {situation === 'weather' && <LightningClock flash={hold.lastFlash} />}
      {text ? <Segments segments={text.segments} /> : <p className="desk-now-direction">{situation === 'silence' ? 'Say nothing. No music, no reads.' : 'There is no approved text for this. Call the administrator on duty.'}</p>}
      {situation === 'evacuation' && exitsText !== null && <p className="desk-now-direction">{exitsText}</p>}
      {situation === 'medical' && defibrillatorPlace !== null && <p className="desk-now-direction">The defibrillator: {defibrillatorPlace}</p>}
    </div>
  );
}
