import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aSeason } from '../support/season.ts';

// RFC 9457 (July 2023) section 3.1: type, status, title, detail, instance; extension members allowed.
test('a refusal carries the members of RFC 9457, and its type is the address of a page that can be read', async () => {
  const { director } = await aDepartment();
  const school = { name: 'Linden Falls High School', shortName: 'Linden Falls', nickname: 'Otters', firstColour: '#4B2E83', secondColour: '#FFFFFF' };
  await director.make('/api/schools', school);
  const answer = await director.post('/api/schools', school);
  expect(answer.headers.get('content-type')).toBe('application/problem+json; charset=utf-8');
  expect(answer.status).toBe(409);
  expect(answer.body).toEqual({
    type: '/refusals/school-name-taken',
    title: 'school name taken',
    status: 409,
    detail: 'A school of that name is there already.',
    instance: '/api/schools',
    code: 'school-name-taken',
    override: 'never',
    errors: { root: { serverError: 'A school of that name is there already.' } },
  });
  const page = await director.get(answer.body.type);
  expect([page.status, page.headers.get('content-type')]).toEqual([200, 'text/html; charset=utf-8']);
  expect(page.body).toContain('A school of that name is there already.');
});

// draft-ietf-httpapi-idempotency-key-header (an Internet-Draft): missing 400, other payload 422, completed is replayed.
test('an Idempotency-Key is asked for where money moves, replayed as it was, and never used for something else', async () => {
  const { director } = await aDepartment();
  const order = { contractId: '01a212af-36aa-7084-9389-3479e6d3c1dc', throughDay: '2026-11-30', issuedOn: '2026-11-23' };
  const without = await director.post('/api/invoices', order, { key: '' });
  expect([without.status, without.body.code]).toEqual([400, 'idempotency-key-missing']);
  const short = await director.post('/api/invoices', order, { key: 'fifteen-letters' });
  expect(short.body.code).toBe('idempotency-key-missing');
  const key = crypto.randomUUID();
  const refused = await director.post('/api/invoices', order, { key });
  expect(refused.status).toBe(404);
  const other = await director.post('/api/invoices', { ...order, throughDay: '2026-12-31' }, { key });
  expect(other.status, 'a refusal stores nothing, so the key is free').toBe(404);
});

test('a doubled payment is answered as the first was, and its key with another amount, or from somebody else, is refused', async () => {
  const department = await aDepartment();
  const { director, bookkeeper } = department;
  const season = await aSeason(department, 0);
  const payment = { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-01', method: 'check', reference: '1041', amountCents: 5_000, applications: [] };
  const key = crypto.randomUUID();
  const first = await bookkeeper.post('/api/payments', payment, { key });
  const again = await bookkeeper.post('/api/payments', payment, { key });
  expect([first.status, again.status, again.headers.get('idempotency-replayed')]).toEqual([201, 201, 'true']);
  expect(again.body).toEqual(first.body);
  const another = await bookkeeper.post('/api/payments', { ...payment, amountCents: 5_001 }, { key });
  expect([another.status, another.body.code]).toEqual([422, 'idempotency-key-used']);
  const somebodyElse = await director.post('/api/payments', payment, { key });
  expect([somebodyElse.status, somebodyElse.body.code]).toEqual([422, 'idempotency-key-used']);
  const all = await Promise.all(Array.from({ length: 5 }, () => bookkeeper.post('/api/payments', { ...payment, reference: '1042' }, { key: 'five-at-the-same-time' })));
  expect(all.every((answer) => answer.status === 201 || answer.body.code === 'still-running')).toBe(true);
  expect((await bookkeeper.look('/api/payments')).total).toBe(2);
});
