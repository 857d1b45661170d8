import { expect, test } from 'vitest';
import { aDepartment, aMember } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

interface Charged {
  department: Department;
  season: Season;
  invoice: any;
  ask(amountCents: number, reason?: string): Promise<any>;
}

/** A charge of 500.00, which nothing has to be earned for. */
async function charged(): Promise<Charged> {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const invoice = await department.bookkeeper.make('/api/charges', { sellerId: season.sellerId, payerId: season.payerId, description: 'Interest on last season', amountCents: 50_000, issuedOn: '2026-11-20' });
  return { department, season, invoice, ask: (amountCents, reason = 'The store closed') => department.bookkeeper.post(`/api/invoices/${invoice.id}/write-off-requests`, { amountCents, reason }) };
}

const balances = async ({ ask }: Department) =>
  Object.fromEntries(
    (await ask<{ account: string; cents: number }>(
      `select account, sum(cents)::bigint as cents from (
         select to_account as account, amount as cents from posting where department_id = current_department() and journal = 'money'
         union all select from_account, -amount from posting where department_id = current_department() and journal = 'money') as moved
       group by account having sum(cents) <> 0`,
    )).map(({ account, cents }) => [account, Number(cents)]),
  );

test('the bookkeeper asks, the director writes off, and both are told in the invoice’s story', async () => {
  const { department, invoice, ask } = await charged();
  const { bookkeeper, director } = department;
  expect((await ask(50_001)).body.code).toBe('more-than-balance');
  const asked = await ask(50_000);
  expect(asked.body.waitingWriteOff).toMatchObject({ amountCents: 50_000, invoiceNumber: 'TR-2027-0001', reason: 'The store closed' });
  expect((await ask(1)).body.code).toBe('write-off-waits');
  const approve = `/api/write-off-requests/${asked.body.waitingWriteOff.id}/approve`;
  expect((await bookkeeper.post(approve)).status).toBe(403);
  expect(await balances(department)).toEqual({ 1100: 50_000, 4200: -50_000 });
  expect((await director.post(approve, { on: '2026-12-20' })).body).toMatchObject({ state: 'writtenOff', balanceCents: 0, writtenOffCents: 50_000, waitingWriteOff: null });
  expect((await director.post(approve, { on: '2026-12-20' })).body.code).toBe('write-off-answered-already');
  expect(await balances(department)).toEqual({ 4200: -50_000, 5100: 50_000 });
  expect((await bookkeeper.post(`/api/invoices/${invoice.id}/void`, { reason: 'x' })).body.code).toBe('void-after-write-off');
  const { lines } = await bookkeeper.look(`/api/invoices/${invoice.id}/story`);
  expect(lines.map((line: any) => line.sentence).sort()).toEqual([
    '$500.00 of invoice TR-2027-0001 was written off: The store closed.',
    'Charge TR-2027-0001 of $500.00 was issued: Interest on last season.',
    'It was asked to write off $500.00: The store closed.',
  ]);
  expect((await bookkeeper.look('/api/invoices?state=writtenOff')).total).toBe(1);
});

test('200.00 comes after all: the write-off is undone by as much and the payment pays the invoice', async () => {
  const { department, invoice, ask } = await charged();
  const { bookkeeper, director } = department;
  const recover = (amountCents: number, form = {}) => bookkeeper.post(`/api/invoices/${invoice.id}/recoveries`, { amountCents, recoveredOn: '2027-01-10', reason: 'The trustee paid', ...form });
  expect((await recover(1)).body.code).toBe('nothing-written-off');
  await director.make(`/api/write-off-requests/${(await ask(50_000)).body.waitingWriteOff.id}/approve`, { on: '2026-12-20' });
  expect((await recover(50_001)).body.code).toBe('more-than-balance');
  expect((await recover(20_000, { method: 'check', reference: '77' })).body).toMatchObject({ state: 'writtenOff', writtenOffCents: 30_000, appliedCents: 20_000, balanceCents: 0 });
  expect(await balances(department)).toEqual({ 1000: 20_000, 4200: -50_000, 5100: 30_000 });
  expect((await recover(10_000)).body).toMatchObject({ writtenOffCents: 20_000, balanceCents: 10_000 });
});

test('a declined request leaves the invoice open, and another may be asked', async () => {
  const { department, ask } = await charged();
  const { director } = department;
  const first = (await ask(50_000)).body.waitingWriteOff.id;
  expect((await director.post(`/api/write-off-requests/${first}/decline`, { reason: 'Call them once more' })).body).toMatchObject({ balanceCents: 50_000, waitingWriteOff: null });
  expect((await director.post(`/api/write-off-requests/${first}/approve`)).body.code).toBe('write-off-answered-already');
  expect((await ask(100)).status).toBe(201);
});

test.each([
  ['a director alone', ['director'], 403],
  ['a director who is the bookkeeper too', ['director', 'bookkeeper'], 200],
] as const)('%s who asks and approves: %s → %i', async (_, roles, status) => {
  const { department, invoice } = await charged();
  const person = await aMember(department.pool, department.id, [...roles]);
  const { waitingWriteOff } = await person.make(`/api/invoices/${invoice.id}/write-off-requests`, { amountCents: 50_000, reason: 'The store closed' });
  const answer = await person.post(`/api/write-off-requests/${waitingWriteOff.id}/approve`, { on: '2026-12-20' });
  expect([answer.status, answer.body.code ?? answer.body.state]).toEqual([status, status === 200 ? 'writtenOff' : 'write-off-needs-another']);
  const { lines } = await person.look(`/api/invoices/${invoice.id}/story`);
  expect(lines.some((line: any) => line.sentence.includes('asked for and approved by the same person'))).toBe(status === 200);
});

test('what was billed and not earned is not written off before the contract ends', async () => {
  const { department, season } = await charged();
  const contract = await aSignedContract(department, season);
  const invoice = await department.bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  expect((await department.bookkeeper.post(`/api/invoices/${invoice.id}/write-off-requests`, { amountCents: 100, reason: 'x' })).body.code).toBe('write-off-before-ending');
});

test('what was paid in the meantime is not written off any more', async () => {
  const { department, season, invoice, ask } = await charged();
  const { bookkeeper, director } = department;
  const { id } = (await ask(50_000)).body.waitingWriteOff;
  await bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-05', method: 'card', amountCents: 1, applications: [{ invoiceId: invoice.id, amountCents: 1 }] });
  expect((await director.post(`/api/write-off-requests/${id}/approve`)).body.code).toBe('more-than-balance');
});
