import type { Day } from '../../day.ts';
import type { Instant } from '../../instant.ts';
import type { Cue, TeamSheet, WindowLoad } from '../../packet/packet.ts';
import type { Segment } from '../../packet/segment.ts';
import type { SportRules } from '../../season/sport-rules.ts';
import type { RequestKind } from './requests/request.ts';

/** A cue as the desk reads it: what is printed, less what only paper needs. */
export interface DeskCue
  extends Pick<
    Cue,
    | 'code' | 'number' | 'cueKey' | 'gameId' | 'moment' | 'window' | 'windowKey' | 'title' | 'language' | 'segments' | 'second' | 'seconds'
    | 'isSponsored' | 'placementId' | 'commitmentId' | 'sponsorName' | 'sponsorSayAs' | 'startsText' | 'whoText' | 'caution' | 'usesFallback'
  > {
  /** 1 stays to the last when something has to fall out, 3 goes first; 2 for the house's own words */
  readonly priority: number;
}

/** One game of the night with all that the desk reckons with. */
export interface DeskGame {
  readonly gameId: string;
  /** "Herons at Kestrels, varsity" */
  readonly title: string;
  readonly level: string;
  readonly sport: string;
  /** `HH:MM` on the venue's wall; null where it floats or is open */
  readonly startsClock: string | null;
  readonly startsText: string;
  /** minutes after the end of the game it follows; null for a start by the clock */
  readonly startsAfterMinutes: number | null;
  readonly usualMinutes: number;
  /** null for a sport the house does not know: only reads, notes and taking back are logged */
  readonly rules: SportRules | null;
  readonly visitors: TeamSheet;
  readonly home: TeamSheet;
  /** the teams of the department's own schools; a mention of "our" shots looks here */
  readonly ourTeamIds: readonly string[];
}

/** A sponsor whose mention is owed when something happens. */
export interface DeskMention {
  readonly commitmentId: string;
  readonly cueKey: string;
  readonly gameId: string;
  readonly code: string;
  readonly sponsorName: string;
  readonly sponsorSayAs: string | null;
  /** what an entry's `detail.happening` says: `bankShot` */
  readonly happening: string;
  /** in words: "bank shot" */
  readonly occurrence: string;
  readonly whose: 'ours' | 'both';
  readonly severalCountAsOne: boolean;
  readonly segments: readonly Segment[];
  readonly seconds: number;
}

export const HOLD_SITUATIONS = ['injury', 'medical', 'weather', 'evacuation', 'threat', 'delay', 'silence'] as const;
export type HoldSituation = (typeof HOLD_SITUATIONS)[number];

/** The approved words for a hold, as the venue and the department wrote them. */
export interface HoldText {
  readonly situation: HoldSituation;
  readonly title: string;
  readonly segments: readonly Segment[];
}

/** The script a request of a kind is read with; blanks are filled from the form. */
export interface RequestScript {
  readonly kind: RequestKind;
  readonly title: string;
  /** never from the public form */
  readonly isTableOnly: boolean;
  readonly segments: readonly Segment[];
}

export interface DeskSettings {
  /** what the department does with a mention: held for the next window, read in the dead ball, called at once */
  readonly bankShotMention: 'nextWindow' | 'deadBall' | 'atOnce';
  /** foul counts stand in the announcement line */
  readonly foulCountsRead: boolean;
  readonly wordsPerMinute: number;
  /** the public form of this night is open */
  readonly takesPublicRequests: boolean;
}

/** Everything a table needs for a night, stored on the device before the gym. What it holds never changes; a newer one replaces it. */
export interface NightBundle {
  readonly nightId: string;
  readonly title: string;
  readonly dayText: string;
  readonly heldOn: Day;
  /** IANA name; the desk shows the venue's wall clock by it */
  readonly zone: string;
  readonly venueText: string;
  readonly departmentName: string;
  readonly madeAt: Instant;
  /** of the packet it was made from; another one means that the office has changed something since */
  readonly contentDigest: string;
  readonly games: readonly DeskGame[];
  /** in the order of the night; notices and emergencies, which stand in no window and no game, come last */
  readonly cues: readonly DeskCue[];
  readonly windows: readonly WindowLoad[];
  /** codes of the reads for "the next time-out", in the order of their priority */
  readonly nextTimeOut: readonly string[];
  readonly mentions: readonly DeskMention[];
  readonly holdTexts: readonly HoldText[];
  readonly requestScripts: readonly RequestScript[];
  readonly people: readonly { readonly role: string; readonly name: string; readonly sayAs: string | null; readonly arrivesText: string | null }[];
  readonly emergency: { readonly exitsText: string | null; readonly defibrillatorPlace: string | null };
  readonly settings: DeskSettings;
}
