import { parse } from 'csv-parse/sync';
import readExcelFile from 'read-excel-file/node';
import { expect, test } from 'vitest';
import { addDays } from '../../server/domain/day.ts';
import type { Day } from '../../server/domain/day.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { pagesOfPdf } from '../support/pdf.ts';
import { RandomSeason, lots } from '../support/random-season.ts';
import { TableDevice, aSeason, aSignedContract } from '../support/season.ts';
import { agingAgain, rollForwardAgain, trialBalanceAgain } from '../support/second-books.ts';

/** Account → debit less credit, as the report has it. */
async function trialBalanceOf({ bookkeeper }: Department, sellerId: string, on: string): Promise<Record<string, number>> {
  const report = await bookkeeper.look(`/api/reports/trial-balance?sellerId=${sellerId}&on=${on}`);
  expect(report.debitCents).toBe(report.creditCents);
  return Object.fromEntries(report.lines.map((line: any) => [line.account, line.debitCents - line.creditCents]));
}

async function agreesWithTheSecondBooks(department: Department, sellerId: string, on: Day): Promise<void> {
  const { bookkeeper } = department;
  const balance = await trialBalanceOf(department, sellerId, on);
  for (const by of ['dueDay', 'invoiceAge'] as const) {
    const aging = await bookkeeper.look(`/api/reports/aging?sellerId=${sellerId}&on=${on}&by=${by}`);
    const byPayer: Record<string, number> = {};
    for (const line of aging.lines) line.bucketCents.forEach((cents: number, place: number) => cents !== 0 && (byPayer[`${line.payerId} ${place}`] = cents));
    expect(byPayer).toEqual(await agingAgain(department, sellerId, on, by));
    expect([aging.totalCents, aging.unappliedCents]).toEqual([balance['1100'] ?? 0, 0 - (balance['2150'] ?? 0)]);
  }
  const from = addDays(on, -25);
  const rolled = await bookkeeper.look(`/api/reports/roll-forward?sellerId=${sellerId}&from=${from}&to=${on}`);
  const again = await rollForwardAgain(department, sellerId, from, on);
  const lines = [...rolled.lines].sort((one: any, other: any) => (one.contractId < other.contractId ? -1 : 1));
  expect(lines).toEqual(again.map((line) => expect.objectContaining({ ...line, takenOver: 0, carried: 0, allowed: 0, differenceCents: 0 })));
  const before = await trialBalanceOf(department, sellerId, addDays(from, -1));
  expect([rolled.total.openingCents, rolled.total.closingCents]).toEqual([0 - (before['2100'] ?? 0), 0 - (balance['2100'] ?? 0)]);
  const income = await bookkeeper.look(`/api/reports/income-split?sellerId=${sellerId}&from=${from}&to=${on}`);
  const revenue = (account: string) => (before[account] ?? 0) - (balance[account] ?? 0);
  const { sponsorshipCents, inKindCents, unreadCents, allowancesCents } = income.total;
  expect([sponsorshipCents, inKindCents, unreadCents, allowancesCents]).toEqual(['4000', '4010', '4050', '4090'].map(revenue));
}

test.each([11, 12])('over random books (%i) the reports agree to the cent with a second implementation, and every step balances', async (seed) => {
  const department = await aDepartment();
  const lot = lots(seed);
  const season = new RandomSeason(department, lot);
  await season.begin();
  const told: string[] = [];
  for (let step = 0; step < 36; step += 1) {
    told.push(await season.step());
    for (const sellerId of season.sellerIds) {
      const balance = await trialBalanceOf(department, sellerId, '2026-12-31');
      expect([told.at(-1), Object.values(balance).reduce((sum, cents) => sum + cents, 0)]).toEqual([told.at(-1), 0]);
      expect([told.at(-1), balance]).toEqual([told.at(-1), await trialBalanceAgain(department, sellerId, '2026-12-31')]);
    }
    if (step % 9 === 8) for (const sellerId of season.sellerIds) await agreesWithTheSecondBooks(department, sellerId, addDays(season.day, lot(40) - 20));
  }
  for (const sellerId of season.sellerIds) await agreesWithTheSecondBooks(department, sellerId, '2026-12-31' as Day);
}, 180_000);

/** The golden contract up to its second invoice, one night of it played; what is posted is in LEDGER.md. */
async function aGoldenStart() {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const { director, bookkeeper, announcer } = department;
  const { version } = await director.look(`/api/sponsors/${season.sponsorId}`);
  await director.patch(`/api/sponsors/${season.sponsorId}`, { name: '=HYPERLINK("x")' }, { version });
  const contract = await aSignedContract(department, season);
  const invoice = await bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  const device = new TableDevice();
  const { gameId, nightId } = season.games[0]!;
  const entries = contract.commitments.map((line: any, cue: number) => device.read(line.id, gameId, cue + 1));
  await announcer.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries });
  await director.make(`/api/nights/${nightId}/sign-off`, { overrideReason: 'the test does not wait for the night' });
  await bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-05', method: 'check', amountCents: 20_000, applications: [{ invoiceId: invoice.id, amountCents: 16_750 }] });
  return { department, season, contract, invoice };
}

