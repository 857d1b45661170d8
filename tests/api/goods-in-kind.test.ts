import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { TableDevice, aSeason } from '../support/season.ts';
import type { Season } from '../support/season.ts';

const PIZZAS = { what: 'Pizzas for the concession stand', quantity: 7, unitCents: 8_571, dueOn: '2027-01-15' };

/** Paid in seven pizzas' worth of 600.00, for twelve reads; signed unless told otherwise. */
async function inKind({ signs = true, isTaxed = true } = {}): Promise<{ department: Department; season: Season; contract: any; path: string; promiseId: string }> {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 1);
  const contract = await director.make('/api/contracts', {
    sponsorId: season.sponsorId, sellerId: season.sellerId, payerId: season.payerId, title: 'Pizzas for reads', isInKind: true,
    term: { seasonId: season.seasonId, startsOn: '2026-11-20', endsOn: '2027-03-13', pricing: 'fixed', priceCents: 60_000, billingPlan: { kind: 'inFull', on: '2027-03-13' } },
    commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 12, rateCents: 5_000, isTaxed }], benefits: [],
  });
  const path = `/api/contracts/${contract.id}`;
  const { version } = await director.look(`${path}/goods-promises`);
  const saved = await director.put(`${path}/goods-promises`, { promises: [PIZZAS] }, { version });
  if (signs) await director.make(`${path}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
  return { department, season, contract, path, promiseId: saved.body.promises[0].id };
}

const delivery = (promiseId: string, quantity: number) => ({ promiseId, quantity, receivedOn: '2026-12-02', proof: 'Taken in by Odell at the stand' });

async function giveTwoReads({ director }: Department, season: Season, contract: any): Promise<void> {
  const [game] = season.games;
  const device = new TableDevice();
  const line = (await director.look(`/api/contracts/${contract.id}`)).commitments[0].id;
  await director.make(`/api/nights/${game!.nightId}/log`, { deviceId: device.deviceId, entries: [device.read(line, game!.gameId, 1), device.read(line, game!.gameId, 2)] });
  await director.make(`/api/nights/${game!.nightId}/sign-off`, { overrideReason: 'the test does not wait for the night' });
}

const balances = async ({ ask, id }: Department): Promise<Record<string, number>> => {
  const rows = await ask(`select account, sum(amount)::int as cents from (select to_account as account, amount from posting where department_id = $1 and journal = 'money'
    union all select from_account, -amount from posting where department_id = $1 and journal = 'money') as moved group by account having sum(amount) <> 0`, [id]);
  return Object.fromEntries(rows.map((row) => [row['account'], row['cents']]));
};

test('goods are promised with the draft, come to its price, and are changed from the version seen', async () => {
  const { department, path } = await inKind({ signs: false });
  const { director } = department;
  const seen = await director.look(`${path}/goods-promises`);
  expect(seen).toMatchObject({ isInKind: true, isSigned: false, priceCents: 60_000, promises: [{ ...PIZZAS, received: 0, missing: 7 }] });
  const put = (promises: object[], version = seen.version) => director.put(`${path}/goods-promises`, { promises }, { version });
  expect((await put([{ ...PIZZAS, quantity: 6 }])).body.code).toBe('goods-miss-the-price');
  expect((await put([PIZZAS], seen.version - 1)).body.code).toBe('stale-version');
  expect((await put([{ what: 'Game balls', quantity: 12, unitCents: 5_000 }])).body.promises.map((one: any) => one.what)).toEqual(['Game balls']);
});

test('deliveries come in at the value of signing, the last one takes the rounding, and no piece more', async () => {
  const { department, season, contract, path, promiseId } = await inKind();
  const { bookkeeper, director } = department;
  await giveTwoReads(department, season, contract);
  const first = await bookkeeper.make(`${path}/goods-deliveries`, delivery(promiseId, 3));
  expect([first.receivedCents, first.openCents, first.promises[0].missing, first.deliveries[0].amountCents]).toEqual([25_713, 34_287, 4, 25_713]);
  expect((await bookkeeper.post(`${path}/goods-deliveries`, delivery(promiseId, 5))).body.code).toBe('more-goods-than-promised');
  const last = await bookkeeper.make(`${path}/goods-deliveries`, delivery(promiseId, 4));
  expect([last.receivedCents, last.openCents, last.promises[0].missing]).toEqual([60_000, 0, 0]);
  expect(await balances(department)).toEqual({ '5000': 60_000, '2100': -50_000, '4010': -10_000 });
  expect((await bookkeeper.post(`${path}/goods-shortage`, { settles: 'billed' })).body.code).toBe('nothing-short');
  expect((await director.put(`${path}/goods-promises`, { promises: [PIZZAS] }, { version: last.version })).body.code).toBe('contract-not-a-draft');
});

test('what does not come is billed', async () => {
  const { department, season, contract, path, promiseId } = await inKind();
  const { bookkeeper } = department;
  await giveTwoReads(department, season, contract);
  await bookkeeper.make(`${path}/goods-deliveries`, delivery(promiseId, 3));
  const after = await bookkeeper.make(`${path}/goods-shortage`, { settles: 'billed', settledOn: '2027-03-14' });
  expect([after.openCents, after.promises[0].missing]).toEqual([0, 4]);
  const { data } = await bookkeeper.look(`/api/invoices?contractId=${contract.id}`);
  expect(data.map((invoice: any) => [invoice.issuedOn, invoice.netCents])).toEqual([['2027-03-14', 34_287]]);
  expect(await balances(department)).toMatchObject({ '5000': 25_713, '2100': -50_000, '4010': -10_000 });
  expect((await bookkeeper.post(`${path}/goods-deliveries`, delivery(promiseId, 1))).body.code).toBe('goods-settled');
});

test.each([[true, 3_000], [false, 0]])('sales tax on what did not come goes by the reads it pays for: taxed %s → %i', async (isTaxed, taxCents) => {
  const { department, contract, path } = await inKind({ isTaxed });
  await department.bookkeeper.make(`${path}/goods-shortage`, { settles: 'billed', settledOn: '2027-03-14' });
  const { data } = await department.bookkeeper.look(`/api/invoices?contractId=${contract.id}`);
  expect(data.map((invoice: any) => [invoice.netCents, invoice.taxCents])).toEqual([[60_000, taxCents]]);
});

test('or it is let go: the reads still owed are worth less, what was given for more than came is an allowance', async () => {
  const { department, season, contract, path, promiseId } = await inKind();
  const { bookkeeper, director } = department;
  await giveTwoReads(department, season, contract);
  await bookkeeper.make(`${path}/goods-deliveries`, delivery(promiseId, 1));
  expect((await bookkeeper.post(`${path}/goods-shortage`, { settles: 'allowed' })).body.code).toBe('role-missing');
  const after = await director.make(`${path}/goods-shortage`, { settles: 'allowed', settledOn: '2027-03-14' });
  expect([after.openCents, after.priceCents]).toEqual([0, 10_000]);
  expect(await balances(department)).toEqual({ '5000': 8_571, '4090': 1_429, '4010': -10_000 });
});

test('what an amendment adds is paid in money: the last piece comes in at what was agreed in goods', async () => {
  const { department, contract, path, promiseId } = await inKind();
  const { bookkeeper, director } = department;
  await bookkeeper.make(`${path}/goods-deliveries`, delivery(promiseId, 6));
  const line = (await director.look(path)).commitments[0].id;
  await director.make(`${path}/amend`, { commitmentId: line, reads: 4, priceCents: 24_000, amendedOn: '2026-12-02' });
  const last = await bookkeeper.make(`${path}/goods-deliveries`, delivery(promiseId, 1));
  expect([last.receivedCents, last.openCents]).toEqual([60_000, 24_000]);
  await bookkeeper.make(`${path}/goods-shortage`, { settles: 'billed', settledOn: '2027-03-14' });
  expect((await bookkeeper.look(`/api/invoices?contractId=${contract.id}`)).data.map((invoice: any) => invoice.netCents)).toEqual([24_000]);
});

test('where goods are counted no lump of goods goes past the count', async () => {
  const { department, path } = await inKind();
  const answer = await department.bookkeeper.post(`${path}/goods`, { receivedOn: '2026-12-02', what: 'Pizzas', amountCents: 100 });
  expect(answer.body.code).toBe('goods-are-counted');
});

test('a draft whose price moved away from its goods is not signed', async () => {
  const { department, path } = await inKind({ signs: false });
  const { director } = department;
  const { version } = await director.look(path);
  const changed = await director.patch(path, { term: { priceCents: 70_000 } }, { version });
  expect([changed.status, changed.body.term?.priceCents]).toEqual([200, 70_000]);
  expect((await director.post(`${path}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' })).body.code).toBe('goods-miss-the-price');
});

