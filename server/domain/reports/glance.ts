import type { Day } from '../day.ts';
import { addDays } from '../day.ts';
import { addressOf } from '../packet/readiness-line.ts';
import type { ReadinessLine } from '../packet/readiness.ts';

/** What a night has to have, in the order in which it is prepared. */
export const GLANCE_ROWS = ['rosters', 'names', 'people', 'reads', 'copy', 'packet', 'signOff', 'attendance'] as const;
export type GlanceRow = (typeof GLANCE_ROWS)[number];

/**
 * How a thing stands: `done`; `mend`, it has to be seen to now; `look`, worth a look now; `ahead`, still to do and not
 * pressing; `none`, there is nothing to do for it.
 */
export type GlanceState = 'done' | 'mend' | 'look' | 'ahead' | 'none';

export interface GlanceCell {
  readonly state: GlanceState;
  /** two or three words */
  readonly words: string;
  /** whole sentences, the worst first */
  readonly sentences: readonly string[];
  /** the page where it is mended; null where nothing is to be done */
  readonly to: string | null;
}

/** So many days before a night what is missing begins to press. @source common practice, no source */
export const PRESSES_DAYS_BEFORE = 14;

/** What a look at one night goes by. */
export interface GlanceNight {
  readonly nightId: string;
  readonly heldOn: Day;
  readonly isSignedOff: boolean;
  readonly attendance: number | null;
  readonly lines: readonly ReadinessLine[];
  readonly placed: number;
  readonly mentions: number;
  /** reads promised by the game or the night that have no place */
  readonly unplaced: number;
  readonly packetIssued: number | null;
  readonly packetBecause: 'change' | 'choice' | null;
}

const ROW_OF: Readonly<Record<string, GlanceRow>> = {
  'no-opponent': 'rosters', 'no-roster': 'rosters', 'number-clash': 'rosters', 'no-starters': 'rosters', 'line-up-uneven': 'rosters', 'no-head-coach': 'rosters', 'number-illegal': 'rosters',
  'nobody-announcing': 'people', 'no-spotter': 'people',
  'no-copy': 'copy', 'copy-not-approved': 'copy', 'copy-changed': 'copy', 'food-in-school-day': 'copy',
  'contract-not-signed': 'reads', 'category-blocked': 'reads', 'competitors-in-window': 'reads', 'exclusive-held-twice': 'reads', 'window-not-ours': 'reads', 'no-sponsor-reads': 'reads',
  'no-emergency-text': 'packet', 'no-game': 'packet', 'game-moved': 'packet', 'no-next-game': 'packet', 'halftime-too-long': 'packet', 'halftime-long': 'packet', 'no-defibrillator-place': 'packet',
};

const SHORT: Readonly<Record<string, string>> = {
  'no-opponent': 'No opponent', 'no-roster': 'No roster', 'number-clash': 'Number twice', 'no-starters': 'No starters', 'line-up-uneven': 'Starters uneven', 'no-head-coach': 'No coach named', 'number-illegal': 'Odd numbers',
  'name-without-say-as': 'How is it said?', 'nobody-announcing': 'No announcer', 'no-spotter': 'No spotter',
  'no-copy': 'No words', 'copy-not-approved': 'Not approved', 'copy-changed': 'New words wait', 'food-in-school-day': 'School day',
  'contract-not-signed': 'Not signed', 'category-blocked': 'Blocked', 'competitors-in-window': 'Rivals together', 'exclusive-held-twice': 'Held twice', 'window-not-ours': 'Not our window',
};

const rowOf = (line: ReadinessLine): GlanceRow | null => ROW_OF[line.code] ?? (line.code.startsWith('name-') ? 'names' : line.code.startsWith('number-') ? 'rosters' : null);

const NOTHING: GlanceCell = { state: 'none', words: '–', sentences: [], to: null };
const done = (words: string): GlanceCell => ({ state: 'done', words, sentences: [], to: null });

