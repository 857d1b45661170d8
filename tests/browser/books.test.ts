import { readFileSync } from 'node:fs';
// @ts-expect-error the package carries no types
import UntypedPapa from 'papaparse';
import type { Page } from 'playwright-core';
import readExcelFile from 'read-excel-file/node';
import { expect, test, vi } from 'vitest';
import { addDays, firstOfMonth } from '../../server/domain/day.ts';
import { dayAt, instantOf } from '../../server/domain/instant.ts';
import { aPage, choose, field, figuresAre, open, paperFrom, press, settled, write } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aSeason } from '../support/season.ts';
import type { Season } from '../support/season.ts';

vi.setConfig({ testTimeout: 120_000 });

const Papa = UntypedPapa as { parse<Row>(text: string, options?: object): { data: Row[] } };
const lastMonth = firstOfMonth(addDays(firstOfMonth(dayAt(instantOf(new Date().toISOString()), 'America/Denver')), -1));
const monthName = new Date(`${lastMonth}T00:00:00Z`).toLocaleDateString('en-US', { month: 'long', year: 'numeric', timeZone: 'UTC' });

/** A charge of 500.00 of last month, on which 200.00 were paid. */
async function aMonthOfMoney(): Promise<{ department: Department; season: Season }> {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const { sellerId, payerId } = season;
  const charge = await department.bookkeeper.make('/api/charges', { sellerId, payerId, description: 'Interest on last season', amountCents: 50_000, issuedOn: addDays(lastMonth, 2) });
  await department.bookkeeper.make('/api/payments', { sellerId, payerId, receivedOn: addDays(lastMonth, 5), method: 'check', reference: '1041', amountCents: 20_000, applications: [{ invoiceId: charge.id, amountCents: 20_000 }] });
  return { department, season };
}

async function layOut(page: Page): Promise<void> {
  await open(page, '/journal-layouts', 'Journal layouts');
  await page.getByRole('link', { name: 'Tamarack Ridge Athletics' }).click();
  await settled(page, 'Journal of Tamarack Ridge Athletics');
  await write(page, { 'Name of the layout': 'District import' });
  await press(page, 'Add a part');
  await write(page, { 'Name of the part': 'Fund', 'Code, or what stands where none is given below': '21' });
  await press(page, 'Add a column');
  await choose(page, { 'What it holds': 'Code string, whole' });
  await write(page, { Heading: 'Fund' });
  await page.getByRole('region', { name: 'Five lines of the journal' }).getByRole('cell', { name: '21', exact: true }).first().waitFor();
  await press(page, 'Save');
  await page.getByText('The layout is saved. It holds from the next batch on.').waitFor();
}

test('a bookkeeper closes a month, lays the journal out, makes a batch, and its file is the same bytes twice and comes to zero', async () => {
  const { department } = await aMonthOfMoney();
  const page = await aPage({ visitor: department.bookkeeper });
  await open(page, '/months', 'Months');
  await page.getByRole('link', { name: monthName }).click();
  await settled(page, monthName);
  await press(page, `Close ${monthName}`);
  await press(page.getByRole('dialog'), `Close ${monthName}`);
  await page.getByText(`${monthName} is closed.`).waitFor();
  await layOut(page);

  await open(page, '/journal-batches', 'Journal');
  await page.getByRole('main').getByRole('link', { name: 'Make a batch' }).first().click();
  await settled(page, 'Next batch');
  await press(page, 'Make the batch');
  await press(page.getByRole('dialog'), 'Make the batch');
  await settled(page, /^Batch TR-J-\d{4}-0001$/);
  const [first, second] = [await paperFrom(page, 'Download (CSV)'), await paperFrom(page, 'Download (CSV)')];
  expect(first.name).toMatch(/^TR-J-\d{4}-0001\.csv$/);
  expect(readFileSync(first.path).equals(readFileSync(second.path))).toBe(true);
  const { data } = Papa.parse<Record<string, string>>(readFileSync(first.path, 'utf8').trim(), { header: true });
  const sum = (side: string) => data.reduce((cents, line) => cents + Math.round(Number(line[side] || 0) * 100), 0);
  expect([sum('Debit'), new Set(data.map((line) => line['Fund']))]).toEqual([sum('Credit'), new Set(['21'])]);
  expect(sum('Debit')).toBeGreaterThan(0);
});

