import type { BreakRule, SportRules } from './sport-rules.ts';

/** How much may be said in a window of a game, and whether it comes at all. */
export interface WindowCapacity {
  /** Seconds there are to speak in; null where nothing limits them. */
  readonly capacitySeconds: number | null;
  /** For a time-out that may turn out to be the short one; null elsewhere. */
  readonly shortCapacitySeconds: number | null;
  /** A time-out, a fourth set, an inning after a run rule. */
  readonly mayNotHappen: boolean;
  /** Sure to come, or the department counts on it all the same. */
  readonly isReliedOn: boolean;
}

/** What a night and a department say of their own. */
export interface CapacityOfNight {
  /** Seconds of halftime tonight; null for what the rules say. */
  readonly halftimeSeconds: number | null;
  /** Time-outs the department relies on; null for those of a usual game. */
  readonly timeOutsReliedOn: number | null;
}

const USUAL_NIGHT: CapacityOfNight = { halftimeSeconds: null, timeOutsReliedOn: null };
const UNLIMITED: WindowCapacity = { capacitySeconds: null, shortCapacitySeconds: null, mayNotHappen: false, isReliedOn: true };

/** How many time-outs of a game one relies on: what the department says, else those of a usual game. */
export function timeOutsReliedOnIn(profile: SportRules, timeOutsReliedOn: number | null): number {
  return timeOutsReliedOn ?? profile.windows.find((window) => window.kind === 'timeOut')?.timesPerGame ?? 0;
}

/**
 * The seconds of a window less the warning at its end: 60- and 30-second time-outs and the minute between
 * quarters less the horn, halftime less the notice to the teams, three minutes between sets less the warning
 * at two and a half.
 *
 * @param profile null for a sport without one: nothing is limited, time-outs may not happen
 * @param windowKey as `windowsOf` names windows: `halftime`, `timeOut2`, `betweenPeriods1`
 * @source NFHS Basketball Rules 3-3-1a, 5-5-1, 5-12; IAABO Board 36 timing card; NFHS Volleyball Rule 11; the
 *   profile of the sport says where a number is common practice
 */
export function capacityOf(profile: SportRules | null, windowKey: string, night: CapacityOfNight = USUAL_NIGHT): WindowCapacity {
  const [, kind = windowKey, digits] = /^([a-zA-Z]+?)(\d*)$/.exec(windowKey) ?? [];
  const number = Number(digits || 1);
  if (kind === 'timeOut') return timeOutCapacity(profile, number, night);
  if (profile === null) return UNLIMITED;
  if (kind === 'deadBall') return { ...UNLIMITED, capacitySeconds: profile.windows.find((window) => window.kind === kind)?.longestReadSeconds ?? null };
  if (kind === 'halftime') return breakCapacity(profile.breaks.find((one) => one.halftime), night.halftimeSeconds);
  if (kind !== 'betweenPeriods') return UNLIMITED;
  const between = profile.breaks.filter((one) => !one.halftime);
  if (between.length === 0) return { ...UNLIMITED, capacitySeconds: profile.windows.find((window) => window.kind === kind)?.usualSeconds ?? null };
  return breakCapacity(between[number - 1], null);
}

/** A break the rules do not know may not happen; halftime of a sport without one is as long as the night says. */
function breakCapacity(rule: BreakRule | undefined, tonightSeconds: number | null): WindowCapacity {
  if (rule === undefined) return { ...UNLIMITED, capacitySeconds: tonightSeconds, mayNotHappen: tonightSeconds === null, isReliedOn: tonightSeconds !== null };
  const capacitySeconds = Math.max(0, (tonightSeconds ?? rule.seconds) - rule.warningSeconds);
  return { capacitySeconds, shortCapacitySeconds: null, mayNotHappen: rule.mayNotHappen, isReliedOn: !rule.mayNotHappen };
}

function timeOutCapacity(profile: SportRules | null, number: number, night: CapacityOfNight): WindowCapacity {
  const inPlay = profile?.timeOuts.filter((one) => one.per !== 'extraPeriod').map((one) => one.seconds - one.warningSeconds) ?? [];
  const longest = inPlay.length === 0 ? null : Math.max(...inPlay);
  const shortest = inPlay.length === 0 ? null : Math.min(...inPlay);
  return {
    capacitySeconds: longest,
    shortCapacitySeconds: shortest === longest ? null : shortest,
    mayNotHappen: true,
    isReliedOn: profile !== null && number <= timeOutsReliedOnIn(profile, night.timeOutsReliedOn),
  };
}
