import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { addDays } from '../../server/domain/day.ts';
import { dayAt, instantOf } from '../../server/domain/instant.ts';
import { aPage, choose, figuresAre, open, press, settled, write } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aSeason, aSignedContract } from '../support/season.ts';

const longAgo = addDays(dayAt(instantOf(new Date().toISOString()), 'America/Denver'), -150);
const dialog = (page: Page): Locator => page.getByRole('dialog');

/** 367.50 billed on the contract of Juniper & Pike, and a payment of it. */
async function paidInvoice(department: Department) {
  const season = await aSeason(department, 0);
  await department.director.patch('/api/department', { settings: { returnedCheckFeeCents: 2_500 } }, { version: 1 });
  const contract = await aSignedContract(department, season);
  const invoice = await department.bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  const payment = await department.bookkeeper.make('/api/payments', {
    sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-11-24', method: 'check', reference: '1041', amountCents: 36_750, applications: [{ invoiceId: invoice.id, amountCents: 36_750 }],
  });
  return { season, invoice, payment };
}

test('a check comes back: the bookkeeper says so, the invoice is unpaid again and the fee of the department is a charge', async () => {
  const department = await aDepartment();
  const { invoice, payment } = await paidInvoice(department);
  const page = await aPage({ visitor: department.bookkeeper });
  await open(page, `/payments/${payment.id}/show`, `Payment ${payment.number}`);
  await press(page, 'It came back');
  await write(dialog(page), { 'Came back on': '2026-11-26', 'The bank took': '12.00', Why: 'Not sufficient funds' });
  expect(await dialog(page).getByLabel('Charge the payer').inputValue()).toBe('25.00');
  await press(dialog(page), 'It came back');
  await page.getByText('Came back from the bank on Nov 26, 2026: Not sufficient funds. The bank took $12.00. It pays nothing any more.').waitFor();
  await figuresAre(page, { Received: '$367.50', Applied: '$0.00', 'Credit left': '$0.00' });
  expect(await page.getByRole('button', { name: 'It was a mistake' }).count()).toBe(0);
  await open(page, `/invoices/${invoice.id}/show`, `Invoice ${invoice.number}`);
  await figuresAre(page, { 'To pay': '$367.50', Unpaid: '$367.50' });
  await page.getByText('$367.50 of payment TR-P-2027-0001 was taken off invoice TR-2027-0001 again.').waitFor();
  await open(page, '/invoices', 'Invoices');
  await page.getByRole('link', { name: 'TR-2027-0002' }).click();
  await settled(page, 'Charge TR-2027-0002');
  await page.getByText('Fee for returned check 1041').first().waitFor();
  await figuresAre(page, { 'To pay': '$25.00', Unpaid: '$25.00' });
});

test('the bookkeeper asks to write off, the director finds it under Open money and approves, and money that comes after all pays it', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const { bookkeeper, director } = department;
  const charge = await bookkeeper.make('/api/charges', { sellerId: season.sellerId, payerId: season.payerId, description: 'Interest on last season', amountCents: 50_000, issuedOn: longAgo });
  const page = await aPage({ visitor: bookkeeper });
  await open(page, `/invoices/${charge.id}/show`, `Charge ${charge.number}`);
  await press(page, 'Ask to write off');
  await write(dialog(page), { Why: 'The store closed' });
  await press(dialog(page), 'Ask the director');
  await page.getByText('The athletic director decides.').waitFor();
  expect(await page.getByRole('button', { name: 'Approve' }).count()).toBe(0);

  const office = await aPage({ visitor: director });
  await open(office, '/open-money', 'Open money');
  await figuresAre(office, { Late: '$500.00', 'Write-offs to decide': '1' });
  await press(office, 'Approve');
  await press(dialog(office), 'Write it off');
  await office.getByText('Nothing is late. Every invoice that fell due is paid.').waitFor();

  await open(page, '/', 'Home');
  await open(page, `/invoices/${charge.id}/show`, `Charge ${charge.number}`);
  await figuresAre(page, { 'Written off': '$500.00', Unpaid: '$0.00' });
  await press(page, 'Money came after all');
  await write(dialog(page), { Amount: '200.00', Why: 'The trustee paid' });
  await press(dialog(page), 'Record it');
  await figuresAre(page, { 'Paid and credited': '$200.00', 'Written off': '$300.00', Unpaid: '$0.00' });
});

test('money that is left over is applied to an open invoice, and the rest paid back, under Open money', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const { bookkeeper } = department;
  const open100 = await bookkeeper.make('/api/charges', { sellerId: season.sellerId, payerId: season.payerId, description: 'Interest', amountCents: 10_000, issuedOn: '2026-11-20' });
  await bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-11-24', method: 'check', amountCents: 13_000 });
  const page = await aPage({ visitor: bookkeeper, width: 360 });
  await open(page, '/open-money', 'Open money');
  await figuresAre(page, { 'Not applied': '$130.00' });
  await press(page, 'Apply');
  await press(dialog(page), 'Apply it');
  await figuresAre(page, { 'Not applied': '$30.00' });
  await press(page, 'Refund');
  await choose(dialog(page), { By: 'Cash' });
  await press(dialog(page), 'Record the refund');
  await page.getByText('Nothing waits. Every payment and every credit is used.').waitFor();
  expect((await bookkeeper.look(`/api/invoices/${open100.id}`)).state).toBe('paid');
});
