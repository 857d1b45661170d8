import type { NightForPacket } from './night-for-packet.ts';
import type { Cue, Packet, WindowLoad } from './packet.ts';
import { linesOfNames } from './readiness-of-names.ts';
import { linesOfNight } from './readiness-of-night.ts';
import { linesOfReads } from './readiness-of-reads.ts';
import { linesOfTeams } from './readiness-of-teams.ts';
import { linesOfWindows } from './readiness-of-windows.ts';
import { linesOfWords } from './readiness-of-words.ts';

/** One line of "before you print": what is missing, and which record mends it. */
export interface ReadinessLine {
  readonly code: string;
  readonly grade: 'mustFix' | 'worthKnowing';
  readonly sentence: string;
  /** The kind of record to open, by its name in the address: `teams`, `contracts`, `nights`, `venues`, `scripts`. */
  readonly resource: string;
  /** Null where a record is still to be made: the list is opened. */
  readonly id: string | null;
  /** The part of the record's page, `people`; `edit` for its form. */
  readonly tab: string | null;
  readonly gameId: string | null;
}

/** A text of the night in which something is not as it has to be, and the script it comes from. */
export interface TextAtFault {
  readonly title: string;
  readonly reason: string;
  readonly scriptId: string | null;
}

/** A text that named a student who is not to be named; `cue` is null for the list of people and the night's own words. */
export interface TextRedacted {
  readonly cue: Cue | null;
  readonly text: string;
  readonly scriptId: string | null;
}

/** What a look at the night before printing goes by. */
export interface Looked {
  readonly night: NightForPacket;
  readonly cues: readonly Cue[];
  readonly windows: readonly WindowLoad[];
  /** scripts that could not be filled in, each with the reason */
  readonly broken: readonly TextAtFault[];
  /** scripts in which a variable stands for nothing tonight, each with its name */
  readonly empty: readonly TextAtFault[];
  readonly redacted: readonly TextRedacted[];
  /** the words of a name that cannot be looked up */
  readonly wordsNotKnown: (name: string) => readonly string[];
}

/** What is missing before a packet is printed: what must be fixed first, then what is worth knowing. */
export function findGaps(looked: Looked): ReadinessLine[] {
  const lines = [
    ...linesOfNight(looked), ...linesOfTeams(looked), ...linesOfNames(looked), ...linesOfReads(looked), ...linesOfWindows(looked), ...linesOfWords(looked),
  ];
  // One sponsor with three reads, or one script in three games, needs one line, not three.
  const once = lines.filter((line, place) => lines.findIndex((other) => other.code === line.code && other.sentence === line.sentence) === place);
  return once.sort((one, other) => (one.grade === other.grade ? 0 : one.grade === 'mustFix' ? -1 : 1));
}

export function isReady(packet: Packet): boolean {
  return packet.readiness.every((entry) => entry.grade !== 'mustFix');
}
