import { expect, test } from 'vitest';
import { addDays } from '../../server/domain/day.ts';
import { dayAt, instantOf } from '../../server/domain/instant.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

/** Late on whatever day the test runs: 150 days ago, due 30 days later. */
const longAgo = addDays(dayAt(instantOf(new Date().toISOString()), 'America/Denver'), -150);

/** The balance of money accounts, debit +, in dollars, as LEDGER.md writes them. */
async function books({ ask }: Department): Promise<Record<string, number>> {
  const rows = await ask<{ account: string; cents: number }>(
    `select account, sum(cents)::bigint as cents from (
       select to_account as account, amount as cents from posting where department_id = current_department() and journal = 'money'
       union all select from_account, -amount from posting where department_id = current_department() and journal = 'money') as moved
     group by account having sum(cents) <> 0`,
  );
  const names: Record<string, string> = { 1000: 'cash', 1050: 'drawer', 1100: 'AR', 2100: 'CB', 2150: 'UC', 2200: 'ST', 4090: 'AL', 4200: 'fees', 5100: 'BD', 5200: 'bank' };
  return Object.fromEntries(rows.map(({ account, cents }) => [names[account] ?? account, Number(cents) / 100]));
}

interface Billed {
  department: Department;
  season: Season;
  contract: any;
  invoice: any;
  pay(form?: object): Promise<any>;
}

