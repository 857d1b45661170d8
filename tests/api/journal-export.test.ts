import { createHash } from 'node:crypto';
import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { addDays, firstOfMonth, lastOfMonth } from '../../server/domain/day.ts';
import { dayAt, instantOf } from '../../server/domain/instant.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { TableDevice, aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

const digestOf = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('hex');

/** A contract billed by half, read twice in one game, paid in part. */
async function booked(): Promise<{ department: Department; season: Season; contract: any; invoice: any; all: Record<string, unknown> }> {
  const department = await aDepartment();
  const { director, bookkeeper } = department;
  const season = await aSeason(department, 1);
  const contract = await aSignedContract(department, season);
  const invoice = await bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  const [game] = season.games;
  const device = new TableDevice();
  await director.make(`/api/nights/${game!.nightId}/log`, { deviceId: device.deviceId, entries: [device.read(contract.commitments[1].id, game!.gameId, 1), device.read(contract.commitments[0].id, game!.gameId, 2)] });
  await director.make(`/api/nights/${game!.nightId}/sign-off`, { overrideReason: 'the test does not wait for the night' });
  await bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-05', method: 'check', reference: '1041', amountCents: 20_000, applications: [{ invoiceId: invoice.id, amountCents: 20_000 }] });
  return { department, season, contract, invoice, all: { sellerId: season.sellerId, throughOn: '2026-12-31', allowsOpenMonth: true } };
}

const put = async ({ bookkeeper }: Department, season: Season, changes: Record<string, unknown>) => {
  const { id: _, sellerId: __, sellerName: ___, version, ...layout } = await bookkeeper.look(`/api/journal-layouts/${season.sellerId}`);
  return bookkeeper.put(`/api/journal-layouts/${season.sellerId}`, { ...layout, ...changes }, { version });
};

test('a batch holds every money entry once, comes to zero, and its lines are what the accounts changed by', async () => {
  const { department, season, all } = await booked();
  const { bookkeeper } = department;
  const preview = await bookkeeper.look(`/api/journal-batches/preview?sellerId=${season.sellerId}&throughOn=2026-12-31`);
  const batch = await bookkeeper.make('/api/journal-batches', all);
  expect([batch.number, batch.entryCount, batch.debitCents]).toEqual(['TR-J-2027-0001', preview.entryCount, preview.debitCents]);
  const { bytes, headers } = await bookkeeper.bytes(`/api/journal-batches/${batch.id}/journal.csv`);
  expect(headers.get('content-disposition')).toContain('TR-J-2027-0001.csv');
  const data: Record<string, string>[] = parse(bytes.toString('utf8'), { columns: true });
  expect(data.length).toBe(preview.lineCount);
  const changed: Record<string, number> = {};
  for (const line of data) changed[line['Account']!] = (changed[line['Account']!] ?? 0) + Math.round(Number(line['Debit'] || 0) * 100) - Math.round(Number(line['Credit'] || 0) * 100);
  const postings = await department.ask(`select account, sum(amount)::int as cents from (select to_account as account, amount from posting where department_id = $1 and journal = 'money'
    union all select from_account, -amount from posting where department_id = $1 and journal = 'money') as moved group by account having sum(amount) <> 0`, [department.id]);
  expect(Object.fromEntries(Object.entries(changed).filter(([, cents]) => cents !== 0))).toEqual(Object.fromEntries(postings.map((row) => [row['account'], row['cents']])));
  expect((await bookkeeper.post('/api/journal-batches', all)).body.code).toBe('nothing-to-export');
  expect((await bookkeeper.look(`/api/journal-batches/preview?sellerId=${season.sellerId}&throughOn=2026-12-31`)).entryCount).toBe(0);
});

test('a batch is the same bytes again after the layout and the names have changed, and the next one is laid out anew', async () => {
  const { department, season, all } = await booked();
  const { bookkeeper } = department;
  const batch = await bookkeeper.make('/api/journal-batches', all);
  const before = await bookkeeper.bytes(`/api/journal-batches/${batch.id}/journal.csv`);
  expect(digestOf(before.bytes)).toBe(batch.sha256);
  expect((await put(department, season, { columns: [{ field: 'bookedOn', heading: 'Day' }, { field: 'accountName', heading: 'Name' }, { field: 'amount', heading: 'Amount' }], delimiter: 'semicolon', decimalSign: 'comma', dayForm: '12/31/2026' })).status).toBe(200);
  await bookkeeper.put('/api/accounts/1000', { name: 'Activity fund' }, { version: 0 });
  expect(digestOf((await bookkeeper.bytes(`/api/journal-batches/${batch.id}/journal.csv`)).bytes)).toBe(batch.sha256);
  await bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-06', method: 'cash', amountCents: 1_250 });
  const next = await bookkeeper.make('/api/journal-batches', all);
  expect([next.number, next.entryCount]).toEqual(['TR-J-2027-0002', 1]);
  expect((await bookkeeper.bytes(`/api/journal-batches/${next.id}/journal.csv`)).bytes.toString('utf8')).toBe('Day;Name;Amount\r\n12/06/2026;Activity fund;12,50\r\n12/06/2026;Unapplied credit;-12,50\r\n');
});

