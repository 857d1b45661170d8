import { describe, expect, test } from 'vitest';
import { dayOf, weekdayOf } from '../../server/domain/day.ts';
import { addSeconds, clockAt, dayAt, instantAt, instantOf, isZone, secondsBetween } from '../../server/domain/instant.ts';

/** The wall in a zone by the platform's own Intl, an independent reader of the zone data. */
function wallByIntl(utc: string, zone: string): { day: string; clock: string; name: string } {
  const parts = new Intl.DateTimeFormat('en-US', {
    timeZone: zone, hourCycle: 'h23', year: 'numeric', month: '2-digit', day: '2-digit', hour: '2-digit', minute: '2-digit', timeZoneName: 'short',
  }).formatToParts(new Date(utc));
  const part = (type: string): string => parts.find((other) => other.type === type)?.value ?? '';
  return { day: `${part('year')}-${part('month')}-${part('day')}`, clock: `${part('hour')}:${part('minute')}`, name: part('timeZoneName') };
}

describe('the wall clock in a zone (tz database by Temporal, checked against Intl)', () => {
  test.each([
    ['2026-03-08T06:59:59Z', 'America/New_York', '2026-03-08', '01:59', 'EST'],
    ['2026-03-08T07:00:00Z', 'America/New_York', '2026-03-08', '03:00', 'EDT'],
    ['2026-11-01T05:59:59Z', 'America/New_York', '2026-11-01', '01:59', 'EDT'],
    ['2026-11-01T06:00:00Z', 'America/New_York', '2026-11-01', '01:00', 'EST'],
    ['2026-03-07T00:00:00Z', 'America/Chicago', '2026-03-06', '18:00', 'CST'],
    ['2026-03-14T00:00:00Z', 'America/Chicago', '2026-03-13', '19:00', 'CDT'],
    ['2026-03-14T00:00:00Z', 'America/Phoenix', '2026-03-13', '17:00', 'MST'],
    ['2026-01-16T00:30:00Z', 'America/Indiana/Indianapolis', '2026-01-15', '19:30', 'EST'],
    ['2026-01-16T00:30:00Z', 'America/Chicago', '2026-01-15', '18:30', 'CST'],
  ])('%s in %s shows %s %s', (utc, zone, day, clock, name) => {
    expect(wallByIntl(utc, zone)).toEqual({ day, clock, name });
    expect(dayAt(instantOf(utc), zone)).toBe(day);
    expect(clockAt(instantOf(utc), zone)).toBe(clock);
  });

  test('a seven o’clock tip-off is an hour earlier in UTC after the clocks change', () => {
    expect(instantAt(dayOf('2026-03-06'), '19:00', 'America/Chicago')).toBe('2026-03-07T01:00:00.000Z');
    expect(instantAt(dayOf('2026-03-13'), '19:00', 'America/Chicago')).toBe('2026-03-14T00:00:00.000Z');
  });

  test('the half hour that does not exist is read an hour later', () => {
    expect(instantAt(dayOf('2026-03-08'), '02:30', 'America/New_York')).toBe('2026-03-08T07:30:00.000Z');
    expect(clockAt(instantOf('2026-03-08T07:30:00Z'), 'America/New_York')).toBe('03:30');
  });

  test('the half hour that comes twice is the first', () => {
    expect(instantAt(dayOf('2026-11-01'), '01:30', 'America/New_York')).toBe('2026-11-01T05:30:00.000Z');
  });

  // 15 U.S.C. 260a(a): from 2 a.m. on the second Sunday of March to 2 a.m. on the first Sunday of November.
  test.each([2025, 2026, 2027, 2028, 2029, 2030])('daylight saving of %i keeps to 15 U.S.C. 260a', (year) => {
    const spring = sunday(year, 3, 2);
    const autumn = sunday(year, 11, 1);
    const zone = 'America/Denver';
    expect(wallByIntl(instantAt(dayOf(spring), '01:59', zone), zone).name).toBe('MST');
    expect(wallByIntl(instantAt(dayOf(spring), '03:00', zone), zone).name).toBe('MDT');
    expect(secondsBetween(instantAt(dayOf(spring), '01:59', zone), instantAt(dayOf(spring), '03:00', zone))).toBe(60);
    expect(secondsBetween(instantAt(dayOf(autumn), '00:59', zone), instantAt(dayOf(autumn), '02:00', zone))).toBe(2 * 3600 + 60);
  });

  test('in 2027 the clocks change on March 14 and November 7', () => {
    expect([sunday(2027, 3, 2), sunday(2027, 11, 1)]).toEqual(['2027-03-14', '2027-11-07']);
  });

  test('a game that ends past midnight ends on the next day', () => {
    const tipOff = instantAt(dayOf('2026-12-04'), '22:30', 'America/Denver');
    expect(dayAt(addSeconds(tipOff, 2 * 3600), 'America/Denver')).toBe('2026-12-05');
  });

  test('a zone is a name of the zone data', () => {
    expect([isZone('America/Denver'), isZone('Mountain'), isZone('')]).toEqual([true, false, false]);
  });
});

function sunday(year: number, month: number, nth: number): string {
  const days = Array.from({ length: 28 }, (_, place) => `${year}-${String(month).padStart(2, '0')}-${String(place + 1).padStart(2, '0')}`);
  return days.filter((day) => weekdayOf(dayOf(day)) === 7)[nth - 1]!;
}
