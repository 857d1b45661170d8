import { describe, expect, test } from 'vitest';
import { addDays, dayOf, daysBetween, firstOfFiscalYear, firstOfMonth, fiscalYearOf, isDay, lastOfMonth, weekdayOf } from '../../server/domain/day.ts';

describe('a day of the calendar', () => {
  test.each([
    ['2028-02-29', true],
    ['2027-02-29', false],
    ['2026-12-31', true],
    ['2026-12-32', false],
    ['2026-1-05', false],
    ['12/4/2026', false],
    ['', false],
    [null, false],
  ])('%s is a day: %s', (text, is) => {
    expect(isDay(text)).toBe(is);
  });

  test('a day that is none is refused', () => {
    expect(() => dayOf('2027-02-29')).toThrow(RangeError);
    expect(() => dayOf('tomorrow')).toThrow('tomorrow is not a day');
  });

  test('a week after the last Friday before the clocks change is a Friday', () => {
    expect(weekdayOf(dayOf('2026-03-06'))).toBe(5);
    expect(addDays(dayOf('2026-03-06'), 7)).toBe('2026-03-13');
    expect(weekdayOf(dayOf('2026-03-13'))).toBe(5);
  });

  test('days between count whole days and turn negative backwards', () => {
    expect(daysBetween(dayOf('2026-12-31'), dayOf('2027-03-01'))).toBe(60);
    expect(daysBetween(dayOf('2027-03-01'), dayOf('2026-12-31'))).toBe(-60);
  });

  test('a month has its first and last day, leap years too', () => {
    expect(firstOfMonth(dayOf('2028-02-17'))).toBe('2028-02-01');
    expect(lastOfMonth(dayOf('2028-02-17'))).toBe('2028-02-29');
    expect(lastOfMonth(dayOf('2100-02-17'))).toBe('2100-02-28');
  });

  test.each([
    ['2026-06-30', 7, 2026],
    ['2026-07-01', 7, 2027],
    ['2026-12-31', 1, 2026],
    ['2027-01-01', 1, 2027],
  ])('%s with a fiscal year from month %i lies in fiscal year %i', (day, month, year) => {
    expect(fiscalYearOf(dayOf(day), month)).toBe(year);
  });

  test.each([
    ['2026-06-30', 7, '2025-07-01'],
    ['2026-07-01', 7, '2026-07-01'],
    ['2026-12-31', 1, '2026-01-01'],
  ])('the fiscal year of %s from month %i begins on %s', (day, month, first) => {
    expect(firstOfFiscalYear(dayOf(day), month)).toBe(first);
  });
});
