import { DEFAULT_WORDS_PER_MINUTE } from './voice.ts';
import type { Day } from '../day.ts';
import type { GameOwners } from '../season/sport-profile.ts';

/** Where in a game a sponsor read may be voiced. */
export type PacketWindow = 'pregame' | 'betweenPeriods' | 'timeout' | 'halftime' | 'postgame' | 'deadBall';

/** What the family chose: the name, only the number, "a member of the team", or nothing at all. */
export type Announce = 'name' | 'numberOnly' | 'aMember' | 'silence';

export type Language = 'en' | 'es';

export interface PlayerForPacket {
  readonly playerId: string;
  /** Text, because `0` and `00` are two numbers. */
  readonly number: string;
  readonly name: string;
  readonly sayAs: string | null;
  readonly position: string | null;
  readonly grade: string | null;
  readonly isStarter: boolean;
  readonly announce: Announce;
}

export interface TeamForPacket {
  readonly teamId: string;
  readonly schoolName: string;
  readonly shortName: string;
  readonly nickname: string;
  /** How to say the school. */
  readonly sayAs: string | null;
  /** `#RRGGBB` */
  readonly firstColour: string;
  readonly secondColour: string;
  readonly headCoach: string | null;
  readonly headCoachSayAs: string | null;
  readonly roster: readonly PlayerForPacket[];
}

/** What the office knows of a sponsored read; the look before printing asks for it, the paper does not show it. */
export interface SponsorFacts {
  readonly sponsorId: string;
  readonly contractId: string;
  /** the copy these words were chosen from; null while there is none */
  readonly copyId: string | null;
  /** a version newer than the words that are read, waiting for its approval */
  readonly waitingVersion: number | null;
  readonly categoryId: string;
  readonly categoryName: string;
  readonly isBlocked: boolean;
  readonly isFood: boolean;
  /** who approved that a blocked category is sold to all the same; null where nobody did */
  readonly exceptionApprovedBy: string | null;
  readonly readKindId: string;
  readonly sponsorsPerGame: number;
  readonly isSigned: boolean;
}

export interface WordsForPacket {
  readonly facts?: SponsorFacts;
  readonly sponsorName: string;
  readonly sponsorSayAs: string | null;
  readonly readKind: string;
  /** The words to be read; null while nobody has written any. */
  readonly copyText: string | null;
  readonly copyVersion: number | null;
  readonly copyLanguage?: Language;
  /** The same message in a second language; both together are one read. */
  readonly copySecondLanguage?: Language | null;
  readonly copySecondText?: string | null;
  readonly isApproved: boolean;
  /** Read instead when the words are missing or not approved. */
  readonly fallbackText: string | null;
  readonly seconds: number;
  /** From `placementCueKey` or `mentionCueKey`: the log counts reads by it. */
  readonly cueKey: string;
}

export interface PlacementForPacket extends WordsForPacket {
  readonly placementId: string;
  readonly window: PacketWindow;
  /** As windows of a game are named: `pregame`, `timeOut2`. */
  readonly windowKey: string;
  /** Among the reads of one window. */
  readonly place: number;
  /** 1 stays to the last when something has to move, 3 moves first. */
  readonly priority?: number;
  /** A thing that is handed over before the crowd ("game ball"); absent for a plain read. */
  readonly presents?: string | null;
}

/** A read that is owed only when something happens on the floor. */
export interface MentionForPacket extends WordsForPacket {
  readonly commitmentId: string;
  /** What has to happen, in words: "bank shot". */
  readonly occurrence: string;
  readonly whose: 'ours' | 'both';
  /** One mention after several of them counts once; otherwise once for each. */
  readonly severalCountAsOne?: boolean;
}

export interface NextGameForPacket {
  readonly opponentName: string;
  readonly isHome: boolean;
  readonly level: string;
  /** Already in words for reading: "Tuesday, December 8". */
  readonly dayText: string;
  readonly clockText: string;
  readonly placeName: string;
}

