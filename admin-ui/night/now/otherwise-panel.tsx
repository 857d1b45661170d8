import { useState } from 'react';
import { focusOnArrival } from '../shell/focus.ts';
import { NOT_READ_REASONS } from '../../../server/domain/night/log-entry.ts';
import type { NotReadReason } from '../../../server/domain/night/log-entry.ts';
import type { HowRead } from '../../../server/domain/night/desk/reading/read-entry.ts';
import type { WindowLoad } from '../../../server/domain/packet/packet.ts';
import { keyName, useKey } from '../keys.ts';
import { REASON_WORDS } from './words.ts';

interface Props {
  windows: readonly Pick<WindowLoad, 'windowKey' | 'title'>[];
  /** null where the cue is bound to no window */
  ownWindowKey: string | null;
  /** a hold is on: a read that was given before it is logged here, not by one tap */
  isHeld: boolean;
  /** false while a hold is on, and for a sponsor's words right after it: then it is read in no other window either */
  mayBeRead: boolean;
  choose: (how: HowRead, said: string) => void;
  close: () => void;
}

function ReasonButton({ reason, keyOf, pick }: { reason: NotReadReason; keyOf: string; pick: () => void }) {
  useKey(keyOf, REASON_WORDS[reason], pick);
  return <button type="button" className="desk-button" onClick={pick}>{REASON_WORDS[reason]} <kbd>{keyName(keyOf)}</kbd></button>;
}

/** Cut short or not read, with its reason; or read in another window. Stands where the words stand, so no button moves. */
export function OtherwisePanel({ windows, ownWindowKey, isHeld, mayBeRead, choose, close }: Props) {
  const [outcome, setOutcome] = useState<'cutShort' | 'notRead'>('notRead');
  const [asksWords, setAsksWords] = useState(false);
  const [words, setWords] = useState('');
  useKey('Escape', 'Back to the words', close);
  useKey('c', 'Cut short', () => setOutcome('cutShort'));
  useKey('N', 'Not read', () => setOutcome('notRead'));
  const said = outcome === 'cutShort' ? 'cut short' : 'not read';
  const pick = (reason: NotReadReason): void => (reason === 'other' ? setAsksWords(true) : choose({ outcome, reason }, said));
  return (
    <div className="desk-now-otherwise" role="group" aria-label="Otherwise than read in full">
      <div className="desk-now-outcomes" role="group" aria-label="What happened">
        <button type="button" className="desk-button" aria-pressed={outcome === 'notRead'} onClick={() => setOutcome('notRead')}>Not read <kbd>{keyName('N')}</kbd></button>
        <button type="button" className="desk-button" aria-pressed={outcome === 'cutShort'} onClick={() => setOutcome('cutShort')}>Cut short <kbd>C</kbd></button>
        <button type="button" className="desk-button desk-now-quiet" onClick={close}>Back to the words <kbd>Esc</kbd></button>
      </div>
      {asksWords ? (
        <form className="desk-now-other" onSubmit={(event) => {
          event.preventDefault();
          if (words.trim() !== '') choose({ outcome, reason: 'other', words }, said);
        }}>
          <label>Why, in a few words<input value={words} onChange={(event) => setWords(event.target.value)} maxLength={200} ref={focusOnArrival} required /></label>
          <button type="submit" className="desk-button">Log it {said}</button>
        </form>
      ) : (
        <div className="desk-now-reasons" role="group" aria-label={outcome === 'cutShort' ? 'Why it was cut short' : 'Why it was not read'}>
          {NOT_READ_REASONS.map((reason, place) => <ReasonButton key={reason} reason={reason} keyOf={String((place + 1) % 10)} pick={() => pick(reason)} />)}
        </div>
      )}
      {isHeld && (
        <>
          <h3>Read in full</h3>
          <div className="desk-now-reasons"><button type="button" className="desk-button" onClick={() => choose({}, 'read before the hold')}>Read before the hold</button></div>
        </>
      )}
      {ownWindowKey !== null && mayBeRead && (
        <>
          <h3>Read in another window</h3>
          <div className="desk-now-reasons">
            {windows.filter(({ windowKey }) => windowKey !== ownWindowKey).map(({ windowKey, title }) => (
              <button key={windowKey} type="button" className="desk-button" onClick={() => choose({ windowKey }, `read in: ${title.toLowerCase()}`)}>{title}</button>
            ))}
          </div>
        </>
      )}
    </div>
  );
}
