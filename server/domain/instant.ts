import { Temporal } from 'temporal-polyfill';
import type { Day } from './day.ts';

declare const instant: unique symbol;

/** A moment, ISO 8601 in UTC with milliseconds: `2026-12-05T02:00:00.000Z`. */
export type Instant = string & { readonly [instant]: true };

/** A moment as we write it, on a day that every month has: nothing about it has to be worked out. */
const ALREADY_PLAIN = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|1\d|2[0-8])T([01]\d|2[0-3]):[0-5]\d:[0-5]\d\.\d{3}Z$/;

/** @throws RangeError when the text is not an ISO 8601 moment with an offset */
export function instantOf(text: string): Instant {
  if (ALREADY_PLAIN.test(text)) return text as Instant;
  return Temporal.Instant.from(text).toString({ smallestUnit: 'millisecond' }) as Instant;
}

/** The day that the wall calendar shows in a zone at a moment. */
export function dayAt(moment: Instant, zone: string): Day {
  return Temporal.Instant.from(moment).toZonedDateTimeISO(zone).toPlainDate().toString() as unknown as Day;
}

/** The wall clock in a zone at a moment, `HH:MM`. */
export function clockAt(moment: Instant, zone: string): string {
  return Temporal.Instant.from(moment).toZonedDateTimeISO(zone).toPlainTime().toString({ smallestUnit: 'minute' });
}

/**
 * The moment at which a wall clock in a zone shows a day and a time. A time that a spring change
 * skips means the same time by the clock before the change (so 2:30 reads 3:30); a time that an
 * autumn change shows twice means the first.
 *
 * @param clock `HH:MM`
 */
export function instantAt(day: Day, clock: string, zone: string): Instant {
  const wall = Temporal.PlainDate.from(day).toPlainDateTime(Temporal.PlainTime.from(clock));
  return wall
    .toZonedDateTime(zone, { disambiguation: 'compatible' })
    .toInstant()
    .toString({ smallestUnit: 'millisecond' }) as Instant;
}

/** The moment a number of seconds later (or, when negative, earlier). */
export function addSeconds(from: Instant, seconds: number): Instant {
  return Temporal.Instant.from(from).add({ seconds }).toString({ smallestUnit: 'millisecond' }) as Instant;
}

/** Whole seconds from one moment to another; negative when `to` is earlier. */
export function secondsBetween(from: Instant, to: Instant): number {
  return Math.trunc((Temporal.Instant.from(to).epochMilliseconds - Temporal.Instant.from(from).epochMilliseconds) / 1000);
}

export function isZone(zone: string): boolean {
  try {
    Temporal.Instant.from('2026-01-01T00:00Z').toZonedDateTimeISO(zone);
    return true;
  } catch {
    return false;
  }
}
