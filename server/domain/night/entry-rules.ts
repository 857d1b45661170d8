import { isClock } from '../season/night.ts';
import { HOLD_SITUATIONS } from './desk/bundle.ts';
import { REQUEST_KINDS } from './desk/requests/request.ts';
import type { EntryKind, LogEntry } from './log-entry.ts';

export const HOLD_ENTRY_STATES = ['begun', 'flash', 'ended'] as const;
export const REQUEST_ENTRY_ANSWERS = ['approved', 'declined', 'read', 'expired'] as const;

export type KindRefusal =
  | 'happening-unnamed'
  | 'foul-without-team'
  | 'play-without-team'
  | 'book-without-answer'
  | 'hold-without-state'
  | 'moved-without-time'
  | 'worn-without-player'
  | 'request-without-kind'
  | 'answer-without-request'
  | 'taking-back-nothing';

export type EntryOfKind = Pick<LogEntry, 'kind' | 'teamId' | 'playerNumber' | 'detail' | 'takesBackEntryId'>;

type Rule = (entry: EntryOfKind) => KindRefusal | null;

const textIn = ({ detail }: EntryOfKind, field: string): string => {
  const value = detail?.[field];
  return typeof value === 'string' ? value.trim() : '';
};

const oneOf = (list: readonly string[], text: string): boolean => list.includes(text);
const unless = (holds: boolean, refusal: KindRefusal): KindRefusal | null => (holds ? null : refusal);
const ofATeam: Rule = ({ teamId }) => unless(teamId !== null, 'play-without-team');

function movesTime(entry: EntryOfKind): boolean {
  const what = textIn(entry, 'what');
  const seconds = entry.detail?.['seconds'];
  const lasts = Number.isInteger(seconds) && Number(seconds) > 0 && Number(seconds) <= 3600;
  return (what === 'start' && isClock(entry.detail?.['clock'])) || (what === 'halftime' && (lasts || isClock(entry.detail?.['clock'])));
}

function holds(entry: EntryOfKind): boolean {
  const state = textIn(entry, 'state');
  return oneOf(HOLD_ENTRY_STATES, state) && (state !== 'begun' || oneOf(HOLD_SITUATIONS, textIn(entry, 'situation')));
}

/** What an entry of its kind has to say. A kind that is not named here says enough by itself. */
export const ENTRY_RULES: Readonly<Partial<Record<EntryKind, Rule>>> = {
  happening: (entry) => unless(textIn(entry, 'happening') !== '', 'happening-unnamed'),
  foul: ({ teamId }) => unless(teamId !== null, 'foul-without-team'),
  score: ofATeam,
  serve: ofATeam,
  batter: ofATeam,
  book: ({ detail }) => unless(typeof detail?.['agrees'] === 'boolean', 'book-without-answer'),
  hold: (entry) => unless(holds(entry), 'hold-without-state'),
  timeMoved: (entry) => unless(movesTime(entry), 'moved-without-time'),
  worn: (entry) => unless(entry.teamId !== null && (entry.playerNumber ?? '') !== '' && (textIn(entry, 'name') !== '' || textIn(entry, 'wornInstead') !== '' || entry.detail?.['isNotListed'] === true), 'worn-without-player'),
  request: (entry) => unless(oneOf(REQUEST_KINDS, textIn(entry, 'requestKind')), 'request-without-kind'),
  requestAnswered: (entry) => unless(textIn(entry, 'requestId') !== '' && oneOf(REQUEST_ENTRY_ANSWERS, textIn(entry, 'answer')), 'answer-without-request'),
  takenBack: ({ takesBackEntryId }) => unless(takesBackEntryId !== null, 'taking-back-nothing'),
};
