import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';

test('the accounts are the chart’s until the department names them, and its names are its own', async () => {
  const { bookkeeper } = await aDepartment();
  const neighbour = await aDepartment();
  const cash = (await bookkeeper.look('/api/accounts')).data[0];
  expect(cash).toEqual({ id: '1000', code: '1000', name: 'Cash', chartName: 'Cash', outsideCode: null, version: 0 });
  const named = await bookkeeper.put('/api/accounts/1000', { name: 'Activity fund, checking', outsideCode: '21.000.1010' }, { version: 0 });
  expect([named.status, named.body]).toEqual([200, { ...cash, name: 'Activity fund, checking', outsideCode: '21.000.1010', version: 1 }]);
  expect((await bookkeeper.put('/api/accounts/1000', { name: 'Checking' }, { version: 0 })).body.code).toBe('stale-version');
  const emptied = await bookkeeper.put('/api/accounts/1000', { name: 'Checking' }, { version: 1 });
  expect([emptied.body.name, emptied.body.outsideCode, emptied.body.version]).toEqual(['Checking', null, 2]);
  expect(await neighbour.bookkeeper.look('/api/accounts/1000')).toEqual(cash);
});

test.each([
  ['an account the chart does not have', '1001', { name: 'Petty cash' }, 'not-found'],
  ['an account of the reads', 'owed', { name: 'Owed' }, 'not-found'],
  ['a name left empty', '1000', { name: ' ' }, 'malformed'],
])('%s is refused', async (_, code, form, refusal) => {
  const { bookkeeper } = await aDepartment();
  expect((await bookkeeper.put(`/api/accounts/${code}`, form, { version: 0 })).body.code).toBe(refusal);
});

test('naming an account leaves a line in the audit', async () => {
  const { bookkeeper } = await aDepartment();
  await bookkeeper.put('/api/accounts/4000', { name: 'Gate and sponsors' }, { version: 0 });
  expect((await bookkeeper.look('/api/audit')).data[0]).toMatchObject({ tableName: 'account' });
});
