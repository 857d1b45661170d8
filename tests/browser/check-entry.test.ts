import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { aPage, choose, field, figuresAre, open, settled } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

const BUSINESSES = ['Juniper & Pike Hardware', 'Blue Lantern Tire', 'Snowmelt Creamery', 'Halvorsen Orthodontics', 'Okafor Family Insurance'];
const shown = (cents: number): string => (cents / 100).toLocaleString('en-US', { style: 'currency', currency: 'USD' });

/** Five payers; the first has two invoices open: 367.50 each. */
async function theMorningMail(): Promise<{ department: Department; season: Season }> {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const contract = await aSignedContract(department, season);
  for (const issuedOn of ['2026-11-23', '2027-01-15']) await department.bookkeeper.make('/api/invoices', { contractId: contract.id, issuedOn });
  for (const name of BUSINESSES.slice(1)) await department.director.make('/api/payers', { name });
  return { department, season };
}

const focusedLabel = (page: Page): Promise<string> => page.evaluate(() => (document.activeElement as HTMLInputElement).labels?.[0]?.textContent?.replace(/\s*\*$/, '') ?? document.activeElement?.textContent ?? '');

/** One check as a bookkeeper types it: nothing but the keyboard. */
async function enter(page: Page, letters: string, business: string, number: string, amount: string): Promise<void> {
  await expect.poll(() => focusedLabel(page)).toBe('From');
  await page.keyboard.type(letters);
  await page.getByRole('option', { name: business }).first().waitFor();
  await page.keyboard.press('Enter');
  await expect.poll(() => focusedLabel(page)).toBe('Check number');
  await page.keyboard.type(number);
  await page.keyboard.press('Enter');
  await page.keyboard.type(amount);
  await page.keyboard.press('Enter');
  await expect.poll(() => focusedLabel(page)).toBe('Record the check (Enter)');
  await page.keyboard.press('Enter');
}

test('twenty checks are entered by keyboard alone, agree with the tape, and go on one deposit slip', { timeout: 180_000 }, async () => {
  const { department } = await theMorningMail();
  const page = await aPage({ visitor: department.bookkeeper });
  await open(page, '/check-entry', 'Enter checks');
  await expect.poll(() => focusedLabel(page)).toBe('From');
  const checks = Array.from({ length: 20 }, (_, place) => ({ business: BUSINESSES[place % 5]!, number: String(3001 + place), cents: place === 0 ? 36_750 : place === 5 ? 40_000 : 1_000 + place * 25 }));
  const tapeCents = checks.reduce((sum, check) => sum + check.cents, 0);
  await field(page, 'Total of the tape').fill((tapeCents / 100).toFixed(2));
  await field(page, 'From').focus();
  for (const { business, number, cents } of checks) await enter(page, business.slice(0, 4).toLowerCase(), business, number, (cents / 100).toFixed(2));
  await page.getByText('The batch is what the tape says, to the cent.').waitFor();
  await figuresAre(page, { Entered: shown(tapeCents), Tape: shown(tapeCents) });
  const payments = await department.bookkeeper.look('/api/payments?perPage=100');
  expect([payments.total, payments.data.every((one: any) => one.isInDrawer)]).toEqual([20, true]);
  const paid = new Map(payments.data.map((one: any) => [one.reference, one.applications.map((part: any) => part.amountCents)]));
  expect([paid.get('3001'), paid.get('3006'), paid.get('3002')]).toEqual([[36_750], [36_750], []]);
  const slipLink = page.getByRole('link', { name: 'Make the deposit slip of these' });
  await slipLink.focus();
  await page.keyboard.press('Enter');
  await settled(page, 'Make a deposit slip');
  await page.getByRole('button', { name: 'Make the deposit slip' }).focus();
  await page.keyboard.press('Enter');
  await settled(page, 'Deposit slip TR-D-2027-0001');
  await figuresAre(page, { Deposited: shown(tapeCents), Checks: shown(tapeCents), Cash: '$0.00' });
});

