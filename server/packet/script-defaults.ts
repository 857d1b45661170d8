import { createHash } from 'node:crypto';
import { LIBRARY_TO_START_WITH } from '../domain/packet/default-scripts.ts';
import type { Moment } from '../domain/packet/script.ts';
import type { ScriptRow } from './script.entity.ts';

export type DefaultRow = ScriptRow & { key: string };

/** The scripts a department starts with, as rows; the same id for the same department and script, so that one can be opened before it is stored. */
export function defaultRows(departmentId: string): DefaultRow[] {
  return LIBRARY_TO_START_WITH.map(({ key, moment, sport, language, title, text, variant, isOn, place }) => ({
    departmentId, id: idOf(departmentId, key), key, moment, sport, language, title, text, variant: variant ?? null, isOn, place,
    secondLanguage: null, secondText: null, wordsNumber: 1, approvedOn: null, approvedByName: null, version: 1,
  }));
}

/** @source RFC 9562 section 5.8: version 8, what stands in it is our own affair */
function idOf(departmentId: string, key: string): string {
  const digest = createHash('sha256').update(`${departmentId} script ${key}`).digest('hex');
  return `${digest.slice(0, 8)}-${digest.slice(8, 12)}-8${digest.slice(13, 16)}-a${digest.slice(17, 20)}-${digest.slice(20, 32)}`;
}

/** Two scripts of one moment need two keys; the key of a script that was there from the start stays when its words change. */
export function keyOf(script: Pick<ScriptRow, 'id' | 'moment' | 'title' | 'variant'>, defaults: ReadonlyMap<string, string>): string {
  const known = defaults.get(script.id);
  if (known !== undefined) return known;
  if ((script.moment as Moment) !== 'anthem' || script.variant !== null) return `${script.moment}-${script.id}`;
  const { title, id } = script;
  return /\bsung\b/i.test(title) ? `anthem-sung-${id}` : /\bplayed\b/i.test(title) ? `anthem-played-${id}` : `anthem-${id}`;
}
