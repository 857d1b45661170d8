import { expect, test } from 'vitest';
import { aDepartment, aMember } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';
import type { Answer, Visitor } from '../support/visitor.ts';

interface Gate {
  department: Department;
  season: Season;
  take: (who: Visitor, form?: object) => Promise<Answer>;
  deposit: (who: Visitor, form: object) => Promise<Answer>;
}

async function atTheGate(): Promise<Gate> {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const base = { sellerId: season.sellerId, payerId: season.payerId, fromWhom: 'Hazel Juniper', takenOn: '2026-12-04', method: 'check', reference: '1041', amountCents: 12_500, whatFor: 'Game ball' };
  return {
    department,
    season,
    take: (who, form = {}) => who.post('/api/receipts', { ...base, ...form }),
    deposit: (who, form) => who.post('/api/deposit-slips', { sellerId: season.sellerId, depositedOn: '2026-12-07', ...form }),
  };
}

const balances = async ({ ask, id }: Department) =>
  Object.fromEntries(
    (await ask<{ account: string; amount: number }>(
      `select account, sum(amount)::bigint as amount from (
         select to_account as account, amount from posting where department_id = $1 and journal = 'money'
         union all select from_account, -amount from posting where department_id = $1 and journal = 'money') as moved group by account having sum(amount) <> 0`,
      [id],
    )).map(({ account, amount }) => [account, amount]),
  );

test('money taken at the table lies in the drawer until the bookkeeper deposits it, to the cent', async () => {
  const { department, take, deposit } = await atTheGate();
  const { announcer, bookkeeper } = department;
  const check = (await take(announcer)).body;
  const cash = (await take(announcer, { method: 'cash', reference: null, amountCents: 2_000, takenByName: 'Odell Marsh' })).body;
  expect([check.number, cash.number, check.state, cash.takenByName]).toEqual(['TR-R-2027-0001', 'TR-R-2027-0002', 'inTheDrawer', 'Odell Marsh']);
  expect(check.takenByName).toMatch(/^announcer/);
  expect(await balances(department)).toEqual({ 1050: 14_500, 2150: -14_500 });
  const drawer = await bookkeeper.look('/api/drawer');
  expect([drawer.total, drawer.totalCents, drawer.oldestOn]).toEqual([drawer.data.length, drawer.data.reduce((sum: number, line: any) => sum + line.amountCents, 0), drawer.data[0].receivedOn]);
  expect(drawer.data.map((one: any) => [one.receiptNumber, one.method, one.reference, one.amountCents])).toEqual([['TR-R-2027-0001', 'check', '1041', 12_500], ['TR-R-2027-0002', 'cash', null, 2_000]]);
  const slip = (await deposit(bookkeeper, { paymentIds: [check.paymentId, cash.paymentId], countedCents: 14_500 })).body;
  expect([slip.number, slip.checkCount, slip.checkCents, slip.cashCents, slip.differenceCents]).toEqual(['TR-D-2027-0001', 1, 12_500, 2_000, 0]);
  expect(await balances(department)).toEqual({ 1000: 14_500, 2150: -14_500 });
  expect((await bookkeeper.look('/api/drawer')).total).toBe(0);
  const after = await bookkeeper.look(`/api/receipts/${check.id}`);
  expect([after.state, after.depositSlipNumber]).toEqual(['deposited', 'TR-D-2027-0001']);
  const payment = await bookkeeper.look(`/api/payments/${check.paymentId}`);
  expect([payment.isInDrawer, payment.receiptNumber, payment.depositSlipNumber]).toEqual([false, 'TR-R-2027-0001', 'TR-D-2027-0001']);
});

test.each([
  ['over', 12_600, { 1000: 12_600, 2150: -12_500, 5300: -100 }],
  ['short', 12_400, { 1000: 12_400, 2150: -12_500, 5300: 100 }],
  ['gone', 0, { 2150: -12_500, 5300: 12_500 }],
])('a drawer that is %s says so in a note and in the books', async (_, countedCents, wanted) => {
  const { department, take, deposit } = await atTheGate();
  const { body: receipt } = await take(department.announcer);
  const form = { paymentIds: [receipt.paymentId], countedCents };
  expect((await deposit(department.bookkeeper, form)).body.code).toBe('over-or-short-without-note');
  const slip = await deposit(department.bookkeeper, { ...form, note: 'Counted twice; nobody knows' });
  expect([slip.status, slip.body.differenceCents]).toEqual([201, countedCents - 12_500]);
  expect(await balances(department)).toEqual(wanted);
});

