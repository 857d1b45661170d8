import { useLayoutEffect, useState } from 'react';
import type { ReactNode } from 'react';
import { PLAY_HAS_GONE_ON } from '../../../server/domain/night/desk/reading/hold.ts';
import type { HowRead } from '../../../server/domain/night/desk/reading/read-entry.ts';
import { keyName, useKey } from '../keys.ts';
import { HoldWords } from '../hold/hold-words.tsx';
import { cueInHand, windowLine } from './cue-in-hand.ts';
import type { CueInHand } from './cue-in-hand.ts';
import { AT_THE_END, nextOpenAfter, useCurrentCue } from './current-cue.ts';
import { CueWords } from './cue-words.tsx';
import type { Logging } from './logging.ts';
import { OtherwisePanel } from './otherwise-panel.tsx';
import type { Reading } from './reading.ts';
import type { RequestCue } from './request-cues.ts';
import { capital, countOf, standingText } from './words.ts';

interface Props {
  reading: Reading;
  requests: readonly RequestCue[];
  logging: Logging;
  /** what is asked right now and stands where the words stand */
  inFront: ReactNode;
}

/** What the big button does with the cue in hand. */
type Main = { label: string; run: () => void; isOff: boolean };

/** The cue to read, large; its buttons keep their places whatever comes. */
export function CueCard({ reading, requests, logging, inFront }: Props) {
  const { cueKey, jump, step } = useCurrentCue(reading);
  const [otherwise, setOtherwise] = useState<string | null>(null);
  const inHand = cueInHand(reading, requests, cueKey);
  const { hold } = reading;
  useLayoutEffect(() => {
    if (hold.isOn) setOtherwise(null);
  }, [hold.isOn, hold.begun?.id, hold.situation]);
  const isOtherwise = inHand !== null && otherwise === cueKey;
  const next = nextOpenAfter(reading, cueKey);
  const goOn = (): void => {
    setOtherwise(null);
    jump(next?.cueKey ?? AT_THE_END);
  };
  const logIt = async (how: HowRead, said: string): Promise<void> => {
    if (inHand && (await logging.log('main', `${inHand.cue.code}: ${said}.`, inHand.entry(how)))) goOn();
  };
  const separate = (): void => void logging.log('main', 'Play has gone on.', { kind: 'note', detail: { words: PLAY_HAS_GONE_ON } });
  const toNextOpen = (): void => {
    if (logging.isTap('main')) goOn();
  };
  const main = mainOf({ reading, inHand, toNextOpen, separate, logRead: () => void logIt({}, 'read') });
  const toOtherwise = (): void => setOtherwise(isOtherwise ? null : cueKey);
  useKey(main.isOff ? null : 'r', main.label, main.run);
  useKey('n', 'Next cue', () => step(1));
  useKey('p', 'Cue before', () => step(-1));
  useKey(inHand === null ? null : 'x', 'Cut short, not read, another window', toOtherwise);
  return (
    <article className="desk-now-card" aria-label="The cue to read">
      <CueHead reading={reading} inHand={inHand} />
      <div key={`${cueKey} ${isOtherwise} ${reading.hold.isOn} ${inFront !== null}`} className="desk-now-words" tabIndex={0} role="group" aria-label="Words">
        {inFront ? (
          inFront
        ) : reading.hold.isOn && !isOtherwise ? (
          <HoldWords hold={reading.hold} />
        ) : isOtherwise ? (
          <OtherwisePanel
            windows={reading.bundle.windows.filter(({ gameId }) => gameId === inHand.cue.gameId)} ownWindowKey={inHand.isRequest ? null : inHand.cue.windowKey}
            isHeld={reading.hold.isOn} mayBeRead={!reading.hold.isOn && (reading.mayReadSponsors || !inHand.cue.isSponsored)} choose={(how, said) => void logIt(how, said)} close={() => setOtherwise(null)}
          />
        ) : inHand === null ? (
          <p className="desk-now-direction">{reading.left.reads === 0 ? 'Everything planned for tonight has been read or accounted for.' : `The order of the night is read to its end. ${countOf(reading.left.reads, 'read')} still open: choose one from what is coming.`}</p>
        ) : !reading.mayReadSponsors && inHand.cue.isSponsored ? (
          <p className="desk-now-caution">The hold is over. No sponsor’s words come right after it: read something of the house, or wait until play has gone on.</p>
        ) : (
          <CueWords cue={inHand.cue} />
        )}
      </div>
      <div className="desk-now-buttons">
        <button type="button" className="desk-button desk-now-main" disabled={main.isOff} onClick={main.run}>{main.label} <kbd>{keyName('r')}</kbd></button>
        <button type="button" className="desk-button desk-now-before" onClick={() => step(-1)}>Before <kbd>{keyName('p')}</kbd></button>
        <button type="button" className="desk-button desk-now-second" disabled={inHand === null} aria-pressed={isOtherwise} onClick={toOtherwise}>Cut short, not read … <kbd>{keyName('x')}</kbd></button>
        <button type="button" className="desk-button desk-now-next" onClick={() => step(1)}>Next <kbd>{keyName('n')}</kbd></button>
      </div>
    </article>
  );
}

function mainOf({ reading, inHand, toNextOpen, separate, logRead }: { reading: Reading; inHand: CueInHand | null; toNextOpen: () => void; separate: () => void; logRead: () => void }): Main {
  if (reading.hold.isOn) return { label: 'Hold is on', run: toNextOpen, isOff: true };
  if (inHand === null) return { label: 'Read', run: toNextOpen, isOff: true };
  if (!inHand.isOpen && inHand.standing?.state !== 'notRead') return { label: 'Next open cue', run: toNextOpen, isOff: false };
  if (!inHand.cue.isSponsored || reading.mayReadSponsors) return { label: inHand.isOpen ? 'Read' : 'Read after all', run: logRead, isOff: false };
  return { label: 'Play has gone on', run: separate, isOff: false };
}

function CueHead({ reading, inHand }: { reading: Reading; inHand: CueInHand | null }) {
  const { bundle } = reading;
  if (inHand === null) return <header className="desk-now-head"><h2>Nothing more in the order</h2><p className="desk-now-window">&nbsp;</p><p className="desk-now-standing">&nbsp;</p></header>;
  const { cue, standing } = inHand;
  const line = windowLine(reading, inHand);
  const game = bundle.games.length > 1 ? bundle.games.find(({ gameId }) => gameId === cue.gameId) : undefined;
  return (
    <header className="desk-now-head" data-sponsored={cue.isSponsored}>
      <h2><span className="desk-now-code">{cue.code}</span> {cue.sponsorName ?? cue.title}{cue.sponsorSayAs !== null && <span className="desk-now-say-as"> say: {cue.sponsorSayAs}</span>}</h2>
      <p className={line.isOver ? 'desk-now-window desk-now-over' : 'desk-now-window'}>{capital(`${game ? `${game.level}: ` : ''}${line.text}`)}</p>
      <p className="desk-now-standing" data-state={standing?.state}>{(standing && standingText(standing, bundle)) || (cue.sponsorName === null ? '\u00a0' : cue.title)}</p>
    </header>
  );
}
