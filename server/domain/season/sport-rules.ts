/** Where in a game a sponsor read may be voiced. The order is the order of the night. */
export const WINDOW_KINDS = ['pregame', 'betweenPeriods', 'timeOut', 'halftime', 'postgame', 'deadBall'] as const;
export type WindowKind = (typeof WINDOW_KINDS)[number];

/** Who fills a window. Where it is not us it has no places for our sponsors. */
export type WindowOwner = 'us' | 'conference' | 'association';

export interface WindowRule {
  readonly kind: WindowKind;
  readonly owner: WindowOwner;
  /** sponsor reads one such window holds */
  readonly places: number;
  /** how many such windows a usual game has, those that may not happen left out */
  readonly timesPerGame: number;
  /** the longest one read may take here; null where only the break itself limits it */
  readonly longestReadSeconds: number | null;
  /** seconds to speak in where no rule of the sport times such a break */
  readonly usualSeconds?: number;
}

export interface PeriodRule {
  /** `quarter`, `half`, `set`, `period`, `inning` */
  readonly name: string;
  readonly count: number;
  /** null where no clock runs */
  readonly seconds: number | null;
}

export interface BreakRule {
  /** the break follows this period */
  readonly afterPeriod: number;
  readonly seconds: number;
  readonly longestSeconds: number;
  readonly halftime: boolean;
  /** before its end teams and officials are called back, and the microphone is silent */
  readonly warningSeconds: number;
  /** the game may be over by then: a fourth set, an inning after a run rule */
  readonly mayNotHappen: boolean;
}

export interface TimeOutRule {
  readonly name: string;
  readonly seconds: number;
  readonly perTeam: number;
  /** what the number counts over */
  readonly per: 'game' | 'half' | 'set' | 'extraPeriod';
  /** a warning is sounded so long before its end */
  readonly warningSeconds: number;
}

/** From this team foul on, a common foul earns this. */
export interface FoulStep {
  readonly fromFoul: number;
  readonly award: 'oneAndOne' | 'two';
}

export interface TeamFoulRule {
  readonly countedPer: 'half' | 'quarter';
  readonly steps: readonly FoulStep[];
  /** a player is disqualified with this many, technical fouls among them */
  readonly playerLimit: number;
  /** technical fouls that disqualify: a player; the head coach with direct ones; the head coach with direct and indirect together */
  readonly technicalLimits: { readonly player: number; readonly coachDirect: number; readonly coachTogether: number };
}

/** What the table logs toward the score, or counts beside it. */
export interface ScoreRule {
  /** what the entry's `detail.what` says: `touchdown`, `freeThrow` */
  readonly what: string;
  /** as the button and the announcement say it: "Touchdown" */
  readonly words: string;
  /** zero for what is only counted, such as a hit */
  readonly points: number;
  /** a player is named with it */
  readonly perPlayer: boolean;
  /** it goes to the sheet and not over the microphone */
  readonly isSilent?: boolean;
}

/** When a set is won, in a sport that is played in sets. */
export interface SetRule {
  readonly points: number;
  readonly decidingPoints: number;
  /** so many points ahead */
  readonly ahead: number;
  /** so many sets win the match */
  readonly setsToWin: number;
}

/** What a bout of a dual meet may end by, and the team points for it. */
export interface BoutRule {
  /** what the entry's `detail.how` says: `fall` */
  readonly how: string;
  readonly words: string;
  readonly teamPoints: number;
  /** nobody won it */
  readonly isWithoutWinner?: boolean;
}

/** The order and form in which line-ups are introduced. */
export type LineUpForm = 'visitorsThenHome' | 'alternating' | 'byUnit' | 'byWeightClass' | 'battingOrder';

/** The kinds of play the table may log for a sport; reads, notes and taking back are logged in all. */
export type PlayEntryKind = 'basket' | 'score' | 'foul' | 'substitution' | 'timeOut' | 'serve' | 'batter' | 'bout' | 'periodEnd' | 'happening';

/** A position as rosters shorten it, as it is said, and the unit it plays in where a sport has units. */
export interface PositionRule {
  readonly short: string;
  readonly name: string;
  readonly unit?: string;
}

/** What the table's sheet of a sport has room for. */
export interface SheetRule {
  /** headings of the score by period; empty for a sheet of bouts */
  readonly periods: readonly string[];
  /** heading of the column for extra play; null where the sheet needs none */
  readonly overtime: string | null;
  /** headings after the periods: the final score, or runs, hits, errors */
  readonly totals: readonly string[];
  /** printed under the score */
  readonly notes: readonly string[];
  /** time-outs by stretch of the game, in the order in which the boxes are ticked */
  readonly timeOuts: readonly { readonly title: string; readonly full: number; readonly short: number }[];
  /** boxes for team fouls in each stretch they are counted in */
  readonly teamFoulBoxes: number;
  /** what is worth how many points, for the table */
  readonly scoring: readonly { readonly what: string; readonly points: string }[];
  /** calls of play with blanks; no counts, since they are not read aloud */
  readonly calls: readonly { readonly when: string; readonly say: string }[];
}

/** The rules of a sport from a season on. */
export interface SportRules {
  /** the first season it holds for, named by the calendar year in which the season's school year begins */
  readonly fromSeason: number;
  /** null for the whole country, else the state that plays it differently, as two letters */
  readonly state: string | null;
  readonly periods: PeriodRule;
  readonly extraPeriodSeconds: number | null;
  readonly breaks: readonly BreakRule[];
  readonly windows: readonly WindowRule[];
  readonly timeOuts: readonly TimeOutRule[];
  /** once time has run out in the last period or an extra one, no time-out follows another until the clock has run */
  readonly forbidsSuccessiveTimeOuts?: boolean;
  readonly teamFouls: TeamFoulRule | null;
  readonly lineUp: LineUpForm;
  readonly startersPerTeam: number;
  /** what is waited for after each starter; null where one name follows the other */
  readonly afterEachStarter: string | null;
  readonly positions: readonly PositionRule[];
  /** pounds, lightest first; empty in a sport without weight classes */
  readonly weightClasses: readonly string[];
  readonly entryKinds: readonly PlayEntryKind[];
  /** logged as `basket` where the sport has baskets, else as `score` */
  readonly scores: readonly ScoreRule[];
  /** null in a sport without sets */
  readonly sets: SetRule | null;
  /** empty in a sport without bouts */
  readonly bouts: readonly BoutRule[];
  readonly happenings: readonly string[];
  readonly numberRule: 'fingers' | 'upTo99' | 'upToTwoDigits' | 'none';
  readonly sheet: SheetRule;
  readonly source: string;
}

/** Everything the house knows of a sport: one file in `sports/`, one line in `all-sports.ts`. */
export interface SportFile {
  /**
   * How long a varsity game usually takes, from its start to its end.
   *
   * @source common practice, no source
   */
  readonly usualMinutes: number;
  /** the country's by season, and the states' own */
  readonly rules: readonly SportRules[];
}