test('who took a receipt neither deposits it nor applies it, and is told who may; another bookkeeper does', async () => {
  const { department, season, take, deposit } = await atTheGate();
  const { bookkeeper, director } = department;
  const other = await aMember(department.pool, department.id, ['bookkeeper']);
  const contract = await aSignedContract(department, season);
  const invoice = await other.make('/api/invoices', { contractId: contract.id, issuedOn: '2026-11-23' });
  const { body: receipt } = await take(bookkeeper);
  const form = { paymentIds: [receipt.paymentId], countedCents: 12_500 };
  const apply = (who: Visitor) => who.post(`/api/payments/${receipt.paymentId}/applications`, { invoiceId: invoice.id, amountCents: 12_500, appliedOn: '2026-12-07' });
  const refused = await deposit(bookkeeper, form);
  expect([refused.status, refused.body.code]).toEqual([422, 'taker-may-not-post']);
  const [name] = await department.ask<{ name: string }>('select name from person where id = $1', [other.personId]);
  expect(refused.body.detail).toContain(name!.name);
  expect((await apply(bookkeeper)).body.code).toBe('taker-may-not-post');
  const applied = await apply(other);
  expect(applied.status).toBe(201);
  expect((await bookkeeper.post(`/api/applications/${applied.body.applications[0].id}/take-back`, { takenBackOn: '2026-12-07' })).body.code).toBe('taker-may-not-post');
  const refund = (who: Visitor) => who.post(`/api/payments/${receipt.paymentId}/refunds`, { amountCents: 1, refundedOn: '2026-12-08', method: 'cash' });
  expect((await refund(bookkeeper)).body.code).toBe('taker-may-not-post');
  expect((await bookkeeper.post(`/api/payments/${receipt.paymentId}/return`, { kind: 'mistake', returnedOn: '2026-12-08', reason: 'Never came' })).body.code).toBe('taker-may-not-post');
  expect((await refund(other)).body.code).toBe('more-than-unapplied');
  expect((await deposit(other, form)).status).toBe(201);
  const { version, settings } = await director.look('/api/department');
  expect(settings.takerMayPost).toBe(false);
  await director.patch('/api/department', { settings: { takerMayPost: true } }, { version });
  const { body: second } = await take(bookkeeper, { reference: '1042' });
  expect((await deposit(bookkeeper, { ...form, paymentIds: [second.paymentId] })).status).toBe(201);
});

test('a name that another wrote on the receipt does not let its writer deposit it', async () => {
  const { department, take, deposit } = await atTheGate();
  const { body: receipt } = await take(department.bookkeeper, { takenByName: 'Odell Marsh' });
  expect((await deposit(department.bookkeeper, { paymentIds: [receipt.paymentId], countedCents: 12_500 })).body.code).toBe('taker-may-not-post');
});

test('one payment goes on one deposit slip, however many are made of it at once', async () => {
  const { department, take, deposit } = await atTheGate();
  const { body: receipt } = await take(department.announcer);
  const slips = await Promise.all([1, 2, 3].map(() => deposit(department.bookkeeper, { paymentIds: [receipt.paymentId], countedCents: 12_500 })));
  expect(slips.map((slip) => slip.body.code ?? slip.status).sort()).toEqual([201, 'payment-deposited-already', 'payment-deposited-already']);
  expect((await department.bookkeeper.look('/api/deposit-slips')).total).toBe(1);
});

test('a deposit slip takes what lies in the drawer of its own seller, and nothing else', async () => {
  const { department, season, take, deposit } = await atTheGate();
  const { bookkeeper, director, announcer } = department;
  const boosters = await director.make('/api/sellers', { name: 'Kestrel Boosters', numberPrefix: 'KB' });
  const elsewhere = await director.make('/api/sellers', { name: 'Ridge Foundation', numberPrefix: 'RF', keepsBooksHere: false });
  const { body: theirs } = await take(announcer, { sellerId: boosters.id });
  const { body: ours } = await take(announcer);
  expect([theirs.number, ours.number]).toEqual(['KB-R-2027-0001', 'TR-R-2027-0001']);
  const banked = await bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-04', method: 'check', amountCents: 100 });
  const tries: [object, string][] = [
    [{ paymentIds: [ours.paymentId, theirs.paymentId], countedCents: 25_000 }, 'deposit-crosses-sellers'],
    [{ sellerId: boosters.id, paymentIds: [ours.paymentId], countedCents: 12_500 }, 'deposit-crosses-sellers'],
    [{ sellerId: elsewhere.id, paymentIds: [ours.paymentId], countedCents: 12_500 }, 'seller-keeps-own-books'],
    [{ paymentIds: [banked.id], countedCents: 100 }, 'payment-not-in-drawer'],
    [{ paymentIds: [department.id], countedCents: 100 }, 'unknown-payment'],
    [{ paymentIds: [], countedCents: 100 }, 'nothing-to-deposit'],
    [{ paymentIds: [ours.paymentId], countedCents: 12_500, depositedOn: '2026-12-03' }, 'deposited-before-received'],
  ];
  for (const [form, code] of tries) expect([code, (await deposit(bookkeeper, form)).body.code]).toEqual([code, code]);
  expect((await deposit(bookkeeper, { paymentIds: [ours.paymentId, ours.paymentId], countedCents: 12_500 })).status).toBe(201);
  expect((await bookkeeper.look('/api/drawer')).data.map((one: any) => one.sellerName)).toEqual(['Kestrel Boosters']);
  expect((await bookkeeper.look(`/api/drawer?sellerId=${season.sellerId}`)).total).toBe(0);
});

