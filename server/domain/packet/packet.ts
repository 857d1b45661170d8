import type { Language, PacketWindow, PersonForPacket, NextGameForPacket } from './night-for-packet.ts';
import type { Moment } from './script.ts';
import type { Segment } from './segment.ts';
import type { TeamMark } from './tints.ts';
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
  readonly mark: TeamMark;
  readonly rows: readonly LineUpRow[];
}

export interface Cue {
  /** The number printed beside the cue, 1, 2, 3 … in order. */
  readonly number: number;
  readonly cueKey: string;
  readonly gameId: string | null;
  readonly moment: Moment | 'sponsorRead' | 'mention';
  /** Null for what is not bound to a window, such as an emergency. */
  readonly window: PacketWindow | null;
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
  readonly periods: readonly string[];
  readonly overtime: string;
  readonly fullTimeouts: number;
  readonly shortTimeouts: number;
  readonly playerFouls: number;
  readonly teamFouls: number;
  readonly bonusFrom: number | null;
  readonly foulPeriods: readonly string[];
  /** Calls of play with blanks, in the order they come up. */
  readonly calls: readonly { readonly when: string; readonly say: string }[];
  readonly countsNote: string;
  readonly countsAreRead: boolean;
}

export interface CardRow {
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
  readonly people: readonly PersonForPacket[];
  readonly emergency: { readonly exitsText: string | null; readonly defibrillatorPlace: string | null };
  readonly nextGame: NextGameForPacket | null;
  readonly nextHomeGame: NextGameForPacket | null;
  readonly sponsoredSeconds: number;
  readonly readiness: readonly ReadinessLine[];
}
