import type { Language } from './night-for-packet.ts';

/** The moments a script can be written for, in the order of a night. */
export const MOMENTS = [
  'welcome', 'conduct', 'substances', 'seating', 'mustCarryPregame', 'prayer', 'anthem', 'sponsorPresentation', 'officials',
  'lineUpVisitors', 'lineUpHome', 'callsOfPlay', 'periodScore', 'mustCarryHalftime', 'halftime', 'recognition', 'honours',
  'floorSafety', 'concession', 'fundraiser', 'club', 'camp', 'betweenGames', 'postgame',
  'vehicleNotice', 'lostChild', 'foundItem', 'medical', 'delay', 'injury', 'weather', 'evacuation', 'threat',
] as const;

export type Moment = (typeof MOMENTS)[number];

/** Printed last and apart from everything that is sponsored. */
export const EMERGENCY_MOMENTS = ['medical', 'delay', 'injury', 'weather', 'evacuation', 'threat'] as const satisfies readonly Moment[];

/** The district's own wording: printed as it is, never changed in the library. */
export const LOCKED_MOMENTS = ['threat'] as const satisfies readonly Moment[];

/** Whether the words of a moment are the district's own. */
export function isLocked(moment: Moment): boolean {
  return (LOCKED_MOMENTS as readonly Moment[]).includes(moment);
}

/** The four ways the anthem is given: who gives it, and where the flag is. */
export const ANTHEM_VARIANTS = ['sungColourGuard', 'sungFlagInPlace', 'playedColourGuard', 'playedFlagInPlace'] as const;

export type AnthemVariant = (typeof ANTHEM_VARIANTS)[number];

/** The two openings of an honours list: seniors with their families, or honours. */
export const HONOURS_VARIANTS = ['seniors', 'honours'] as const;

/** The forms a moment comes in; the night says which of them is read. */
export const VARIANTS: Readonly<Partial<Record<Moment, readonly string[]>>> = { anthem: ANTHEM_VARIANTS, honours: HONOURS_VARIANTS };

/** Which form of the anthem is given tonight. */
export function anthemVariant(anthem: 'sung' | 'played', flag: 'colourGuard' | 'inPlace'): AnthemVariant {
  return `${anthem}${flag === 'colourGuard' ? 'ColourGuard' : 'FlagInPlace'}`;
}

/** A script of the library: words with `{{ variables }}` and `[[directions]]`. */
export interface Script {
  readonly key: string;
  /** Its record in the library, for a link to where it is mended. */
  readonly scriptId?: string;
  readonly moment: Moment;
  readonly title: string;
  readonly language: Language;
  readonly text: string;
  /** The same message in a second language; both are one reading. */
  readonly secondLanguage?: Language | null;
  readonly secondText?: string | null;
  /** Which form of a moment this is, as one of `ANTHEM_VARIANTS`; null for the only one. */
  readonly variant?: string | null;
  /** A script that is off is kept in the library and left out of the packet. */
  readonly isOn: boolean;
  /** Order among the scripts of one moment. */
  readonly place: number;
}

/** Fills a template in; throws when a variable is unknown. */
export type Render = (template: string, variables: Readonly<Record<string, unknown>>) => string;

/** The scripts of a moment that are on, in their order; equal places by key. */
export function scriptsFor(library: readonly Script[], moment: Moment): Script[] {
  return library
    .filter((script) => script.moment === moment && script.isOn)
    .sort((one, other) => one.place - other.place || (one.key < other.key ? -1 : 1));
}

/**
 * The library of a night: the scripts for every sport, and in their place those of the night's own
 * sports where one of that moment is on.
 *
 * @param sports the sports of the night's games
 */
export function libraryFor(library: readonly { readonly sport: string | null; readonly script: Script }[], sports: ReadonlySet<string>): Script[] {
  const fitting = library.filter(({ sport }) => sport === null || sports.has(sport));
  const own = new Set(fitting.filter(({ sport, script }) => sport !== null && script.isOn).map(({ script }) => script.moment));
  return fitting.filter(({ sport, script }) => sport !== null || !own.has(script.moment)).map(({ script }) => script);
}
