import { useLayoutEffect, useState } from 'react';
import { useDesk } from '../desk.ts';
import { HoldWords } from '../hold/hold-words.tsx';
import { keyName, useKey } from '../keys.ts';
import { CueCard } from './cue-card.tsx';
import type { HappeningButton } from '../../../server/domain/night/desk/reading/mention-queue.ts';
import { HappeningButtons, Shooter } from './happening-buttons.tsx';
import { useLogging } from './logging.ts';
import { MentionQueue } from './mention-queue.tsx';
import { useReading } from './reading.ts';
import { RequestsToRead } from './requests-to-read.tsx';
import { useRequestCues } from './use-request-cues.ts';
import { TallyList } from './tally-list.tsx';
import './now.css';

/** What is read now. For a spotter it is the list of codes to tick. */
export function NowRegion() {
  const { way } = useDesk();
  const reading = useReading();
  const requests = useRequestCues();
  const logging = useLogging();
  const [showsCue, setShowsCue] = useState(false);
  const [open, setOpen] = useState<HappeningButton | null>(null);
  const { hold } = reading;
  // The words of an emergency come before whatever was open when another device begins it.
  useLayoutEffect(() => {
    if (hold.isOn) setOpen(null);
  }, [hold.isOn, hold.begun?.id, hold.situation]);
  const shooter = open && <Shooter reading={reading} logging={logging} open={open} close={() => setOpen(null)} />;
  const isTally = way === 'tally' && !showsCue;
  useKey(way === 'tally' ? 'T' : null, isTally ? 'Show the cue' : 'Show the codes', () => setShowsCue(isTally));
  return (
    <div className="desk-now" data-way={way}>
      {way === 'tally' && (
        <button type="button" className="desk-button desk-now-quiet" onClick={() => setShowsCue(isTally)}>{isTally ? 'Show the cue in full' : 'Show the codes'} <kbd>{keyName('T')}</kbd></button>
      )}
      {isTally && hold.isOn && <HoldWords hold={hold} />}
      {isTally ? (shooter ?? <TallyList reading={reading} logging={logging} />) : <CueCard reading={reading} requests={requests} logging={logging} inFront={shooter} />}
      <p className={logging.isTrouble ? 'desk-now-said desk-now-trouble' : 'desk-now-said'} role={logging.isTrouble ? 'alert' : 'status'}>{logging.said}</p>
      <HappeningButtons reading={reading} open={open} setOpen={setOpen} />
      <MentionQueue reading={reading} logging={logging} />
      <RequestsToRead reading={reading} requests={requests} />
    </div>
  );
}