test('an account of the trial balance leads to its ledger, whose two files hold the lines of the page', async () => {
  const { department } = await aMonthOfMoney();
  const page = await aPage({ visitor: department.bookkeeper });
  await open(page, '/trial-balance', 'Trial balance');
  await page.getByRole('link', { name: '1100 Accounts receivable' }).click();
  await settled(page, 'Account ledger');
  await page.getByLabel('From', { exact: true }).fill(lastMonth);
  await figuresAre(page, { Opening: '$0.00', Closing: '$300.00' });
  const amounts = async () => (await page.getByRole('region', { name: 'Ledger of Accounts receivable' }).getByRole('row').allInnerTexts()).slice(1).map((row) => row.split('\t').slice(2, 5).map((cell) => cell.replace(/[$,–]/g, '').trim()));
  await expect.poll(amounts).toEqual([['500.00', '', '500.00'], ['', '200.00', '300.00']]);
  const csv = await paperFrom(page, 'CSV file');
  const excel = await paperFrom(page, 'Excel file');
  expect([csv.name.replace(/\d{4}-\d{2}-\d{2}/, 'day'), excel.name.replace(/\d{4}-\d{2}-\d{2}/, 'day')]).toEqual(['account-1100-day.csv', 'account-1100-day.xlsx']);
  const rows = Papa.parse<string[]>(readFileSync(csv.path, 'utf8').replace(/^\uFEFF/, '').trim()).data;
  const [sheet] = await readExcelFile(excel.path);
  for (const cells of [rows.map((row) => row.map(String)), sheet!.data.map((row) => row.map((cell) => (cell === null ? '' : typeof cell === 'number' ? cell.toFixed(2) : String(cell))))]) {
    expect(cells.flat().filter((cell) => ['500.00', '200.00', '300.00'].includes(cell)).toSorted()).toEqual(['200.00', '300.00', '300.00', '500.00', '500.00']);
  }
});

test('a payment leads to its receipt, the receipt to the deposit slip, and the slip back; what is not deposited lies in the drawer', async () => {
  const department = await aDepartment();
  const { sellerId, payerId } = await aSeason(department, 0);
  const take = (reference: string) => department.announcer.make('/api/receipts', { sellerId, payerId, fromWhom: 'Hazel Juniper', takenOn: '2026-12-04', method: 'check', reference, amountCents: 5_000, whatFor: 'Game ball, opening night' });
  const [deposited, kept] = [await take('2041'), await take('2042')];
  const slip = await department.bookkeeper.make('/api/deposit-slips', { sellerId, depositedOn: '2026-12-07', paymentIds: [deposited.paymentId], countedCents: 5_000 });
  const page = await aPage({ visitor: department.bookkeeper });
  await open(page, `/payments/${deposited.paymentId}/show`, `Payment ${deposited.paymentNumber}`);
  expect(await page.getByText('In the drawer').count()).toBe(0);
  const follow = async (number: string, heading: string) => {
    await page.getByRole('main').getByRole('link', { name: number, exact: true }).click();
    await settled(page, heading);
  };
  await follow(deposited.number, `Receipt ${deposited.number}`);
  await follow(slip.number, `Deposit slip ${slip.number}`);
  await follow(deposited.paymentNumber, `Payment ${deposited.paymentNumber}`);
  await follow(slip.number, `Deposit slip ${slip.number}`);
  await follow(deposited.number, `Receipt ${deposited.number}`);
  await follow(deposited.paymentNumber, `Payment ${deposited.paymentNumber}`);
  await open(page, `/payments/${kept.paymentId}/show`, `Payment ${kept.paymentNumber}`);
  await page.getByText('In the drawer').waitFor();
});

/** Paid in forty pizzas of 12.00 each; a draft in which they are not written down. */
async function paidInPizzas(department: Department, { seasonId, sellerId, payerId, sponsorId, readKinds }: Season): Promise<string> {
  const contract = await department.director.make('/api/contracts', {
    sponsorId, sellerId, payerId, title: 'Pizzas for reads', isInKind: true,
    term: { seasonId, startsOn: '2026-11-20', endsOn: '2027-03-13', pricing: 'fixed', priceCents: 48_000, billingPlan: { kind: 'inFull', on: '2027-03-13' } },
    commitments: [{ readKindId: readKinds.concession, counting: 'perTerm', reads: 12, rateCents: 4_000 }], benefits: [],
  });
  return contract.id;
}

test.each([
  ['billed', 'Bill what is missing', 'The invoice is issued.', { priceCents: 48_000, receivableCents: 37_800 }],
  ['let go', 'Let it go', 'It is let go.', { priceCents: 12_000, receivableCents: 0 }],
] as const)('goods are written down, some come, and what did not come is %s', async (_, label, success, standing) => {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const id = await paidInPizzas(department, season);
  const page = await aPage({ visitor: department.director });
  await open(page, `/contracts/${id}/show?tab=goods`, 'Pizzas for reads');
  await press(page, 'Write down the goods');
  const dialog = page.getByRole('dialog');
  await press(dialog, 'Add goods');
  await write(dialog, { What: 'Pizzas for the concession stand', 'How many': '40', 'One is worth': '12' });
  await dialog.getByText('They come to $480.00; the price is $480.00.').waitFor();
  await press(dialog, 'Save');
  await page.getByText('The goods are written down.').waitFor();
  await department.director.make(`/api/contracts/${id}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });

  await page.reload();
  await settled(page, 'Pizzas for reads');
  await press(page, 'Record delivery');
  expect(await field(dialog, 'How many').inputValue()).toBe('40');
  await write(dialog, { 'How many': '10', Proof: 'Taken in by Odell at the stand' });
  await press(dialog, 'Record delivery');
  await page.getByText('10 of 40').waitFor();
  await figuresAre(page, { Received: '$120.00', 'Still to come': '$360.00' });
  await press(page, label);
  await press(dialog, label);
  await page.getByText(success).waitFor();
  await expect.poll(() => page.getByRole('button', { name: label }).count()).toBe(0);
  expect((await department.director.look(`/api/contracts/${id}`)).standing).toMatchObject(standing);
});