export interface GameForPacket {
  readonly gameId: string;
  readonly sport: string;
  /** "varsity", "junior varsity" … as it is read aloud. */
  readonly level: string;
  /** Local wall clock in words: "7:00 PM", or "20 minutes after the game before". */
  readonly startsText: string;
  /** `HH:MM` where the start is known by the clock; null where it floats behind another game. */
  readonly startsClock?: string | null;
  /** Minutes after the end of the game it follows; null for a start by the clock. */
  readonly startsAfterMinutes?: number | null;
  /** How long such a game usually takes; the table reckons with it, the paper does not. */
  readonly usualMinutes?: number;
  /** The teams of the department's own schools; the home team where nothing is said. */
  readonly ourTeamIds?: readonly string[];
  /** Whose windows they are; ours where nothing is said. */
  readonly owners?: GameOwners;
  /** The day, the hour or the place changed after the packet was issued. */
  readonly movedSinceIssue?: boolean;
  readonly home: TeamForPacket;
  readonly visitors: TeamForPacket;
  readonly placements: readonly PlacementForPacket[];
  readonly mentions: readonly MentionForPacket[];
}

export interface PersonForPacket {
  readonly role: string;
  readonly name: string;
  readonly sayAs: string | null;
  readonly arrivesText: string | null;
  /** Where they wait and what they do, as the office wrote it. */
  readonly note?: string | null;
}

export interface VenueForPacket {
  readonly venueId?: string;
  readonly name: string;
  readonly sayAs: string | null;
  readonly floorName: string | null;
  readonly exitsText: string | null;
  readonly defibrillatorPlace: string | null;
  readonly evacuationText: string | null;
  readonly weatherText: string | null;
  readonly injuryText: string | null;
  /** The district's own wording; printed as it is, never changed here. */
  readonly threatText: string | null;
}

export interface PacketSettings {
  readonly prayer: boolean;
  readonly foulCountsRead: boolean;
  readonly bankShotMention: 'nextWindow' | 'deadBall' | 'atOnce';
  /** Sung or played. */
  readonly anthem: 'sung' | 'played';
  readonly flag: 'colourGuard' | 'inPlace';
  readonly officialsIntroduced: boolean;
  readonly paper: 'letter' | 'a4';
  /** Seconds of halftime tonight; null for what the sport's profile says. */
  readonly halftimeSeconds: number | null;
  /** Time-outs the department relies on for reads; null for what the sport's profile says. */
  readonly timeOutsReliedOn: number | null;
  readonly wordsPerMinute: number;
  /** Two letters, or null where only the country's rules matter. */
  readonly state?: string | null;
  /** `HH:MM`: the end of the official school day. */
  readonly schoolDayEndsAt?: string;
}

/** Off for a public school, counts for the table only, mentions held: the published guidance. */
export const DEFAULT_PACKET_SETTINGS: PacketSettings = {
  prayer: false,
  foulCountsRead: false,
  bankShotMention: 'nextWindow',
  anthem: 'played',
  flag: 'inPlace',
  officialsIntroduced: false,
  paper: 'letter',
  halftimeSeconds: null,
  timeOutsReliedOn: null,
  wordsPerMinute: DEFAULT_WORDS_PER_MINUTE,
};

/** A student honoured on a night, as far as the family allows. */
export interface HonouredStudent {
  readonly playerId: string;
  readonly name: string;
  readonly sayAs: string | null;
  readonly announce: Announce;
  readonly escorts: string | null;
  readonly line: string | null;
}

/** Seniors or honours: read one student after the other, so many seconds each. */
export interface HonoursForPacket {
  readonly honoursListId: string;
  readonly title: string;
  readonly kind: 'seniors' | 'honours';
  readonly window: 'pregame' | 'halftime' | 'postgame';
  readonly secondsEach: number;
  readonly openingText: string | null;
  readonly students: readonly HonouredStudent[];
}

export interface NightForPacket {
  readonly nightId: string;
  readonly departmentName: string;
  readonly heldOn: Day;
  /** The day in words: "Friday, December 4, 2026". */
  readonly dayText: string;
  readonly title: string | null;
  readonly venue: VenueForPacket;
  readonly games: readonly GameForPacket[];
  readonly people: readonly PersonForPacket[];
  readonly nextGame: NextGameForPacket | null;
  readonly nextHomeGame: NextGameForPacket | null;
  readonly honours?: readonly HonoursForPacket[];
  /** The number of the latest issue; null before the first. */
  readonly issuedNumber?: number | null;
  readonly settings: PacketSettings;
}

/** The key by which the log counts a planned read; it does not move when other reads come and go. */
export function placementCueKey(gameId: string, window: string, place: number): string {
  return `game:${gameId}/${window}/${place}`;
}

/** The key of a read that is owed when something happens; the occurrence is numbered at sign-off. */
export function mentionCueKey(gameId: string, commitmentId: string): string {
  return `game:${gameId}/mention/${commitmentId}`;
}
