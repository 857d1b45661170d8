import type { NotReadReason } from '../../../server/domain/night/log-entry.ts';
import { reasonInWords } from '../../../server/domain/night/reason-words.ts';
import type { CueStanding } from '../../../server/domain/night/desk/reading/reads-left.ts';
import type { HoldSituation, NightBundle } from '../../../server/domain/night/desk/bundle.ts';

export const REASON_WORDS: Readonly<Record<NotReadReason, string>> = {
  noTime: 'No time', playResumed: 'Play resumed', injury: 'Injury', emergency: 'Emergency', equipment: 'Equipment failed',
  copyMissing: 'No words to read', heldByDirector: 'Held by the director', gameEnded: 'The game ended', forgotten: 'Forgotten', other: 'Another reason',
};

export const SITUATION_WORDS: Readonly<Record<HoldSituation, string>> = {
  injury: 'Injury', medical: 'A doctor is needed', weather: 'Weather', evacuation: 'Evacuation', threat: 'Threat', delay: 'Delay', silence: 'Silence',
};

/** "1 read", "3 reads" */
export const countOf = (count: number, one: string, several = `${one}s`): string => `${count} ${count === 1 ? one : several}`;

/** "45 s", "7:30 min", "10 min" */
export function secondsText(seconds: number): string {
  const whole = Math.max(0, Math.round(seconds));
  if (whole < 100) return `${whole} s`;
  const rest = whole % 60;
  return `${Math.floor(whole / 60)}${rest === 0 ? '' : `:${String(rest).padStart(2, '0')}`} min`;
}

export const capital = (text: string): string => text.replace(/^./, (first) => first.toUpperCase());

/** A moment on the wall of the venue, by the device's clock. */
export function wallClock(occurredAt: string, zone: string): string {
  return new Intl.DateTimeFormat('en-US', { hour: 'numeric', minute: '2-digit', timeZone: zone }).format(new Date(occurredAt));
}

/** Where a cue stands, in a few words; empty while it is open. */
export function standingText(standing: CueStanding, bundle: NightBundle): string {
  const { line, state, isDoubled, movedTo, cue } = standing;
  if (line === null) return '';
  const window = movedTo === null ? null : bundle.windows.find((one) => one.gameId === cue.gameId && one.windowKey === movedTo);
  const why = line.reason === null ? '' : `: ${reasonInWords(line.reason, line.detail)}`;
  if (state === 'cutShort') return `Cut short${why}`;
  if (state === 'notRead') return `Not read${why}`;
  const from = line.detail?.['fromPaper'] === true ? ', from paper' : '';
  return `Read${window ? ` in: ${window.title.toLowerCase()}` : ''}${from}${isDoubled ? '. Logged twice, counted once' : ''}`;
}
