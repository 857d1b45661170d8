import { useEffect } from 'react';
import { standingLines } from '../../../server/domain/night/desk/line-sentence.ts';
import { mentionQueue } from '../../../server/domain/night/desk/reading/mention-queue.ts';
import { waitingCount } from '../../../server/domain/night/desk/waiting-count.ts';
import { isAbout, sentenceOfTally, tallyOfNight } from '../../../server/domain/night/night-tally.ts';
import { useDesk } from '../desk.ts';
import type { Desk } from '../desk.ts';
import { SignOffForm } from './sign-off-form.tsx';
import { useSignOff } from './use-sign-off.ts';
import type { Signed } from './use-sign-off.ts';
import './sign-off-sheet.css';

/** The end of the night at the table: what it came to, and the one tap of an adult that closes it. */
export function SignOffSheet() {
  const desk = useDesk();
  const { bundle, isSignedOff, maySignOff, lookAgain } = desk;
  const { state, send, look } = useSignOff(bundle.nightId, () => lookAgain?.());
  useEffect(() => {
    if (isSignedOff) void look();
    // Asked once; the hour and the name do not change any more.
    // oxlint-disable-next-line react-hooks/exhaustive-deps
  }, [isSignedOff]);
  const signed = state.is === 'signed' ? state.signed : null;
  if (signed || isSignedOff) return <Closed desk={desk} signed={signed} />;
  return (
    <>
      <WhatItCameTo desk={desk} />
      <StillHere desk={desk} />
      {maySignOff
        ? <SignOffForm desk={desk} isSending={state.is === 'sending'} refusal={state.is === 'refused' ? state.sentence : null} onSend={send} />
        : <p className="desk-notice">This device may keep the log but not sign off. An adult signs off on a device of their own, or the office does tomorrow. Nothing is lost meanwhile.</p>}
    </>
  );
}

function Closed({ desk, signed }: { desk: Desk; signed: Signed | null }) {
  const waiting = waitingCount(desk.lines, 0);
  const at = signed && new Intl.DateTimeFormat('en-US', { timeZone: desk.bundle.zone, hour: 'numeric', minute: '2-digit' }).format(new Date(signed.at));
  return (
    <>
      <p className="desk-signed" role="status">
        <strong>{at ? `Signed off at ${at}${signed.byName ? ` by ${signed.byName}` : ''}.` : 'This night is signed off.'}</strong> The office tidies up tomorrow.
      </p>
      <p>{tallySentence(desk)}</p>
      <p className="desk-soft">Nothing more is logged here. Whatever was forgotten goes to the athletic director, who adds it with a reason.</p>
      {waiting > 0 && <p className="desk-notice desk-notice-care">{entries(waiting)} of this device came too late for the sign-off. They are kept: save them as a file under “Where the entries are” and give it to the director.</p>}
    </>
  );
}

function tallySentence({ bundle, lines }: Desk): string {
  return sentenceOfTally(tallyOfNight(plannedCues(bundle), lines));
}

const plannedCues = (bundle: Desk['bundle']) => bundle.cues.filter((cue) => cue.placementId !== null && cue.moment !== 'mention');

function WhatItCameTo({ desk }: { desk: Desk }) {
  const { bundle, lines } = desk;
  const reads = standingLines(lines).filter((line) => line.kind === 'read');
  const unlogged = plannedCues(bundle).filter((cue) => !reads.some((line) => isAbout(line, cue)));
  const held = mentionQueue(bundle, lines);
  return (
    <>
      <p className="desk-tally">{tallySentence(desk)}</p>
      {unlogged.length > 0 && (
        <>
          <p>Nothing is logged for these. Log what happened first, if you know it; otherwise they stay owed.</p>
          <ul className="desk-unlogged">
            {unlogged.map((cue) => <li key={cue.cueKey}>{cue.code} {cue.sponsorName ?? cue.title}, {cue.startsText ?? cue.title}</li>)}
          </ul>
        </>
      )}
      {held.length > 0 && <p>{held.length === 1 ? '1 mention was held and never read.' : `${held.length} mentions were held and never read.`} What happened stays in the log.</p>}
    </>
  );
}

const entries = (count: number): string => (count === 1 ? '1 entry' : `${count} entries`);

/** What keeps the sign-off waiting, or what an adult should know before. */
function StillHere({ desk: { lines, unstoredCount } }: { desk: Desk }) {
  const waiting = waitingCount(lines, 0);
  const held = lines.filter((line) => line.place === 'needsAttention').length;
  const others = new Set(lines.filter((line) => !line.isOwn).map((line) => line.deviceId)).size;
  return (
    <>
      {unstoredCount > 0 && (
        <p className="desk-notice desk-notice-bad">
          <strong>{entries(unstoredCount)} {unstoredCount === 1 ? 'is' : 'are'} not stored yet and would be lost.</strong> Close this sheet and choose “Try again” in the red line first.
        </p>
      )}
      {waiting > 0 && (
        <p className="desk-notice desk-notice-care">
          <strong>{entries(waiting)} {waiting === 1 ? 'is' : 'are'} still on this device.</strong> Sign-off needs the server, and everything logged here goes first; this page sends it by itself as soon as the
          server answers. Without a network here, leave the page as it is and take the device where there is one, or let the office sign off tomorrow. Nothing is lost, and nothing is counted before.
        </p>
      )}
      {held > 0 && <p className="desk-notice desk-notice-care">{entries(held)} of this device {held === 1 ? 'was' : 'were'} not taken and will not be in the count. See “Where the entries are”; the director can add them afterwards.</p>}
      {others > 0 && <p className="desk-notice">{others === 1 ? 'Another device' : `${others} other devices`} logged this night too. Look there that nothing waits: what comes after sign-off goes to the director.</p>}
    </>
  );
}
