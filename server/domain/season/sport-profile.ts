import type { Day } from '../day.ts';
import { PROFILES } from './profiles.ts';

export type Sport = 'basketball' | 'football' | 'volleyball' | 'soccer' | 'wrestling' | 'baseball' | 'softball';

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
  /** how many such windows a usual game has */
  readonly timesPerGame: number;
  /** the longest one read may take here; null where only the break itself limits it */
  readonly longestReadSeconds: number | null;
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
}

export interface TimeOutRule {
  readonly name: string;
  readonly seconds: number;
  readonly perTeam: number;
  /** what the number counts over */
  readonly per: 'game' | 'half' | 'set' | 'extraPeriod';
}

/** From this team foul on, a common foul earns this. */
export interface FoulStep {
  readonly fromFoul: number;
  readonly award: 'oneAndOne' | 'two';
}

export interface TeamFoulRule {
  readonly countedPer: 'half' | 'quarter';
  readonly steps: readonly FoulStep[];
  /** a player is disqualified with this many */
  readonly playerLimit: number;
}

/** The order and form in which line-ups are introduced. */
export type LineUpForm = 'visitorsThenHome' | 'alternating' | 'byUnit' | 'byWeightClass' | 'battingOrder';

/** The kinds of play the table may log for a sport; reads, notes and taking back are logged in all. */
export type PlayEntryKind = 'basket' | 'foul' | 'substitution' | 'timeOut' | 'periodEnd' | 'happening';

export interface SportProfile {
  readonly sport: Sport;
  /** the first season it holds for, named by the calendar year in which the season's school year begins */
  readonly fromSeason: number;
  /** null for the whole country, else the state that plays it differently, as two letters */
  readonly state: string | null;
  readonly periods: PeriodRule;
  readonly extraPeriodSeconds: number | null;
  readonly breaks: readonly BreakRule[];
  readonly windows: readonly WindowRule[];
  readonly timeOuts: readonly TimeOutRule[];
  readonly teamFouls: TeamFoulRule | null;
  readonly lineUp: LineUpForm;
  readonly startersPerTeam: number;
  readonly entryKinds: readonly PlayEntryKind[];
  readonly happenings: readonly string[];
  readonly numberRule: 'fingers' | 'upTo99' | 'upToTwoDigits' | 'none';
  readonly source: string;
}

/**
 * The profile that holds for a sport in a season: of those that had begun, the state's own before the
 * country's, then the latest. Boys and girls play basketball by the same profile.
 *
 * @param season the calendar year in which the school year begins, so 2023 for 2023-24
 * @param state two letters, or null where only the country's rules matter
 * @throws RangeError when the season lies before the first one known
 */
export function profileFor(
  sport: Sport,
  season: number,
  state: string | null = null,
  profiles: readonly SportProfile[] = PROFILES,
): SportProfile {
  const begun = profiles.filter(
    (profile) =>
      profile.sport === sport && profile.fromSeason <= season && (profile.state === null || profile.state === state),
  );
  const [best] = begun.toSorted(
    (a, b) => Number(b.state !== null) - Number(a.state !== null) || b.fromSeason - a.fromSeason,
  );
  if (!best) throw new RangeError(`no ${sport} profile is known for the season that began in ${season}`);
  return best;
}

/** One window of a usual game, by a key such as `pregame` or `timeOut2`. */
export interface GameWindow {
  readonly key: string;
  readonly kind: WindowKind;
  readonly owner: WindowOwner;
  /** sponsor reads it holds; none where its owner is not us */
  readonly places: number;
  readonly longestReadSeconds: number | null;
}

/** Who owns the windows of one game, and where a single kind differs. */
export interface GameOwners {
  readonly windowsOwnedBy: WindowOwner;
  readonly windowOwners: Readonly<Partial<Record<WindowKind, WindowOwner>>>;
}

/** Our own game, nothing given away. */
export const ALL_OURS: GameOwners = { windowsOwnedBy: 'us', windowOwners: {} };

/**
 * The windows of a usual game in the order of the night, with the places each has for our sponsors. A
 * window the conference or the association owns has none.
 *
 * @param allowsDeadBall whether the department allows the mention of four seconds or less at a dead ball
 */
export function windowsOf(profile: SportProfile, owners: GameOwners = ALL_OURS, allowsDeadBall = false): GameWindow[] {
  return profile.windows.flatMap((rule) => {
    const times = rule.kind === 'deadBall' && allowsDeadBall ? 1 : rule.timesPerGame;
    const owner = owners.windowOwners[rule.kind] ?? (owners.windowsOwnedBy === 'us' ? rule.owner : owners.windowsOwnedBy);
    return Array.from({ length: times }, (_, place) => ({
      key: times === 1 ? rule.kind : `${rule.kind}${place + 1}`,
      kind: rule.kind,
      owner,
      places: owner === 'us' ? rule.places : 0,
      longestReadSeconds: rule.longestReadSeconds,
    }));
  });
}

/** How many sponsor reads a game can hold over all its windows. */
export function placesInGame(profile: SportProfile, owners: GameOwners = ALL_OURS): number {
  return windowsOf(profile, owners).reduce((sum, window) => sum + window.places, 0);
}

/** The calendar year in which the school year of a day begins: 2026 for a day of 2026-27. */
export function schoolYearOf(day: Day): number {
  const year = Number(day.slice(0, 4));
  return Number(day.slice(5, 7)) >= 7 ? year : year - 1;
}
