import { parse } from 'csv-parse/sync';
import readExcelFile from 'read-excel-file/node';
import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { tellToTheEnd, theGoldenContract } from '../support/golden-contract.ts';
import { RandomSeason, lots } from '../support/random-season.ts';
import { aContract, aSeason, aSignedContract } from '../support/season.ts';
import { rollForwardAgain, trialBalanceAgain } from '../support/second-books.ts';

const figures = (line: any) => [line.signed, line.changed, line.billed, line.earned, line.collected];
const goods = (line: any) => [line.inKindAgreed, line.goodsReceived, line.inKindEarned];
const boardOf = ({ bookkeeper }: Department, query: string) => bookkeeper.look(`/api/boards/income?${query}`);

// LEDGER.md, section 5: K1. 817.50 came in, 150.00 went back with a fee of 12.00, 140.00 came in, 4.91 went out.
test('the golden contract is signed, billed, earned and collected month by month to the cent, for the fiscal year, the school year and its season', async () => {
  const golden = await theGoldenContract();
  await tellToTheEnd(golden);
  const { department, season } = golden;
  const byMonth = {
    '2024-11-01': [70_000, 0, 35_000, 0, 0],
    '2024-12-01': [0, 0, 0, 41_820, 36_750],
    '2025-01-01': [0, 12_000, 47_000, 19_950, 30_000],
    '2025-02-01': [0, -6_706, -6_706, 13_524, -1_200],
    '2025-03-01': [0, 0, 0, 0, 13_509],
  };
  const total = [70_000, 5_294, 75_294, 75_294, 79_059];
  const fiscal = await boardOf(department, 'over=fiscalYear&year=2025');
  expect([fiscal.title, fiscal.from, fiscal.to, fiscal.months.length, fiscal.monthsToCome]).toEqual(['Fiscal year 2025', '2024-07-01', '2025-06-30', 12, 0]);
  const told = (board: any) => Object.fromEntries(board.months.filter((line: any) => figures(line).some((cents) => cents !== 0)).map((line: any) => [line.month, figures(line)]));
  expect([told(fiscal), figures(fiscal.total), fiscal.fiscalYears]).toEqual([byMonth, total, []]);
  const school = await boardOf(department, 'over=schoolYear&year=2025');
  expect([school.title, school.from, school.to, told(school), figures(school.total)]).toEqual(['School year 2024–25', '2024-08-01', '2025-07-31', byMonth, total]);
  // In the season stands only what its invoices were paid: neither the bank's 12.00 nor the charge for it.
  const ofSeason = await boardOf(department, `over=season&seasonId=${season.seasonId}`);
  expect([ofSeason.title, ofSeason.from]).toEqual(['Basketball 2024-25', null]);
  expect(told(ofSeason)).toEqual({ ...byMonth, '2025-02-01': [0, -6_706, -6_706, 13_524, 0], '2025-03-01': [0, 0, 0, 0, 12_309] });
  expect(figures(ofSeason.total)).toEqual(total);
  expect([fiscal.teams, fiscal.schools].map((lines) => lines.map((line: any) => [line.teamName ?? line.schoolName, ...figures(line)]))).toEqual([
    [['Varsity boys', ...total]], [['Tamarack Ridge High School', ...total]],
  ]);
});

test('a season over two fiscal years is summed by each of them', async () => {
  const golden = await theGoldenContract();
  await tellToTheEnd(golden);
  const { department, season } = golden;
  await department.director.patch('/api/department', { fiscalYearStartsInMonth: 1 }, { version: (await department.director.look('/api/department')).version });
  const board = await boardOf(department, `over=season&seasonId=${season.seasonId}`);
  expect(board.fiscalYears.map((line: any) => [line.fiscalYear, ...figures(line)])).toEqual([[2024, 70_000, 0, 35_000, 41_820, 36_750], [2025, 0, 5_294, 40_294, 33_474, 42_309]]);
  expect((await boardOf(department, 'over=fiscalYear&year=2024')).total).toMatchObject({ signed: 70_000, earned: 41_820, collected: 36_750 });
});

