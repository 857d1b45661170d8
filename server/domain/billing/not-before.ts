import type { Day } from '../day.ts';
import { refuse } from '../refusals.ts';

/** What a step rests on, in words, and the day it lies on. */
export interface Cause {
  what: string;
  on: Day;
}

/**
 * A step lies on the day of what it rests on, or later. A void before its invoice would make the months between owe less
 * than nothing.
 *
 * @throws Refused `before-its-cause`, naming the latest cause
 * @source common practice, no source
 */
export function checkNotBefore(on: Day, causes: readonly Cause[]): void {
  const latest = latestOf(causes);
  if (latest && on < latest.on) refuse('before-its-cause', { day: on, cause: latest.what, causeDay: latest.on });
}

/**
 * The day a step lies on: the one that is asked for, else the first from `from` on that its causes allow.
 *
 * @throws Refused `before-its-cause` when the day asked for lies before a cause
 * @source common practice, no source
 */
export function dayOfStep(asked: Day | null | undefined, from: Day, causes: readonly Cause[]): Day {
  if (asked) {
    checkNotBefore(asked, causes);
    return asked;
  }
  const latest = latestOf(causes);
  return latest && latest.on > from ? latest.on : from;
}

function latestOf(causes: readonly Cause[]): Cause | undefined {
  return causes.toSorted((one, other) => (one.on < other.on ? 1 : one.on > other.on ? -1 : 0))[0];
}
