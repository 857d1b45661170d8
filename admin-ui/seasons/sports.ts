import type { Day } from '../../server/domain/day.ts';
import { windowHeading } from '../../server/domain/planning/words/window.ts';
import { PROFILES } from '../../server/domain/season/profiles.ts';
import { profileFor, schoolYearOf, windowsOf, type GameWindow, type Sport, type SportProfile, type WindowOwner } from '../../server/domain/season/sport-profile.ts';
import { kindOfWindow } from '../../server/domain/season/window-names.ts';
import { wordFor, WINDOW_WORDS } from '../words/choices.ts';

/** The sports the product knows, each once. */
export const SPORTS = [...new Set(PROFILES.map((profile) => profile.sport))].map((id) => ({ id, name: wordFor({}, id) }));

/** What can happen in some sport that a mention may be owed for, each once. */
export const HAPPENINGS = [...new Set(PROFILES.flatMap((profile) => profile.happenings))].map((id) => ({ id, name: wordFor({}, id) }));

/** The rules of a sport on a day, or null for a sport that is not known. */
export function profileOn(sport: string | undefined, day: string | undefined): SportProfile | null {
  if (!sport || !day || !SPORTS.some((one) => one.id === sport)) return null;
  return profileFor(sport as Sport, schoolYearOf(day as Day));
}

export function windowsOn(sport: string, day: string, owner: string): GameWindow[] {
  const profile = profileOn(sport, day);
  return profile ? windowsOf(profile, { windowsOwnedBy: owner as WindowOwner, windowOwners: {} }) : [];
}

/** "timeOut2" is "2nd time-out", as on the plan board. */
export function windowName(key: string | null | undefined): string {
  if (!key) return '–';
  return /\d$/.test(key) ? windowHeading(key) : wordFor(WINDOW_WORDS, kindOfWindow(key));
}