function fromLines(lines: readonly ReadinessLine[], presses: boolean, whenDone: GlanceCell): GlanceCell {
  const worst = lines.find(({ grade }) => grade === 'mustFix') ?? lines[0];
  if (worst === undefined) return whenDone;
  const more = new Set(lines.map(({ sentence }) => sentence)).size - 1;
  const short = SHORT[worst.code] ?? 'See what is odd';
  const inOrder = [...lines.filter(({ grade }) => grade === 'mustFix'), ...lines.filter(({ grade }) => grade !== 'mustFix')];
  return {
    state: !presses ? 'ahead' : worst.grade === 'mustFix' ? 'mend' : 'look',
    words: more > 0 ? `${short}, ${more} more` : short,
    sentences: [...new Set(inOrder.map(({ sentence }) => sentence))],
    to: addressOf(worst),
  };
}

function readsCell(night: GlanceNight, lines: readonly ReadinessLine[], presses: boolean): GlanceCell {
  const to = `/nights/${night.nightId}/show?tab=placements`;
  if (lines.length > 0) return fromLines(lines, presses, NOTHING);
  if (night.unplaced > 0) {
    return { state: presses ? 'mend' : 'ahead', words: `${night.unplaced} without a place`, sentences: [`${night.unplaced} ${night.unplaced === 1 ? 'read' : 'reads'} promised for this night ${night.unplaced === 1 ? 'has' : 'have'} no place yet.`], to };
  }
  if (night.placed > 0) return done(`${night.placed} placed`);
  if (night.mentions > 0) return done('Mentions only');
  return { state: presses ? 'look' : 'ahead', words: 'None placed', sentences: ['No sponsor read is planned for this night.'], to };
}

function packetCell(night: GlanceNight, lines: readonly ReadinessLine[], presses: boolean): GlanceCell {
  const to = `/nights/${night.nightId}/show?tab=packet`;
  const { packetIssued: number, packetBecause: because } = night;
  if (number !== null && because === 'choice') return { state: 'mend', words: 'Issue again', sentences: [`Packet ${number} names a student whose family has chosen otherwise since. Issue it again and swap the pages.`], to };
  if (number !== null && because === 'change') return { state: 'mend', words: 'Out of date', sentences: [`Packet ${number} is out of date: something changed after it was issued.`], to };
  if (number !== null) return done(`Packet ${number}`);
  if (!presses) return { state: 'ahead', words: 'Not issued', sentences: [], to };
  const missing = lines.filter(({ grade }) => grade === 'mustFix').map(({ sentence }) => sentence);
  return { state: missing.length > 0 ? 'mend' : 'look', words: 'Not issued', sentences: ['The packet is not issued yet.', ...missing], to };
}

/** One night at a glance on a day: what stands, what has to be seen to, and where. Of a night that is signed off only what can still be missing. */
export function glanceOf(night: GlanceNight, today: Day): Record<GlanceRow, GlanceCell> {
  const { nightId, heldOn, isSignedOff, attendance, lines } = night;
  const isOver = heldOn < today;
  const presses = !isOver && heldOn <= addDays(today, PRESSES_DAYS_BEFORE);
  const tidy = `/nights/${nightId}/show?tab=tidy`;
  const issued = night.packetIssued === null ? NOTHING : done(`Packet ${night.packetIssued}`);
  const signOff: GlanceCell = isSignedOff ? done('Signed off') : isOver ? { state: 'mend', words: 'Not signed off', sentences: ['The night is over and nobody has signed it off: its reads do not count yet.'], to: tidy } : NOTHING;
  const came: GlanceCell = !isSignedOff ? NOTHING : attendance === null ? { state: 'look', words: 'Not recorded', sentences: ['Nobody has recorded how many came.'], to: tidy } : done(String(attendance));
  if (isOver || isSignedOff) return { rosters: NOTHING, names: NOTHING, people: NOTHING, reads: NOTHING, copy: NOTHING, packet: issued, signOff, attendance: came };
  const of = (row: GlanceRow) => lines.filter((line) => rowOf(line) === row);
  return {
    rosters: fromLines(of('rosters'), presses, done('All in')),
    names: fromLines(of('names'), presses, done('All can be said')),
    people: fromLines(of('people'), presses, done('Named')),
    reads: readsCell(night, of('reads'), presses),
    copy: fromLines(of('copy'), presses, night.placed + night.mentions === 0 ? NOTHING : done('Approved')),
    packet: packetCell(night, of('packet'), presses),
    signOff,
    attendance: came,
  };
}
