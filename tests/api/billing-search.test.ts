import { beforeAll, expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aSeason, aSignedContract } from '../support/season.ts';

let department: Department;

/** Two invoices of 367.50, check 1041 of 300.00 on the first, receipt 2041 of 125.00 on a deposit slip that is a dollar over. */
beforeAll(async () => {
  department = await aDepartment({ checksBooks: false });
  const { bookkeeper, announcer } = department;
  const season = await aSeason(department, 0);
  const contract = await aSignedContract(department, season);
  const [first] = [await bookkeeper.make('/api/invoices', { contractId: contract.id, issuedOn: '2026-11-23' }), await bookkeeper.make('/api/invoices', { contractId: contract.id, issuedOn: '2027-01-15' })];
  const paid = { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-05', method: 'check', reference: '1041', amountCents: 30_000 };
  await bookkeeper.make('/api/payments', { ...paid, applications: [{ invoiceId: first.id, amountCents: 30_000 }] });
  const receipt = await announcer.make('/api/receipts', { sellerId: season.sellerId, payerId: season.payerId, fromWhom: 'Hazel Marlowe', takenOn: '2026-12-06', method: 'check', reference: '2041', amountCents: 12_500 });
  await bookkeeper.make('/api/deposit-slips', { sellerId: season.sellerId, depositedOn: '2026-12-07', paymentIds: [receipt.paymentId], countedCents: 12_600, note: 'A dollar nobody knows' });
});

const ALL = ['depositSlip TR-D-2027-0001', 'invoice TR-2027-0001', 'invoice TR-2027-0002', 'payment TR-P-2027-0001', 'payment TR-P-2027-0002', 'receipt TR-R-2027-0001'];

test.each([
  ['TR-2027-0001', ['invoice TR-2027-0001']],
  ['tr-2027-0001', ['invoice TR-2027-0001']],
  ['0002', ['invoice TR-2027-0002', 'payment TR-P-2027-0002']],
  ['367.50', ['invoice TR-2027-0001', 'invoice TR-2027-0002']],
  ['$367.5', ['invoice TR-2027-0001', 'invoice TR-2027-0002']],
  ['350', ['invoice TR-2027-0001', 'invoice TR-2027-0002']],
  ['67.50', ['invoice TR-2027-0001']],
  ['67.51', []],
  ['300', ['payment TR-P-2027-0001']],
  ['$300.00', ['payment TR-P-2027-0001']],
  ['30', []],
  ['125.', []],
  ['125', ['depositSlip TR-D-2027-0001', 'payment TR-P-2027-0002', 'receipt TR-R-2027-0001']],
  ['126', ['depositSlip TR-D-2027-0001']],
  ['1041', ['invoice TR-2027-0001', 'payment TR-P-2027-0001']],
  ['2041', ['depositSlip TR-D-2027-0001', 'payment TR-P-2027-0002', 'receipt TR-R-2027-0001']],
  ['Marlowe', ['receipt TR-R-2027-0001']],
  ['juniper', ALL.filter((one) => !one.startsWith('depositSlip'))],
  ['Tamarack Ridge', ['depositSlip TR-D-2027-0001']],
  ['%', []],
  ['_', []],
  ['nobody', []],
])('“%s” finds %j', async (q, wanted) => {
  const { data, total } = await department.bookkeeper.look(`/api/documents?q=${encodeURIComponent(q)}`);
  expect([data.map((one: any) => `${one.kind} ${one.number}`).sort(), total]).toEqual([wanted, wanted.length]);
});

test('what was found says by what, the number before the amount', async () => {
  const by = async (q: string) => (await department.bookkeeper.look(`/api/documents?q=${encodeURIComponent(q)}`)).data.map((one: any) => one.foundBy);
  expect([await by('TR-P-2027-0001'), await by('300'), await by('67.50'), await by('Hazel')]).toEqual([['number'], ['amount'], ['amount'], ['name']]);
  expect(await by('1041')).toEqual(['reference', 'reference']);
});

test('nothing is found for nothing, for another department, or for who sees no money', async () => {
  expect(await department.bookkeeper.look('/api/documents')).toEqual({ data: [], total: 0, amountCents: null });
  const other = await aDepartment();
  expect((await other.bookkeeper.look('/api/documents?q=367.50')).total).toBe(0);
  expect((await department.announcer.get('/api/documents?q=367.50')).status).toBe(403);
});

test('the list of invoices finds by amount and by the number of a check', async () => {
  const found = async (q: string) => (await department.bookkeeper.look(`/api/invoices?q=${encodeURIComponent(q)}`)).total;
  expect([await found('367.50'), await found('1041'), await found('367.51')]).toEqual([2, 1, 0]);
});
