import { expect, test } from 'vitest';
import { dayOf } from '../../server/domain/day.ts';
import { assertMayClose, monthAfter, monthCalled, monthsFrom, stateOfMonth } from '../../server/domain/ledger/month.ts';
import { Refused } from '../../server/domain/refusals.ts';

/** Common practice, no source: months close in their order once they are over. */
const closed = [dayOf('2026-09-01')];

test.each([
  ['2026-09', 'closed'],
  ['2026-10', 'open'],
  ['2026-11', 'running'],
  ['2026-12', 'ahead'],
])('%s is %s on November 27, 2026', (month, state) => {
  expect(stateOfMonth(monthCalled(month), dayOf('2026-11-27'), closed)).toBe(state);
});

const codeOf = (run: () => void): string => {
  try {
    run();
    return 'done';
  } catch (failure) {
    return (failure as Refused).code;
  }
};

test.each([
  ['the next month that is over', '2026-10', '2026-11-01', 'done'],
  ['the same month on its last day', '2026-10', '2026-10-31', 'month-not-over'],
  ['a month that is closed', '2026-09', '2026-11-01', 'month-already-closed'],
  ['a month after an open one', '2026-11', '2026-12-01', 'earlier-month-open'],
  ['the month before the first event', '2026-08', '2026-11-01', 'not-found'],
])('closing %s (%s on %s) answers %s', (_, month, today, code) => {
  expect(codeOf(() => assertMayClose({ month: monthCalled(month), today: dayOf(today), firstMonth: dayOf('2026-09-01'), closed }))).toBe(code);
});

test('books without an event have no month to close', () => {
  expect(codeOf(() => assertMayClose({ month: dayOf('2026-10-01'), today: dayOf('2026-11-01'), firstMonth: null, closed: [] }))).toBe('not-found');
});

test.each([
  ['2026-12', '2026-12-01'],
  ['2026-13', 'not-found'],
  ['2026-1', 'not-found'],
  ['december', 'not-found'],
])('%s is the month of %s', (text, first) => {
  let said: string;
  try {
    said = monthCalled(text);
  } catch (failure) {
    said = (failure as Refused).code;
  }
  expect(said).toBe(first);
});

test('months run over the turn of a year, the last day of each leading into the next', () => {
  expect(monthsFrom(dayOf('2026-11-20'), dayOf('2027-02-28'))).toEqual(['2026-11-01', '2026-12-01', '2027-01-01', '2027-02-01']);
  expect(monthsFrom(dayOf('2026-11-20'), dayOf('2026-10-31'))).toEqual([]);
  expect(monthAfter(dayOf('2026-12-31'))).toBe('2027-01-01');
});