/** Half of 700.00 billed: 350.00 and 17.50 tax. */
async function billed(): Promise<Billed> {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const contract = await aSignedContract(department, season);
  const invoice = await department.bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  const base = { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-05', method: 'check', reference: '1041' };
  return { department, season, contract, invoice, pay: (form = {}) => department.bookkeeper.make('/api/payments', { ...base, amountCents: 36_750, applications: [{ invoiceId: invoice.id, amountCents: 36_750 }], ...form }) };
}

test('a check that comes back opens the invoice again, its fee is passed on, and the charge is numbered among the invoices', async () => {
  const { department, season, invoice, contract, pay } = await billed();
  const { bookkeeper } = department;
  const payment = await pay();
  const back = { kind: 'returned', returnedOn: '2026-12-10', bankFeeCents: 1_200, reason: 'Not sufficient funds' };
  const returned = await bookkeeper.make(`/api/payments/${payment.id}/return`, back);
  expect(returned).toMatchObject({ returnKind: 'returned', returnedOn: '2026-12-10', bankFeeCents: 1_200, appliedCents: 0, unappliedCents: 0 });
  expect(returned.applications).toMatchObject([{ invoiceId: invoice.id, takenBack: true }]);
  expect(await bookkeeper.look(`/api/invoices/${invoice.id}`)).toMatchObject({ balanceCents: 36_750, appliedCents: 0 });
  expect(await books(department)).toEqual({ cash: -12, AR: 367.5, CB: -350, ST: -17.5, bank: 12 });
  expect((await bookkeeper.post(`/api/payments/${payment.id}/return`, back)).body.code).toBe('payment-returned-already');

  const charge = await bookkeeper.make('/api/charges', { payerId: season.payerId, sellerId: season.sellerId, contractId: contract.id, description: 'Fee of returned check 1041', amountCents: 1_200, issuedOn: '2026-12-10' });
  expect([charge.number, charge.kind, charge.grossCents, charge.taxCents, charge.sponsorName]).toEqual(['TR-2027-0002', 'charge', 1_200, 0, 'Juniper & Pike Hardware']);
  expect((await bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2027-01-15', issuedOn: '2027-01-15' })).number).toBe('TR-2027-0003');
  expect(await books(department)).toMatchObject({ AR: 747, fees: -12, bank: 12 });
  expect((await bookkeeper.bytes(`/api/invoices/${charge.id}/invoice.pdf`)).bytes.subarray(0, 5).toString()).toBe('%PDF-');
  const { lines } = await bookkeeper.look(`/api/invoices/${invoice.id}/story`);
  expect(lines.map((line: any) => [line.on, line.sentence])).toEqual([
    ['2026-11-23', 'Invoice TR-2027-0001 was issued: $350.00 and $17.50 tax.'],
    ['2026-12-05', '$367.50 of payment TR-P-2027-0001 was applied to invoice TR-2027-0001.'],
    ['2026-12-10', '$367.50 of payment TR-P-2027-0001 was taken off invoice TR-2027-0001 again.'],
  ]);
  const account = await bookkeeper.look(`/api/contracts/${contract.id}/account-statement`);
  expect(account.lines.map((line: any) => line.sentence)).toContain('Payment TR-P-2027-0001 of $367.50 came back from the bank, which charged $12.00: Not sufficient funds.');
  expect(account.lines[0].after).toMatchObject({ receivable: 74_700, unapplied: 0 });
});

test('what came back pays nothing any more: it is neither applied nor refunded nor taken off again', async () => {
  const { department, invoice, pay } = await billed();
  const { bookkeeper } = department;
  const payment = await pay();
  await bookkeeper.make(`/api/payments/${payment.id}/return`, { kind: 'returned', returnedOn: '2026-12-10', reason: 'Account closed' });
  expect((await bookkeeper.post(`/api/payments/${payment.id}/applications`, { invoiceId: invoice.id, amountCents: 1 })).body.code).toBe('more-than-unapplied');
  expect((await bookkeeper.post(`/api/payments/${payment.id}/refunds`, { amountCents: 1, refundedOn: '2026-12-11', method: 'check' })).body.code).toBe('more-than-unapplied');
  expect((await bookkeeper.post(`/api/applications/${payment.applications[0].id}/take-back`)).body.code).toBe('application-taken-back-already');
});

test('a mistake is undone, without a fee of the bank', async () => {
  const { department, season, invoice, pay } = await billed();
  const { bookkeeper, ask } = department;
  const payment = await pay();
  expect((await bookkeeper.post(`/api/payments/${payment.id}/return`, { kind: 'mistake', returnedOn: '2026-12-06', bankFeeCents: 1, reason: 'Typed twice' })).body.code).toBe('fee-of-a-mistake');
  await bookkeeper.make(`/api/payments/${payment.id}/return`, { kind: 'mistake', returnedOn: '2026-12-06', reason: 'Typed twice' });
  expect(await books(department)).toEqual({ AR: 367.5, CB: -350, ST: -17.5 });
  expect(await ask('select kind from payment_return where department_id = current_department()')).toEqual([{ kind: 'mistake' }]);
  expect((await bookkeeper.look(`/api/invoices?sellerId=${season.sellerId}`)).data).toMatchObject([{ id: invoice.id, balanceCents: 36_750 }]);
});

test('a mistake is taken out of the drawer while it lies there, and out of the bank once it was deposited', async () => {
  const { department, season, pay } = await billed();
  const { bookkeeper, director } = department;
  const inDrawer = () => pay({ amountCents: 1_000, applications: [], drawer: 'undepositedReceipts' });
  const mistake = (id: string) => bookkeeper.make(`/api/payments/${id}/return`, { kind: 'mistake', returnedOn: '2026-12-09', reason: 'Typed twice' });
  const [lying, deposited] = [await inDrawer(), await inDrawer()];
  expect(await books(department)).toMatchObject({ drawer: 20, UC: -20 });
  await mistake(lying.id);
  expect(await books(department)).toMatchObject({ drawer: 10, UC: -10 });
  const slip = (paymentId: string) => director.post('/api/deposit-slips', { sellerId: season.sellerId, depositedOn: '2026-12-08', paymentIds: [paymentId], countedCents: 1_000 });
  expect((await slip(lying.id)).body.code).toBe('payment-not-in-drawer');
  expect((await slip(deposited.id)).status).toBe(201);
  expect(await books(department)).toMatchObject({ cash: 10, UC: -10 });
  await mistake(deposited.id);
  expect(await books(department)).toEqual({ AR: 367.5, CB: -350, ST: -17.5 });
});

test('1,300.00 paid on 1,260.00 leaves 40.00, which is refunded to the cent and not beyond, once for each key', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const { bookkeeper } = department;
  const contract = await aSignedContract(department, season, { term: { seasonId: season.seasonId, startsOn: '2026-11-20', endsOn: '2027-03-13', priceCents: 120_000, billingPlan: { kind: 'inFull', on: '2026-11-23' } } });
  const invoice = await bookkeeper.make('/api/invoices', { contractId: contract.id, issuedOn: '2026-11-23' });
  expect(invoice.grossCents).toBe(126_000);
  const payment = await bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-05', method: 'check', amountCents: 130_000, applications: [{ invoiceId: invoice.id, amountCents: 126_000 }] });
  expect(payment.unappliedCents).toBe(4_000);
  const refund = (amountCents: number, key?: string) => bookkeeper.post(`/api/payments/${payment.id}/refunds`, { amountCents, refundedOn: '2026-12-07', method: 'check', reference: '2088' }, key ? { key } : {});
  expect((await refund(4_001)).body.code).toBe('more-than-unapplied');
  for (const bad of [0, -1, 0.5, 2 ** 53]) expect((await refund(bad)).status).toBe(400);
  const key = 'one-refund-sent-twice';
  expect((await refund(4_000, key)).body).toMatchObject({ refundedCents: 4_000, unappliedCents: 0 });
  expect((await refund(4_000, key)).body).toMatchObject({ refundedCents: 4_000, unappliedCents: 0 });
  expect((await refund(1)).body.code).toBe('more-than-unapplied');
  expect(await books(department)).toEqual({ cash: 1_260, CB: -1_200, ST: -60 });
  expect((await bookkeeper.post(`/api/payments/${payment.id}/return`, { kind: 'returned', returnedOn: '2026-12-08', reason: 'No funds' })).body.code).toBe('more-than-unapplied');
});

test('2 % for paying early on 350.00 and 17.50 leaves 360.50 to pay; the tax stays unless it is named', async () => {
  const { department, invoice, pay } = await billed();
  const { bookkeeper } = department;
  const discount = (form: object) => bookkeeper.post(`/api/invoices/${invoice.id}/discounts`, { takenOn: '2026-12-03', reason: 'Paid within ten days', ...form });
  expect((await discount({})).body.code).toBe('discount-by-one-way');
  expect((await discount({ basisPoints: 200, amountCents: 700 })).body.code).toBe('discount-by-one-way');
  expect((await discount({ basisPoints: 200 })).body).toMatchObject({ balanceCents: 36_050, discountCents: 700, state: 'open' });
  const paid = await pay({ amountCents: 36_050, applications: [{ invoiceId: invoice.id, amountCents: 36_050 }] });
  expect(paid.unappliedCents).toBe(0);
  expect((await bookkeeper.look(`/api/invoices/${invoice.id}`)).state).toBe('paid');
  expect(await books(department)).toEqual({ cash: 360.5, CB: -350, ST: -17.5, AL: 7 });
  expect((await discount({ amountCents: 1 })).body.code).toBe('more-than-balance');
  expect((await bookkeeper.post(`/api/invoices/${invoice.id}/void`, { reason: 'x' })).body.code).toBe('void-after-payment');
});

test('a discount that names its tax gives it back, and stands in the way of voiding', async () => {
  const { department, invoice } = await billed();
  const { bookkeeper } = department;
  await bookkeeper.make(`/api/invoices/${invoice.id}/discounts`, { amountCents: 1_000, taxCents: 50, takenOn: '2026-12-03', reason: 'Paid within ten days' });
  expect(await books(department)).toEqual({ AR: 357, CB: -350, ST: -17, AL: 10 });
  expect((await bookkeeper.post(`/api/invoices/${invoice.id}/void`, { reason: 'x' })).body.code).toBe('void-after-credit');
});

test('a payment pays no stranger’s invoice, and that of the same sponsor’s head office', async () => {
  const { department, season, invoice, pay } = await billed();
  const { director, bookkeeper } = department;
  const office = await director.make('/api/payers', { name: 'Juniper & Pike, head office', sponsorId: season.sponsorId });
  const stranger = await director.make('/api/payers', { name: 'Blue Lantern Tire' });
  const from = (payerId: string) => bookkeeper.post('/api/payments', { sellerId: season.sellerId, payerId, receivedOn: '2026-12-05', method: 'check', amountCents: 100, applications: [{ invoiceId: invoice.id, amountCents: 100 }] });
  expect((await from(stranger.id)).body.code).toBe('payment-of-another-payer');
  expect((await from(office.id)).status).toBe(201);
  expect((await pay({ amountCents: 36_650, applications: [{ invoiceId: invoice.id, amountCents: 36_650 }] })).unappliedCents).toBe(0);
  const charge = (form: object) => bookkeeper.post('/api/charges', { sellerId: season.sellerId, payerId: stranger.id, description: 'Fee', amountCents: 100, issuedOn: '2026-12-05', ...form });
  expect((await charge({ contractId: invoice.contractId })).body.code).toBe('contract-of-another-payer');
  const boosters = await director.make('/api/sellers', { name: 'Kestrel Boosters', numberPrefix: 'KB' });
  expect((await charge({ sellerId: boosters.id, payerId: season.payerId, contractId: invoice.contractId })).body.code).toBe('contract-of-another-seller');
  expect((await charge({ sellerId: boosters.id })).body.number).toBe('KB-2027-0001');
});

test('money is dated within the fiscal years around today: a mistyped year is refused and nothing is kept', async () => {
  const { department, season } = await billed();
  const { bookkeeper } = department;
  const on = (receivedOn: string) => bookkeeper.post('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn, method: 'cash', amountCents: 100 });
  expect((await on('2199-12-31')).body).toMatchObject({ status: 422, code: 'day-too-far-ahead' });
  expect((await on('1926-12-05')).body).toMatchObject({ status: 422, code: 'day-too-long-ago' });
  expect((await bookkeeper.look('/api/payments')).total).toBe(0);
});

test('a returned check and the fee passed on are recorded in one step, or neither is', async () => {
  const { department, invoice, pay } = await billed();
  const { bookkeeper } = department;
  const payment = await pay();
  const back = (form: object) => bookkeeper.post(`/api/payments/${payment.id}/return`, { kind: 'returned', returnedOn: '2026-12-10', bankFeeCents: 1_200, chargeCents: 2_500, reason: 'No funds', ...form });
  expect((await back({ kind: 'mistake', bankFeeCents: 0 })).body.code).toBe('fee-of-a-mistake');
  expect((await back({})).status).toBe(200);
  const { data } = await bookkeeper.look('/api/invoices?sort=number');
  expect(data.map((one: any) => [one.number, one.kind, one.balanceCents, one.contractId])).toEqual([
    ['TR-2027-0001', 'invoice', 36_750, invoice.contractId],
    ['TR-2027-0002', 'charge', 2_500, invoice.contractId],
  ]);
  expect(await books(department)).toEqual({ cash: -12, AR: 392.5, CB: -350, ST: -17.5, fees: -25, bank: 12 });
});

test('what is late, what is left over and what waits for the director stand on one page, with what each could be used on', async () => {
  const { department, season, invoice, pay } = await billed();
  const { bookkeeper, director } = department;
  const boosters = await director.make('/api/sellers', { name: 'Kestrel Boosters', numberPrefix: 'KB' });
  const late = await bookkeeper.make('/api/charges', { sellerId: season.sellerId, payerId: season.payerId, description: 'Interest', amountCents: 3_000, issuedOn: longAgo });
  await bookkeeper.make(`/api/invoices/${late.id}/write-off-requests`, { amountCents: 3_000, reason: 'The store closed' });
  await pay({ amountCents: 5_000, applications: [] });
  await pay({ amountCents: 700, applications: [], sellerId: boosters.id });
  const page = await director.look('/api/open-money');
  const [oldest] = page.late;
  expect(oldest.invoices).toMatchObject([{ invoiceId: late.id, balanceCents: 3_000, dueOn: addDays(longAgo, 30), daysPastDue: 120, sponsorName: 'Juniper & Pike Hardware' }]);
  expect([oldest.count, oldest.totalCents, page.lateCents]).toEqual([1, 3_000, 3_000]);
  expect(page.writeOffs).toMatchObject([{ invoiceId: late.id, amountCents: 3_000 }]);
  expect(page.unapplied.map((one: any) => [one.sellerName, one.leftCents, one.openInvoices.map((open: any) => open.id)])).toEqual([
    ['Kestrel Boosters', 700, []],
    ['Tamarack Ridge Athletics', 5_000, [late.id, invoice.id]],
  ]);
  expect([page.unappliedCount, page.unappliedCents, page.writeOffsWaiting]).toEqual([2, 5_700, 1]);
  expect((await director.look('/api/home')).openMoney).toMatchObject({ unappliedCents: 5_700, writeOffsWaiting: 1 });
  expect((await department.announcer.look('/api/home')).openMoney).toBeNull();
});

test('a charge that is void leaves nothing receivable on the account of its contract', async () => {
  const { department, season, contract } = await billed();
  const { bookkeeper } = department;
  const charge = await bookkeeper.make('/api/charges', { payerId: season.payerId, sellerId: season.sellerId, contractId: contract.id, description: 'Fee', amountCents: 1_200, issuedOn: '2026-12-10' });
  const receivable = async () => (await bookkeeper.look(`/api/contracts/${contract.id}/account-statement`)).lines[0].after.receivable;
  expect(await receivable()).toBe(37_950);
  await bookkeeper.make(`/api/invoices/${charge.id}/void`, { reason: 'Charged by mistake', voidedOn: '2026-12-11' });
  expect(await receivable()).toBe(36_750);
});
