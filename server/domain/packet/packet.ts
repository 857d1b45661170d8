import type { Language, PacketWindow, PersonForPacket, NextGameForPacket } from './night-for-packet.ts';
import type { Moment } from './script.ts';
import type { Segment } from './segment.ts';
import type { ReadinessLine } from './readiness.ts';

export interface LineUpRow {
  readonly playerId: string;
  readonly number: string;
  /** Null when the family chose that the name is not used. */
  readonly name: string | null;
  readonly sayAs: string | null;
  readonly position: string | null;
  readonly grade: string | null;
  readonly isStarter: boolean;
  /** What stands in the name's place: "number only", "a member of the team", "do not announce". */
  readonly instead: string | null;
}

export interface TeamSheet {
  readonly teamId: string;
  readonly side: 'visitors' | 'home';
  readonly schoolName: string;
  readonly shortName: string;
  readonly nickname: string;
  readonly sayAs: string | null;
  readonly headCoach: string | null;
  readonly headCoachSayAs: string | null;
  /** `#RRGGBB`; on paper they become tints that differ from the other team's. */
  readonly firstColour: string;
  readonly secondColour: string;
  readonly rows: readonly LineUpRow[];
}

/** The same message in a second language: one reading with the first. */
export interface SecondText {
  readonly language: Language;
  readonly segments: readonly Segment[];
  readonly seconds: number;
}

export interface Cue {
  /** What the desk logs it by and the card prints beside the box: `P2`, `T1`, `H3`, `M1`; with several games `2-H3`. */
  readonly code: string;
  /** Clock-back time, "6:38 PM"; null where nothing ties the cue to the clock. */
  readonly startsText: string | null;
  /** Who must be where before it: "Color guard and singer at the west doors". */
  readonly whoText: string | null;
  readonly second: SecondText | null;
  /** The number printed beside the cue, 1, 2, 3 … in order. */
  readonly number: number;
  readonly cueKey: string;
  readonly gameId: string | null;
  readonly moment: Moment | 'sponsorRead' | 'mention';
  /** Null for what is not bound to a window, such as an emergency. */
  readonly window: PacketWindow | null;
  /** Which of a game's windows: `timeOut2`; null for what is not bound to one. */
  readonly windowKey: string | null;
  readonly title: string;
  readonly language: Language;
  readonly segments: readonly Segment[];
  readonly seconds: number;
  readonly isSponsored: boolean;
  readonly placementId: string | null;
  readonly commitmentId: string | null;
  readonly sponsorName: string | null;
  readonly sponsorSayAs: string | null;
  readonly copyVersion: number | null;
  readonly usesFallback: boolean;
  readonly lineUp: TeamSheet | null;
  /** The first segment that names a starter; before it stands the opening of the script. */
  readonly lineUpStartsAt: number;
  /** Printed above the cue where a rule or a counsel may see it differently. */
  readonly caution: string | null;
  readonly ownPage: boolean;
}

export interface GameSheet {
  readonly gameId: string;
  readonly title: string;
  readonly level: string;
  readonly startsText: string;
  readonly visitors: TeamSheet;
  readonly home: TeamSheet;
  /** Headings of the score; none on a sheet of bouts. */
  readonly periods: readonly string[];
  /** Null where the sheet has no column for extra play. */
  readonly overtime: string | null;
  /** Headings after the periods: the final score, or runs, hits and errors. */
  readonly totals: readonly string[];
  /** Printed under the score: what a set is played to, when a game may end. */
  readonly notes: readonly string[];
  /** Weight classes in the order of a dual meet; none in another sport. */
  readonly bouts: readonly string[];
  /** What is worth how many points, for the table. */
  readonly scoring: readonly { readonly what: string; readonly points: string }[];
  readonly fullTimeouts: number;
  readonly shortTimeouts: number;
  /** Boxes to tick by stretch of the game: the game, each half, each set, each overtime. */
  readonly timeOuts: readonly { readonly title: string; readonly full: number; readonly short: number }[];
  readonly playerFouls: number;
  readonly teamFouls: number;
  readonly bonusFrom: number | null;
  /** From this team foul on, what a common foul earns: "1+1", "2". */
  readonly bonusMarks: readonly { readonly fromFoul: number; readonly mark: string }[];
  /** The stretches team fouls are counted in; overtime goes on with the last. */
  readonly foulPeriods: readonly string[];
  /** Calls of play with blanks, in the order they come up. */
  readonly calls: readonly { readonly when: string; readonly say: string }[];
  readonly countsNote: string;
  readonly countsAreRead: boolean;
}

/** One window of a game with what is read in it. */
export interface WindowLoad {
  readonly gameId: string;
  /** As windows of a game are named: `pregame`, `timeOut2`. */
  readonly windowKey: string;
  readonly title: string;
  /** Seconds there are to speak in; null where nothing limits them. */
  readonly capacitySeconds: number | null;
  readonly filledSeconds: number;
  /** Zero where all of it fits. */
  readonly overSeconds: number;
  /** The cue to move first where it does not fit. */
  readonly moveCueNumber: number | null;
  /** A window that may not happen, such as a time-out or a fifth set. */
  readonly mayNotHappen: boolean;
  /** The department counts on it all the same. */
  readonly isReliedOn: boolean;
  readonly cueNumbers: readonly number[];
}

/** One line of the run of show. */
export interface RunRow {
  readonly number: number;
  readonly code: string;
  readonly startsText: string | null;
  readonly windowTitle: string;
  readonly gameId: string | null;
  readonly title: string;
  readonly sponsorName: string | null;
  readonly whoText: string | null;
  readonly seconds: number;
  readonly isSponsored: boolean;
}

export interface CardRow {
  readonly code: string;
  readonly number: number;
  readonly cueKey: string;
  readonly title: string;
  readonly sponsorName: string | null;
  readonly sponsorSayAs: string | null;
  readonly seconds: number;
  readonly isSponsored: boolean;
  /** More than one box where a read may come up several times. */
  readonly boxes: number;
}

export interface CardSection {
  readonly title: string;
  readonly rows: readonly CardRow[];
}

export interface Packet {
  readonly nightId: string;
  readonly departmentName: string;
  readonly title: string;
  readonly dayText: string;
  readonly venueText: string;
  readonly cues: readonly Cue[];
  readonly games: readonly GameSheet[];
  readonly card: readonly CardSection[];
  readonly runOfShow: readonly RunRow[];
  readonly windows: readonly WindowLoad[];
  /** Codes of the sponsor reads for "the next time-out", in the order of their priority. */
  readonly nextTimeOut: readonly string[];
  readonly paper: 'letter' | 'a4';
  readonly people: readonly PersonForPacket[];
  readonly emergency: { readonly exitsText: string | null; readonly defibrillatorPlace: string | null };
  readonly nextGame: NextGameForPacket | null;
  readonly nextHomeGame: NextGameForPacket | null;
  readonly sponsoredSeconds: number;
  readonly readiness: readonly ReadinessLine[];
}