test.each([31, 32])('over random books (%i) the board’s sums are those of the trial balance, the income by team and the second books', async (seed) => {
  const department = await aDepartment();
  const season = new RandomSeason(department, lots(seed));
  await season.begin();
  for (let step = 0; step < 30; step += 1) await season.step();
  for (const sellerId of season.sellerIds) {
    const board = await boardOf(department, `over=fiscalYear&year=2027&sellerId=${sellerId}`);
    const balance = await trialBalanceAgain(department, sellerId, '2027-06-30');
    const credit = (account: string) => 0 - (balance[account] ?? 0);
    expect([board.total.earned, board.total.inKindEarned, board.total.collected]).toEqual([
      credit('4000') + credit('4050') + credit('4090'), credit('4010'), 0 - credit('1000') - credit('1050'),
    ]);
    const rolled = await rollForwardAgain(department, sellerId, '2026-07-01', '2027-06-30');
    expect(board.total.billed + board.total.goodsReceived).toBe(rolled.reduce((sum, line) => sum + line.billed + line.goodsReceived + line.credited + line.voided, 0));
    const [agreed] = await department.ask<{ cents: number }>(`select coalesce(sum(case when from_account = 'promised' then amount else -amount end), 0)::bigint as cents from posting
      where department_id = $1 and seller_id = $2 and journal = 'agreed' and 'promised' in (from_account, to_account)`, [department.id, sellerId]);
    expect(board.total.signed + board.total.changed + board.total.inKindAgreed).toBe(agreed!.cents);
    for (const lines of [board.months, board.teams, board.schools, board.sellers.filter((line: any) => line.sellerId === sellerId)]) {
      for (const column of [figures, goods]) expect(column(board.total).map((_, at) => lines.reduce((sum: number, line: any) => sum + column(line)[at]!, 0))).toEqual(column(board.total));
    }
    const split = await department.bookkeeper.look(`/api/reports/income-split?sellerId=${sellerId}&from=2026-07-01&to=2027-06-30`);
    const earnedByTeam = board.teams.map((line: any) => [line.teamId, line.earned + line.inKindEarned]).filter(([, cents]: [string, number]) => cents !== 0);
    expect(earnedByTeam).toEqual(split.lines.map((line: any) => [line.teamId, line.totalCents]).filter(([, cents]: [string, number]) => cents !== 0));
  }
}, 180_000);

test('a price goes evenly to the teams that a contract names, else to those it covers, the first a cent larger, and benefits alone to none', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const { director } = department;
  const girls = await director.make('/api/teams', { seasonId: season.seasonId, schoolId: season.schoolId, name: 'Varsity girls', level: 'varsity' });
  const juniors = await director.make('/api/teams', { seasonId: season.seasonId, schoolId: season.schoolId, name: 'JV boys', level: 'juniorVarsity' });
  const line = (more: object) => [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 4, rateCents: 1_000, ...more }];
  await aSignedContract(department, season, { title: 'Named', priceCents: 10_001, commitments: line({ teamIds: [girls.id, juniors.id] }) });
  await aSignedContract(department, season, { title: 'Covered', priceCents: 3_001, commitments: line({ levels: ['varsity'] }) });
  await aSignedContract(department, season, { title: 'A banner', priceCents: 500, commitments: [], benefits: [{ name: 'Banner on the north rail', quantity: 1, rateCents: 500 }] });
  const board = await boardOf(department, 'over=fiscalYear&year=2027');
  // Teams that are covered come in the order of their names: the boys before the girls.
  expect(board.teams.map((one: any) => [one.teamName, one.signed])).toEqual([['JV boys', 5_000], ['Varsity boys', 1_501], ['Varsity girls', 5_001 + 1_500], [null, 500]]);
  expect(board.schools.map((one: any) => [one.schoolName, one.signed])).toEqual([['Tamarack Ridge High School', 13_002], [null, 500]]);
  expect(board.total.signed).toBe(13_502);
});

