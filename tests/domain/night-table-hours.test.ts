import { describe, expect, test } from 'vitest';
import { dayOf } from '../../server/domain/day.ts';
import { instantOf } from '../../server/domain/instant.ts';
import { ownLinkEndsAt, tableHours } from '../../server/domain/night/table-hours.ts';

const LONG_BEFORE = instantOf('2026-01-02T12:00:00.000Z');
const hours = (heldOn: string, zone: string, madeAt: string = LONG_BEFORE) => tableHours(dayOf(heldOn), zone, instantOf(madeAt));

describe('a table opens with the day before its night and ends 72 hours after it', () => {
  test.each([
    ['a Friday in December', '2026-12-04', 'America/Denver', '2026-12-03T07:00:00.000Z', '2026-12-08T06:59:00.000Z'],
    ['the eve of the autumn change', '2026-10-31', 'America/Denver', '2026-10-30T06:00:00.000Z', '2026-11-04T05:59:00.000Z'],
    ['the day of 25 hours', '2026-11-01', 'America/Denver', '2026-10-31T06:00:00.000Z', '2026-11-05T06:59:00.000Z'],
    ['the day after it', '2026-11-02', 'America/Denver', '2026-11-01T06:00:00.000Z', '2026-11-06T06:59:00.000Z'],
    ['the eve of the spring change', '2026-03-07', 'America/Denver', '2026-03-06T07:00:00.000Z', '2026-03-11T06:59:00.000Z'],
    ['the day of 23 hours', '2026-03-08', 'America/Denver', '2026-03-07T07:00:00.000Z', '2026-03-12T05:59:00.000Z'],
    ['the day after it', '2026-03-09', 'America/Denver', '2026-03-08T07:00:00.000Z', '2026-03-13T05:59:00.000Z'],
    ['a zone that never changes', '2026-03-08', 'America/Phoenix', '2026-03-07T07:00:00.000Z', '2026-03-12T06:59:00.000Z'],
    ['a day that begins at one o’clock', '2026-03-09', 'America/Havana', '2026-03-08T05:00:00.000Z', '2026-03-13T03:59:00.000Z'],
    ['New Year’s Eve', '2026-12-31', 'America/Denver', '2026-12-30T07:00:00.000Z', '2027-01-04T06:59:00.000Z'],
  ])('%s: %s in %s', (_, heldOn, zone, opensAt, endsAt) => {
    expect(hours(heldOn, zone)).toEqual({ opensAt, endsAt });
  });
});

test.each([
  ['a day before the end', '2026-12-07T06:59:00.000Z', '2026-12-08T06:59:00.000Z'],
  ['a second later', '2026-12-07T06:59:01.000Z', '2026-12-08T06:59:01.000Z'],
  ['a week after the night', '2026-12-11T18:00:00.000Z', '2026-12-12T18:00:00.000Z'],
])('a link made %s is good for a day at least', (_, madeAt, endsAt) => {
  expect(hours('2026-12-04', 'America/Denver', madeAt).endsAt).toBe(endsAt);
});

test.each([
  ['months ahead', '2026-09-01T12:00:00.000Z', '2026-09-04T12:00:00.000Z'],
  ['on the evening before the table opens', '2026-12-03T06:59:59.999Z', '2026-12-06T06:59:59.999Z'],
  ['as the table opens', '2026-12-03T07:00:00.000Z', '2026-12-08T06:59:00.000Z'],
  ['a week after the night', '2026-12-11T18:00:00.000Z', '2026-12-12T18:00:00.000Z'],
])('an own link made %s', (_, madeAt, endsAt) => {
  expect(ownLinkEndsAt(hours('2026-12-04', 'America/Denver', madeAt), instantOf(madeAt))).toBe(endsAt);
});