test('each report answers as JSON, as CSV and as a workbook, and no sponsor’s name becomes a formula', async () => {
  const { department, season } = await aGoldenStart();
  const { bookkeeper } = department;
  const on = '2026-12-31';
  const reports = {
    'trial-balance': `on=${on}`, 'account-ledger': `account=1100&from=2026-11-01&to=${on}`, aging: `on=${on}&by=dueDay`,
    'roll-forward': `from=2026-11-01&to=${on}`, 'income-split': `from=2026-11-01&to=${on}`,
  };
  const firstLines: Record<string, unknown> = {};
  for (const [report, query] of Object.entries(reports)) {
    const address = `/api/reports/${report}?sellerId=${season.sellerId}&${query}`;
    const csv = await bookkeeper.bytes(`${address}&format=csv`);
    const xlsx = await bookkeeper.bytes(`${address}&format=xlsx`);
    expect([csv.status, csv.headers.get('content-type'), xlsx.status]).toEqual([200, 'text/csv; charset=utf-8; header=present', 200]);
    expect(csv.headers.get('content-disposition')).toMatch(/^attachment; filename="[a-z0-9-]+-Tamarack-Ridge-Athletics-[0-9-]+\.csv"$/);
    const rows = parse(csv.bytes, { bom: true }) as string[][];
    const [sheet] = await readExcelFile(xlsx.bytes);
    expect(sheet!.data.length).toBe(rows.length);
    firstLines[report] = rows[1];
  }
  expect(firstLines).toEqual({
    'trial-balance': ['1000', 'Cash', '', '200.00', '0.00'],
    'account-ledger': ['2026-11-01', '', 'Opening balance', '', '', '', '', '', '0.00'],
    aging: [`'=HYPERLINK("x")`, 'Juniper & Pike Hardware', '0.00', '200.00', '0.00', '0.00', '0.00', '200.00', '32.50', 'TR-2027-0001'],
    'roll-forward': ['C-2027-0001', 'Game balls and concession reads', `'=HYPERLINK("x")`, '0.00', '0.00', '350.00', '0.00', '0.00', '-104.56', '0.00', '0.00', '0.00', '0.00', '245.44', '0.00'],
    'income-split': ['Tamarack Ridge High School', 'Varsity boys', 'Basketball 2026-27', '104.56', '0.00', '0.00', '0.00', '104.56'],
  });
});

test('a day in the past shows what was open then', async () => {
  const { department, season } = await aGoldenStart();
  const at = async (on: string) => {
    const { totalCents, unappliedCents } = await department.bookkeeper.look(`/api/reports/aging?sellerId=${season.sellerId}&on=${on}`);
    return [totalCents, unappliedCents];
  };
  expect([await at('2026-11-22'), await at('2026-11-23'), await at('2026-12-04'), await at('2026-12-05')]).toEqual([[0, 0], [36_750, 0], [36_750, 0], [20_000, 3_250]]);
});

test('an account’s ledger tells each posting with its sentence, its document and what stood after it', async () => {
  const { department, season, contract, invoice } = await aGoldenStart();
  const ledger = await department.bookkeeper.look(`/api/reports/account-ledger?sellerId=${season.sellerId}&account=1100&from=2026-12-01&to=2026-12-31`);
  expect([ledger.name, ledger.openingCents, ledger.closingCents, ledger.leftOff]).toEqual(['Accounts receivable', 36_750, 20_000, 0]);
  expect(ledger.lines).toMatchObject([
    { bookedOn: '2026-12-05', sentence: `$167.50 of payment TR-P-2027-0001 was applied to invoice ${invoice.number}.`, contractId: contract.id, against: '2150', creditCents: 16_750, balanceCents: 20_000 },
  ]);
  expect((await department.bookkeeper.get(`/api/reports/account-ledger?account=9999`)).status).toBe(404);
});

test('a sponsor’s account statement runs from an opening to a closing balance, on screen, in a file and on paper', async () => {
  const { department, season, invoice } = await aGoldenStart();
  const address = `/api/sponsors/${season.sponsorId}/account-statement`;
  const { sellers } = await department.bookkeeper.look(`${address}?from=2026-12-01&to=2026-12-31`);
  expect(sellers).toMatchObject([{ sellerName: 'Tamarack Ridge Athletics', openingCents: 36_750, closingCents: 16_750, openCents: 20_000, unappliedCents: 3_250, bucketCents: [0, 20_000, 0, 0, 0] }]);
  expect(sellers[0].lines.map((line: any) => [line.on, line.sentence, line.chargeCents, line.creditCents, line.balanceCents])).toEqual([
    ['2026-12-05', 'Payment TR-P-2027-0001 of $200.00 was received by check.', 0, 20_000, 16_750],
  ]);
  const whole = await department.bookkeeper.look(`${address}?from=2026-11-01&to=2026-12-31`);
  expect(whole.sellers[0].lines[0]).toMatchObject({ sentence: `Invoice ${invoice.number} was issued: $350.00 and $17.50 tax.`, chargeCents: 36_750 });
  const paper = await department.bookkeeper.bytes(`${address}.pdf?from=2026-11-01&to=2026-12-31`);
  const text = (await pagesOfPdf(paper.bytes)).join(' ');
  for (const words of ['Account statement', '=HYPERLINK("x")', 'Opening balance', invoice.number, '$367.50', '$167.50', '1–30 days past due', '$32.50 of credit is not applied']) expect(text).toContain(words);
  expect((await department.bookkeeper.get(`${address}?from=2026-12-31&to=2026-12-01`)).body.code).toBe('ends-before-it-starts');
});
