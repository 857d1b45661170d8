import type { Day } from '../day.ts';
import { PROFILES } from './profiles.ts';
import type { SportRules, WindowKind, WindowOwner } from './sport-rules.ts';
import type { Sport } from './sports/all-sports.ts';

export { WINDOW_KINDS } from './sport-rules.ts';
export type { BreakRule, FoulStep, LineUpForm, PeriodRule, PlayEntryKind, TeamFoulRule, TimeOutRule, WindowKind, WindowOwner, WindowRule } from './sport-rules.ts';
export type { Sport } from './sports/all-sports.ts';

/** The rules of one sport from a season on, for the country or a state. */
export interface SportProfile extends SportRules {
  readonly sport: Sport;
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
  /** of those, how many of one group of read kinds; a group that is not named may take them all */
  readonly groupPlaces: Readonly<Record<string, number>>;
  readonly longestReadSeconds: number | null;
}

/** What a department says of a sport's windows of one kind, in place of the profile. */
export interface PlacesSaid {
  readonly windowKind: WindowKind;
  /** a group of read kinds with places of its own within the window; null: all reads of the window */
  readonly placeGroup: string | null;
  readonly places: number;
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
 * @param said what the department says of the places; a group never has more than its window
 */
export function windowsOf(profile: SportProfile, owners: GameOwners = ALL_OURS, allowsDeadBall = false, said: readonly PlacesSaid[] = []): GameWindow[] {
  return profile.windows.flatMap((rule) => {
    const times = rule.kind === 'deadBall' && allowsDeadBall ? 1 : rule.timesPerGame;
    const owner = owners.windowOwners[rule.kind] ?? (owners.windowsOwnedBy === 'us' ? rule.owner : owners.windowsOwnedBy);
    const ofKind = said.filter((one) => one.windowKind === rule.kind);
    const places = owner === 'us' ? (ofKind.find((one) => one.placeGroup === null)?.places ?? rule.places) : 0;
    const groupPlaces = Object.fromEntries(ofKind.flatMap((one) => (one.placeGroup === null ? [] : [[one.placeGroup, Math.min(one.places, places)]])));
    return Array.from({ length: times }, (_, place) => ({
      key: times === 1 ? rule.kind : `${rule.kind}${place + 1}`,
      kind: rule.kind,
      owner,
      places,
      groupPlaces,
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