test('a check that the network swallowed is kept, sent again under its key, and recorded once', { timeout: 120_000 }, async () => {
  const { department } = await theMorningMail();
  const page = await aPage({ visitor: department.bookkeeper });
  await open(page, '/check-entry', 'Enter checks');
  let swallowed = 0;
  // The first one reaches the server and its answer is lost; the second does not reach it.
  await page.route('**/api/payments', async (route) => {
    if (route.request().method() !== 'POST' || swallowed >= 2) return route.continue();
    swallowed += 1;
    if (swallowed === 1) await route.fetch();
    return route.abort('connectionfailed');
  });
  await enter(page, 'juni', BUSINESSES[0]!, '4001', '367.50');
  await page.getByText('Not recorded yet, sent again by itself.').first().waitFor();
  await page.reload();
  await settled(page, 'Enter checks');
  await page.getByRole('link', { name: 'TR-P-2027-0001' }).waitFor();
  await enter(page, 'blue', BUSINESSES[1]!, '4002', '12.00');
  await page.getByRole('link', { name: 'TR-P-2027-0002' }).waitFor();
  expect(swallowed).toBe(2);
  expect((await department.bookkeeper.look('/api/payments')).data.map((one: any) => one.reference).sort()).toEqual(['4001', '4002']);
});

test('a check that is entered twice is warned of, and one that the server refuses is corrected', { timeout: 120_000 }, async () => {
  const { department, season } = await theMorningMail();
  const { bookkeeper } = department;
  const page = await aPage({ visitor: bookkeeper });
  await open(page, '/check-entry', 'Enter checks');
  await enter(page, 'juni', BUSINESSES[0]!, '5001', '300.00');
  await page.getByRole('link', { name: 'TR-P-2027-0001' }).waitFor();
  await page.keyboard.type('juni');
  await page.getByRole('option', { name: BUSINESSES[0]! }).first().waitFor();
  await page.keyboard.press('Enter');
  await page.keyboard.type('5001');
  await page.keyboard.press('Enter');
  await page.keyboard.type('67.50');
  await page.keyboard.press('Enter');
  await page.getByText('Check 5001 of this payer is in this batch already.').waitFor();
  // Meanwhile somebody else records what is left of that invoice.
  const [invoice] = (await bookkeeper.look('/api/invoices?sort=dueOn')).data;
  await bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-01', method: 'transfer', amountCents: 6_750, applications: [{ invoiceId: invoice.id, amountCents: 6_750 }] });
  await page.keyboard.press('Enter');
  await page.getByText(/is open on this invoice/).waitFor();
  await page.getByRole('button', { name: 'Correct' }).click();
  await expect.poll(() => field(page, 'Amount').inputValue()).toBe('67.50');
});

test('a check entered by mistake is taken back: it counts no more, and what it paid is open again', { timeout: 120_000 }, async () => {
  const { department } = await theMorningMail();
  const page = await aPage({ visitor: department.bookkeeper });
  await open(page, '/check-entry', 'Enter checks');
  await enter(page, 'juni', BUSINESSES[0]!, '6001', '367.50');
  await page.getByRole('button', { name: 'Take back', exact: true }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Take back', exact: true }).click();
  await page.getByText('TR-P-2027-0001 taken back').waitFor();
  await figuresAre(page, { Entered: '$0.00' });
  expect((await department.bookkeeper.look('/api/invoices?unpaid=true')).total).toBe(2);
  expect((await department.bookkeeper.look('/api/drawer')).total).toBe(0);
});

test('money taken at the table is written down by the announcer, and its paper comes at once', { timeout: 120_000 }, async () => {
  const { department } = await theMorningMail();
  const page = await aPage({ visitor: department.announcer, width: 360 });
  await open(page, '/receipts/create', 'Write a receipt');
  await choose(page, { Payer: 'Blue Lantern Tire' });
  await field(page, 'Amount').fill('250');
  await field(page, 'Check number').fill('777');
  await page.getByRole('button', { name: 'Write the receipt' }).click();
  await settled(page, 'Receipt TR-R-2027-0001');
  const [paper] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Print the receipt (PDF)' }).click()]);
  expect(paper.suggestedFilename()).toBe('receipt-TR-R-2027-0001.pdf');
});

test.each([
  ['$367.50', 'Invoice TR-2027-0001'],
  ['0002', 'Invoice TR-2027-0002'],
  ['juniper', 'Invoice TR-2027-0001'],
  ['9177', 'Payment TR-P-2027-0001'],
])('“%s” finds %s', async (q, document) => {
  const { department, season } = await theMorningMail();
  await department.bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-01', method: 'check', reference: '9177', amountCents: 100 });
  const page = await aPage({ visitor: department.bookkeeper });
  await open(page, '/', 'Home');
  await page.getByRole('textbox', { name: 'Find a document' }).fill(q);
  await page.keyboard.press('Enter');
  await settled(page, 'Find a document');
  await page.getByRole('link', { name: document }).first().waitFor();
});