test('goods beyond any price are refused at their field', async () => {
  const { department, path } = await inKind({ signs: false });
  const { version } = await department.director.look(`${path}/goods-promises`);
  const promises = Array.from({ length: 50 }, (_, place) => ({ what: `Pallet ${place}`, quantity: 100_000, unitCents: 10_000_000_000 }));
  const answer = await department.director.put(`${path}/goods-promises`, { promises }, { version });
  expect([answer.status, answer.body.code]).toEqual([422, 'amount-too-large']);
  expect(answer.body.errors.promises).toContain('more than any price');
});

test('goods are not paid back in money: what an early end credits of them stays a credit', async () => {
  const { department, path, promiseId } = await inKind();
  const { bookkeeper, director } = department;
  await bookkeeper.make(`${path}/goods-deliveries`, delivery(promiseId, 7));
  await director.make(`${path}/end`, { on: '2026-12-02' });
  const { data } = await bookkeeper.look('/api/credit-memos');
  expect(data.map((memo: any) => [memo.netCents, memo.unappliedCents])).toEqual([[60_000, 60_000]]);
  const answer = await bookkeeper.post(`/api/credit-memos/${data[0].id}/refunds`, { amountCents: 1, refundedOn: '2026-12-03', method: 'check' });
  expect([answer.status, answer.body.code]).toEqual([422, 'credit-of-goods']);
});