test('books of two sellers are never added up, and what is paid in goods stands apart', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const { director, bookkeeper } = department;
  const club = await director.make('/api/sellers', { name: 'Kestrel Boosters', numberPrefix: 'KB' });
  await aSignedContract(department, season);
  const drawn = await director.make('/api/contracts', {
    sponsorId: season.sponsorId, sellerId: club.id, payerId: season.payerId, title: 'Pizzas for reads', isInKind: true,
    term: { seasonId: season.seasonId, startsOn: '2026-11-20', endsOn: '2027-03-13', pricing: 'fixed', priceCents: 60_000, billingPlan: { kind: 'inFull', on: '2027-03-13' } },
    commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 12, rateCents: 5_000 }], benefits: [],
  });
  const path = `/api/contracts/${drawn.id}`;
  const { body } = await director.put(`${path}/goods-promises`, { promises: [{ what: 'Pizzas', quantity: 40, unitCents: 1_500, dueOn: '2026-11-21' }] }, { version: (await director.look(`${path}/goods-promises`)).version });
  await director.make(`${path}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
  await bookkeeper.make(`${path}/goods-deliveries`, { promiseId: body.promises[0].id, receivedOn: '2026-11-25', quantity: 12, proof: 'Taken in at the stand' });
  const school = await boardOf(department, `over=fiscalYear&year=2027&sellerId=${season.sellerId}`);
  const boosters = await boardOf(department, `over=fiscalYear&year=2027&sellerId=${club.id}`);
  expect([figures(school.total), goods(school.total)]).toEqual([[70_000, 0, 0, 0, 0], [0, 0, 0]]);
  expect([figures(boosters.total), goods(boosters.total)]).toEqual([[0, 0, 0, 0, 0], [60_000, 18_000, 0]]);
  expect(school.sellers.map((line: any) => [line.sellerName, line.signed, line.inKindAgreed])).toEqual([['Kestrel Boosters', 0, 60_000], ['Tamarack Ridge Athletics', 70_000, 0]]);
});

test('a department that begins has a board of nothing, a draft is no income, and a year that runs ends with this month', async () => {
  const department = await aDepartment();
  const nothing = await boardOf(department, '');
  expect([nothing.sellerId, nothing.over, nothing.teams, nothing.schools, nothing.sellers, Object.values(nothing.total)]).toEqual([null, 'fiscalYear', [], [], [], [0, 0, 0, 0, 0, 0, 0, 0]]);
  expect((await boardOf(department, 'over=season')).title).toBe('No season yet');
  const season = await aSeason(department, 0);
  await aContract(department, season);
  const board = await boardOf(department, '');
  expect([board.sellerName, figures(board.total), board.months.length + board.monthsToCome]).toEqual(['Tamarack Ridge Athletics', [0, 0, 0, 0, 0], 12]);
  expect(board.months.at(-1).month).toBe(`${board.today.slice(0, 7)}-01`);
  expect((await boardOf(department, `over=season&seasonId=${season.seasonId}`)).months).toEqual([]);
});

test('each table of the board is a CSV file and a workbook whose last row is the total', async () => {
  const golden = await theGoldenContract();
  const { department, contractId, season } = golden;
  await department.director.make(`/api/contracts/${contractId}/sign`, { signedOn: '2024-11-20', signedByName: 'Hazel Juniper' });
  for (const table of ['months', 'teams', 'schools', 'sellers']) {
    const address = `/api/boards/income?over=season&seasonId=${season.seasonId}&table=${table}`;
    const rows = parse((await department.bookkeeper.bytes(`${address}&as=csv`)).bytes, { bom: true }) as string[][];
    const [sheet] = await readExcelFile((await department.bookkeeper.bytes(`${address}&as=xlsx`)).bytes);
    expect(sheet!.data.length).toBe(rows.length);
    expect(rows.at(-1)!.filter((cell) => cell !== '')[1]).toBe('700.00');
  }
  expect((await department.bookkeeper.get(`/api/boards/income?over=season&seasonId=${contractId}`)).status).toBe(404);
  expect((await department.announcer.get('/api/boards/income')).status).toBe(403);
});
