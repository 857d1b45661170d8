import { describe, expect, test } from 'vitest';
import { AGING_BUCKETS, agingOf, bucketOf } from '../../server/domain/billing/aging.ts';
import type { OpenDocument } from '../../server/domain/billing/aging.ts';
import { splitIncome, teamsEarning } from '../../server/domain/billing/income-split.ts';
import { addDays, dayOf } from '../../server/domain/day.ts';
import { centsOf } from '../../server/domain/money.ts';

const on = dayOf('2026-12-31');
const aged = (days: number, dollars: number): OpenDocument => ({ issuedOn: addDays(on, -days), dueOn: addDays(on, 30 - days), balanceCents: dollars * 100 });
const overdue = (days: number, dollars: number): OpenDocument => ({ issuedOn: addDays(on, -days - 30), dueOn: addDays(on, -days), balanceCents: dollars * 100 });

describe('aging by the age of the invoice', () => {
  // Lumen Learning, Financial Accounting, Larkin Co., rows A to D.
  const customers = {
    A: [aged(30, 40_000), aged(31, 17_500)],
    B: [aged(0, 22_000)],
    C: [aged(12, 14_500), aged(60, 50_000), aged(61, 10_000)],
    D: [aged(91, 8_000)],
  };

  test.each([
    ['A', [40_000, 17_500, 0, 0], 57_500],
    ['B', [22_000, 0, 0, 0], 22_000],
    ['C', [14_500, 50_000, 10_000, 0], 74_500],
    ['D', [0, 0, 0, 8_000], 8_000],
  ] as const)('customer %s owes %j by age', (name, buckets, total) => {
    const { bucketCents, totalCents } = agingOf(customers[name], on, 'invoiceAge');
    expect([bucketCents, totalCents]).toEqual([buckets.map((dollars) => dollars * 100), total * 100]);
  });

  test('the four customers together owe 76,500, 67,500, 10,000 and 8,000', () => {
    const { bucketCents, totalCents } = agingOf(Object.values(customers).flat(), on, 'invoiceAge');
    expect([bucketCents, totalCents]).toEqual([[7_650_000, 6_750_000, 1_000_000, 800_000], 16_200_000]);
  });
});

describe('aging by days past due', () => {
  // A textbook's hand-out, Ch. 7-03: 700,000 current, then 120,000, 80,000, 30,000 and 10,000; its rates give 73,100.
  test('the columns come to 940,000, and the hand-out’s rates to an allowance of 73,100', () => {
    const { bucketCents, totalCents } = agingOf([overdue(0, 700_000), overdue(30, 120_000), overdue(60, 80_000), overdue(90, 30_000), overdue(91, 10_000)], on, 'dueDay');
    expect([bucketCents, totalCents]).toEqual([[70_000_000, 12_000_000, 8_000_000, 3_000_000, 1_000_000], 94_000_000]);
    const rates = [5, 8, 20, 25, 50];
    expect(bucketCents.reduce((sum, cents, place) => sum + (cents * rates[place]!) / 100, 0)).toBe(7_310_000);
  });

  // An invoice of 2026-01-15, net 30, falls due on 2026-02-14; counted on a calendar.
  test.each([
    ['2026-02-14', 'Current'],
    ['2026-02-15', '1–30 days past due'],
    ['2026-03-16', '1–30 days past due'],
    ['2026-03-17', '31–60 days past due'],
    ['2026-04-15', '31–60 days past due'],
    ['2026-04-16', '61–90 days past due'],
    ['2026-05-15', '61–90 days past due'],
    ['2026-05-16', 'Over 90 days past due'],
  ])('on %s it stands in “%s”', (day, bucket) => {
    const invoice = { issuedOn: dayOf('2026-01-15'), dueOn: dayOf('2026-02-14') };
    expect(AGING_BUCKETS.dueDay[bucketOf(invoice, dayOf(day), 'dueDay')]!.name).toBe(bucket);
  });

  test('nothing open is nothing in every column', () => {
    expect(agingOf([], on, 'dueDay')).toEqual({ bucketCents: [0, 0, 0, 0, 0], totalCents: 0 });
  });
});

describe('whose income it is', () => {
  test.each([
    ['the teams of the game come first', { gameTeamIds: ['boys'], lineTeamIds: ['girls'], contractTeamIds: ['girls', 'boys'] }, ['boys']],
    ['without a game, the teams of the commitment', { gameTeamIds: [], lineTeamIds: ['girls'], contractTeamIds: ['girls', 'boys'] }, ['girls']],
    ['without either, the teams of the contract, each once', { gameTeamIds: [], lineTeamIds: [], contractTeamIds: ['girls', 'boys', 'girls'] }, ['girls', 'boys']],
    ['where no team is named, the department', { gameTeamIds: [], lineTeamIds: [], contractTeamIds: [] }, []],
  ])('%s', (_, where, teams) => {
    expect(teamsEarning(where)).toEqual(teams);
  });

  test.each([
    [100, ['a', 'b', 'c'], [34, 33, 33]],
    [-100, ['a', 'b', 'c'], [-34, -33, -33]],
    [1, ['a', 'b'], [1, 0]],
    [50, [], [50]],
  ])('%s cents over %j are %j', (amount, teams, parts) => {
    expect(splitIncome(centsOf(amount), teams).map((share) => share.cents)).toEqual(parts);
  });
});
