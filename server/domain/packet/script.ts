import type { Language } from './night-for-packet.ts';

/** The moments a script can be written for, in the order of a night. */
export const MOMENTS = [
  'welcome', 'conduct', 'mustCarryPregame', 'prayer', 'anthem', 'sponsorPresentation', 'lineUpVisitors', 'lineUpHome',
  'periodScore', 'mustCarryHalftime', 'halftime', 'floorSafety', 'concession', 'betweenGames', 'postgame',
  'vehicleNotice', 'injury', 'weather', 'evacuation', 'threat',
] as const;

export type Moment = (typeof MOMENTS)[number];

/** A script of the library: words with `{{ variables }}` and `[[directions]]`. */
export interface Script {
  readonly key: string;
  readonly moment: Moment;
  readonly title: string;
  readonly language: Language;
  readonly text: string;
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
