import type { Sport } from '../season/sport-profile.ts';
import type { Moment, Script } from './script.ts';

/** A script every department starts with: for every sport, or for one. */
export type DefaultScript = Script & { readonly sport: Sport | null };

/** A script of the library as it comes, on and first of its moment unless said otherwise. */
export function script(moment: Moment, title: string, text: string, extra: Partial<DefaultScript> = {}): DefaultScript {
  return { key: extra.sport ? `${moment}-${extra.sport}` : moment, moment, title, language: 'en', text: text.trim(), isOn: true, place: 1, sport: null, ...extra };
}
