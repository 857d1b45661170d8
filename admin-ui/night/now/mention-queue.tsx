import { useLayoutEffect, useState } from 'react';
import { mentionToGive } from '../../../server/domain/night/desk/reading/mention-queue.ts';
import { mentionEntry } from '../../../server/domain/night/desk/reading/read-entry.ts';
import type { MentionAtHand, QueuedMention } from '../../../server/domain/night/desk/reading/mention-queue.ts';
import { keyName, useKey } from '../keys.ts';
import { Segments } from './cue-words.tsx';
import type { Logging } from './logging.ts';
import type { Reading } from './reading.ts';
import { countOf } from './words.ts';

const WHEN = { atOnce: 'Call it now', deadBall: 'At the next dead ball, four seconds or less', held: 'Held for the next time-out or break' } as const;

function shootersText({ shooters }: QueuedMention): string {
  const numbers = shooters.flatMap(({ playerNumber }) => (playerNumber === null ? [] : [playerNumber]));
  const count = shooters.length > 1 ? `${countOf(shooters.length, 'time')} · ` : '';
  return `${count}${numbers.length === 0 ? 'no number' : `number ${numbers.join(', ')}`}`;
}

/** The mentions that are owed, the one at hand with its words and its own large button. */
export function MentionQueue({ reading, logging }: { reading: Reading; logging: Logging }) {
  const { queue, mayReadSponsors, bundle } = reading;
  const [atHand, setAtHand] = useState<MentionAtHand | null>(null);
  const first = mentionToGive(queue, atHand);
  const others = queue.filter((one) => one !== first);
  const cueKey = first?.mention.cueKey;
  const happeningEntryId = first?.happeningEntryIds[0];
  useLayoutEffect(() => {
    setAtHand(cueKey === undefined || happeningEntryId === undefined ? null : { cueKey, happeningEntryId });
  }, [cueKey, happeningEntryId]);
  const give = (one: QueuedMention): void => {
    if (mayReadSponsors) void logging.log('mention', `Mention of ${one.mention.sponsorName} given.`, mentionEntry(one));
  };
  const leave = (one: QueuedMention, reason: 'noTime' | 'gameEnded'): void =>
    void logging.log('mention', `Mention of ${one.mention.sponsorName} not read.`, mentionEntry(one, { outcome: 'notRead', reason }));
  const canGive = first !== null && mayReadSponsors;
  useKey(canGive ? 'm' : null, 'Mention given', () => first && give(first));
  if (bundle.mentions.length === 0) return null;
  return (
    <section className="desk-now-queue" aria-label="Mentions that are owed">
      <h3>Mentions owed: {queue.length}</h3>
      <div className="desk-now-mention">
        {first ? (
          <>
            <p className="desk-now-when">{mayReadSponsors ? WHEN[first.moment] : 'A hold is on, or has just ended: no sponsor’s words now'} · {first.mention.sponsorName} · {shootersText(first)}</p>
            <Segments segments={first.mention.segments.filter(({ kind }) => kind === 'spoken')} />
          </>
        ) : (
          <p className="desk-now-direction">None. They queue here when it happens.</p>
        )}
      </div>
      <div className="desk-now-row">
        <button type="button" className="desk-button desk-now-give" disabled={!canGive} onClick={() => first && give(first)}>Mention given <kbd>{keyName('m')}</kbd></button>
        <button type="button" className="desk-button" disabled={!first} onClick={() => first && leave(first, 'noTime')}>No time</button>
        <button type="button" className="desk-button" disabled={!first} onClick={() => first && leave(first, 'gameEnded')}>The game ended</button>
      </div>
      <p className="desk-now-others">{others.length > 0 && `Then: ${others.map((one) => `${one.mention.sponsorName}, ${shootersText(one)}`).join('; ')}`}</p>
    </section>
  );
}
