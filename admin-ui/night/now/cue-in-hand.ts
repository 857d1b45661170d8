import type { DeskCue } from '../../../server/domain/night/desk/bundle.ts';
import type { NewDeskEntry } from '../../../server/domain/night/desk/desk-entry.ts';
import { readEntry } from '../../../server/domain/night/desk/reading/read-entry.ts';
import type { HowRead } from '../../../server/domain/night/desk/reading/read-entry.ts';
import type { CueStanding } from '../../../server/domain/night/desk/reading/reads-left.ts';
import { windowSeconds } from '../../../server/domain/night/desk/reading/seconds-left.ts';
import type { RequestCue } from './request-cues.ts';
import { countOf, secondsText } from './words.ts';
import type { Reading } from './reading.ts';

/** The cue that is read now: one of the packet, or a request that was approved. */
export interface CueInHand {
  readonly cue: DeskCue;
  readonly standing: CueStanding | null;
  readonly isOpen: boolean;
  /** the entry that logs it */
  readonly entry: (how?: HowRead) => NewDeskEntry;
  readonly isRequest: boolean;
}

function ofRequest({ cue, requestId, isOpen }: RequestCue): CueInHand {
  return {
    cue, standing: null, isOpen, isRequest: true,
    entry: (how = {}) => ({
      kind: 'requestAnswered', reason: how.words ?? how.reason ?? null,
      detail: { requestId, answer: how.outcome === 'notRead' ? 'expired' : 'read' },
    }),
  };
}

export function cueInHand(reading: Reading, requests: readonly RequestCue[], cueKey: string): CueInHand | null {
  const request = requests.find(({ cue }) => cue.cueKey === cueKey);
  if (request) return ofRequest(request);
  const standing = reading.standings.get(cueKey);
  if (!standing) return null;
  return { cue: standing.cue, standing, isOpen: standing.state === 'open', isRequest: false, entry: (how) => readEntry(standing.cue, how) };
}

/** The window of a cue and how its time is used, in words; its time by the clock first, where nothing cuts it off. */
export function windowLine(reading: Reading, { cue, isOpen }: CueInHand): { text: string; isOver: boolean } {
  const window = reading.windows.find((one) => one.gameId === cue.gameId && one.windowKey === cue.windowKey);
  const time = reading.startsTexts.get(cue.cueKey);
  const at = time === undefined ? '' : `${time} · `;
  const own = `about ${secondsText(cue.seconds)}`;
  if (!window) return { text: `${at}At any time · ${own}`, isOver: false };
  const { leftSeconds, afterCueSeconds } = windowSeconds(window, reading.standings.values(), isOpen ? cue.seconds : 0);
  if (leftSeconds === null) return { text: `${at}${own} · ${window.title} · ${countOf(window.readsLeft, 'read')} left here`, isOver: false };
  const isOver = isOpen && afterCueSeconds! < 0;
  return { text: `${at}${isOver ? 'does not fit any more · ' : ''}${own} · ${secondsText(leftSeconds)} left in: ${window.title}`, isOver };
}