test('a payment may lie in the drawer without a receipt, but no transfer does', async () => {
  const { department, season } = await atTheGate();
  const pay = (form: object) => department.bookkeeper.post('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-04', method: 'check', amountCents: 700, drawer: 'undepositedReceipts', ...form });
  expect((await pay({ method: 'transfer' })).body.code).toBe('drawer-holds-cash-and-checks');
  const { body } = await pay({});
  expect(body.isInDrawer).toBe(true);
  expect(await balances(department)).toEqual({ 1050: 700, 2150: -700 });
});

test.each([
  ['nothing', { amountCents: 0 }, 400],
  ['less than nothing', { amountCents: -1 }, 400],
  ['half a cent', { amountCents: 0.5 }, 400],
  ['more than can be counted', { amountCents: 2 ** 53 }, 400],
  ['more than there is', { amountCents: 1_000_000_000_001 }, 400],
  ['a check without its number', { reference: null }, 422],
  ['a card', { method: 'card' }, 400],
  ['no day', { takenOn: '2026-02-30' }, 400],
  ['nobody', { fromWhom: ' ' }, 400],
])('a receipt for %s is refused', async (_, form, status) => {
  const { department, take } = await atTheGate();
  expect((await take(department.announcer, form)).status).toBe(status);
});

test('the announcer sees the receipts of their own hand and no other money', async () => {
  const { department, take } = await atTheGate();
  const { announcer, bookkeeper } = department;
  const { body: mine } = await take(announcer);
  const { body: theirs } = await take(bookkeeper, { reference: '2000' });
  expect((await announcer.look('/api/receipts')).data.map((one: any) => one.id)).toEqual([mine.id]);
  expect((await bookkeeper.look('/api/receipts')).total).toBe(2);
  expect((await announcer.get(`/api/receipts/${theirs.id}`)).status).toBe(404);
  expect((await announcer.bytes(`/api/receipts/${theirs.id}/receipt.pdf`)).status).toBe(404);
  for (const path of ['/api/drawer', '/api/payments', '/api/deposit-slips', `/api/payments/${mine.paymentId}`]) expect([path, (await announcer.get(path)).status]).toEqual([path, 403]);
  const parties = await announcer.look('/api/receipt-parties');
  expect([parties.sellers.map((one: any) => one.name), parties.payers.map((one: any) => one.name)]).toEqual([['Tamarack Ridge Athletics'], ['Juniper & Pike Hardware']]);
});

test('a receipt sent twice is one receipt, and its numbers have no gap after a refusal', async () => {
  const { department, take } = await atTheGate();
  const { announcer } = department;
  await take(announcer, { payerId: department.id });
  const form = { sellerId: (await announcer.look('/api/receipt-parties')).sellers[0].id, payerId: (await announcer.look('/api/receipt-parties')).payers[0].id, fromWhom: 'Pike', takenOn: '2026-12-04', method: 'cash', amountCents: 500 };
  const key = 'one-receipt-sent-twice';
  const [first, second] = [await announcer.post('/api/receipts', form, { key }), await announcer.post('/api/receipts', form, { key })];
  expect([first.body.number, second.body.id]).toEqual(['TR-R-2027-0001', first.body.id]);
});

test('receipts and deposit slips are printed under their numbers', async () => {
  const { department, take, deposit } = await atTheGate();
  const { body: receipt } = await take(department.announcer);
  const { body: slip } = await deposit(department.bookkeeper, { paymentIds: [receipt.paymentId], countedCents: 12_500 });
  for (const [path, name] of [[`/api/receipts/${receipt.id}/receipt.pdf`, 'TR-R-2027-0001'], [`/api/deposit-slips/${slip.id}/deposit-slip.pdf`, 'TR-D-2027-0001']]) {
    const printed = await department.bookkeeper.bytes(path!);
    expect([printed.status, printed.headers.get('content-disposition'), printed.bytes.subarray(0, 5).toString()]).toEqual([200, `inline; filename="${name}.pdf"`, '%PDF-']);
  }
});

test('payers are told with how many invoices are open with one seller', async () => {
  const { department, season } = await atTheGate();
  const contract = await aSignedContract(department, season);
  await department.bookkeeper.make('/api/invoices', { contractId: contract.id, issuedOn: '2026-11-23' });
  const open = (sellerId: string) => department.bookkeeper.look(`/api/open-payers?sellerId=${sellerId}`);
  expect((await open(season.sellerId)).data).toMatchObject([{ name: 'Juniper & Pike Hardware', openCount: 1, openCents: 36_750 }]);
  const boosters = await department.director.make('/api/sellers', { name: 'Kestrel Boosters', numberPrefix: 'KB' });
  expect((await open(boosters.id)).data).toMatchObject([{ openCount: 0, openCents: 0 }]);
});