test('two who take in the last pieces at once take them in once', async () => {
  const { department, path, promiseId } = await inKind();
  const answers = await Promise.all([department.bookkeeper.post(`${path}/goods-deliveries`, delivery(promiseId, 7)), department.director.post(`${path}/goods-deliveries`, delivery(promiseId, 7))]);
  expect(answers.map((answer) => answer.body.code ?? 'received').sort()).toEqual(['more-goods-than-promised', 'received']);
});

test('a contract paid in money takes no goods', async () => {
  const { department, season } = await inKind();
  const money = await department.director.make('/api/contracts', {
    sponsorId: season.sponsorId, sellerId: season.sellerId, payerId: season.payerId, title: 'Paid in money',
    term: { seasonId: season.seasonId, startsOn: '2026-11-20', endsOn: '2027-03-13', pricing: 'fixed', priceCents: 60_000, billingPlan: { kind: 'inFull', on: '2027-03-13' } },
    commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 12, rateCents: 5_000 }], benefits: [],
  });
  const { version } = await department.director.look(`/api/contracts/${money.id}/goods-promises`);
  expect((await department.director.put(`/api/contracts/${money.id}/goods-promises`, { promises: [] }, { version })).body.code).toBe('not-in-kind');
  expect((await department.bookkeeper.post(`/api/contracts/${money.id}/goods-shortage`, { settles: 'billed' })).body.code).toBe('not-in-kind');
});