test('of two who export at once, one gets the entries', async () => {
  const { department, all } = await booked();
  const answers = await Promise.all([department.bookkeeper.post('/api/journal-batches', all), department.director.post('/api/journal-batches', all)]);
  expect(answers.map((answer) => answer.body.code ?? 'made').sort()).toEqual(['made', 'nothing-to-export']);
});

test('only closed months leave, unless it is said otherwise', async () => {
  const department = await aDepartment();
  const { bookkeeper } = department;
  const season = await aSeason(department, 0);
  const lastMonth = firstOfMonth(addDays(firstOfMonth(dayAt(instantOf(new Date().toISOString()), 'America/Denver')), -1));
  await bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn: addDays(lastMonth, 3), method: 'cash', amountCents: 500 });
  const throughClose = { sellerId: season.sellerId, throughOn: lastOfMonth(lastMonth) };
  expect((await bookkeeper.post('/api/journal-batches', throughClose)).body.code).toBe('journal-of-open-month');
  await bookkeeper.make(`/api/months/${lastMonth.slice(0, 7)}/close`, {});
  expect((await bookkeeper.post('/api/journal-batches', { ...throughClose, throughOn: addDays(throughClose.throughOn, 1) })).body.code).toBe('journal-of-open-month');
  expect((await bookkeeper.make('/api/journal-batches', throughClose)).entryCount).toBe(1);
});

test('what the layout asks for and nobody mapped is named, and nothing leaves until it is there', async () => {
  const { department, season, all } = await booked();
  const { bookkeeper } = department;
  await put(department, season, { columns: [{ field: 'outsideCode', heading: 'Code' }, { field: 'amount', heading: 'Amount' }] });
  const refused = await bookkeeper.post('/api/journal-batches', all);
  expect([refused.body.code, refused.body.detail]).toEqual(['journal-not-mapped', expect.stringContaining('Account 1000 Cash: an outside code; Account 1100 Accounts receivable: an outside code')]);
  for (const { code, name } of (await bookkeeper.look('/api/accounts')).data) await bookkeeper.put(`/api/accounts/${code}`, { name, outsideCode: `01-${code}` }, { version: 0 });
  expect((await bookkeeper.make('/api/journal-batches', all)).number).toBe('TR-J-2027-0001');
});

test('income leaves under the code of the school whose team earned it', async () => {
  const { department, season, all } = await booked();
  await put(department, season, {
    columns: [{ field: 'codeString', heading: 'Code' }, { field: 'amount', heading: 'Amount' }, { field: 'accountCode', heading: 'Account' }], separator: '.',
    codeParts: [{ name: 'Fund', kind: 'constant', otherwise: '21' }, { name: 'School', kind: 'school', otherwise: '000', values: [{ key: season.schoolId, text: '310' }] }],
  });
  const batch = await department.bookkeeper.make('/api/journal-batches', all);
  const text = (await department.bookkeeper.bytes(`/api/journal-batches/${batch.id}/journal.csv`)).bytes.toString('utf8');
  const codes = new Map(text.trim().split('\r\n').slice(1).map((line) => [line.split(',')[2], line.split(',')[0]]));
  expect([codes.get('4000'), codes.get('1000')]).toEqual(['21.310', '21.000']);
});

test('a layout is the seller’s own, is changed from the version seen, and says which amounts it writes', async () => {
  const { department, season } = await booked();
  expect((await put(department, season, { columns: [{ field: 'debit', heading: 'Debit' }] })).body.code).toBe('layout-without-amounts');
  expect((await put(department, season, {})).body.version).toBe(1);
  const { bookkeeper } = department;
  const { id: _, sellerId: __, sellerName: ___, version: ____, ...layout } = await bookkeeper.look(`/api/journal-layouts/${season.sellerId}`);
  expect((await bookkeeper.put(`/api/journal-layouts/${season.sellerId}`, layout, { version: 0 })).body.code).toBe('stale-version');
  const elsewhere = await department.director.make('/api/sellers', { name: 'Ridge Foundation', numberPrefix: 'RF', keepsBooksHere: false });
  expect((await bookkeeper.get(`/api/journal-layouts/${elsewhere.id}`)).status).toBe(404);
  expect((await bookkeeper.post('/api/journal-batches', { sellerId: elsewhere.id, throughOn: '2026-12-31', allowsOpenMonth: true })).body.code).toBe('seller-keeps-own-books');
});
