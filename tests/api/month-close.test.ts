import { v7 } from 'uuid';
import { expect, test } from 'vitest';
import { addDays, firstOfMonth } from '../../server/domain/day.ts';
import type { Day } from '../../server/domain/day.ts';
import { dayAt, instantOf } from '../../server/domain/instant.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aContract, aNightInDays, aSeason } from '../support/season.ts';
import type { Season } from '../support/season.ts';

const thisMonth = firstOfMonth(dayAt(instantOf(new Date().toISOString()), 'America/Denver'));
const lastMonth = firstOfMonth(addDays(thisMonth, -1));
const monthBefore = firstOfMonth(addDays(lastMonth, -1));
const name = (month: Day): string => month.slice(0, 7);

/** Books that begin two months ago. */
async function begun(): Promise<{ department: Department; season: Season; pay: (receivedOn: Day, amountCents?: number) => Promise<any> }> {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const pay = (receivedOn: Day, amountCents = 1_000) =>
    department.bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn, method: 'check', amountCents });
  await pay(addDays(monthBefore, 4));
  return { department, season, pay };
}

const close = ({ bookkeeper }: Department, month: Day, form = {}) => bookkeeper.post(`/api/months/${name(month)}/close`, form);

test('months are closed in their order, once, when they are over, and not by everybody', async () => {
  const { department } = await begun();
  expect((await close(department, lastMonth)).body).toMatchObject({ code: 'earlier-month-open', detail: `Months are closed in their order: close ${name(monthBefore)} first.` });
  expect((await department.director.post(`/api/months/${name(monthBefore)}/close`)).body.code).toBe('role-missing');
  const answer = await close(department, monthBefore);
  expect([answer.status, answer.body.state, answer.body.events]).toEqual([200, 'closed', 1]);
  expect((await close(department, monthBefore)).body.code).toBe('month-already-closed');
  expect((await close(department, lastMonth)).status).toBe(200);
  expect((await close(department, thisMonth)).body.code).toBe('month-not-over');
  expect((await close(department, firstOfMonth(addDays(monthBefore, -1)))).body.code).toBe('not-found');
  const { data } = await department.bookkeeper.look('/api/months');
  expect(data.map((month: any) => [month.id, month.state, month.events])).toEqual([[name(thisMonth), 'running', 0], [name(lastMonth), 'closed', 0], [name(monthBefore), 'closed', 1]]);
});

test('what comes in for a closed month is booked on the first open day and keeps its own day', async () => {
  const { department, pay } = await begun();
  await close(department, monthBefore);
  const late = await pay(addDays(monthBefore, 9));
  const [event] = await department.ask('select occurred_on, booked_on from ledger_event where department_id = $1 and cause_id = $2', [department.id, late.id]);
  expect(event).toEqual({ occurred_on: addDays(monthBefore, 9), booked_on: lastMonth });
});

test('nights that are not signed off have to be acknowledged, and are kept with the month', async () => {
  const { department } = await begun();
  const days = -35;
  const night = await aNightInDays(department, days);
  const month = firstOfMonth(night.heldOn);
  for (let one = monthBefore; one < month; one = firstOfMonth(addDays(one, 40))) await close(department, one);
  const before = await department.bookkeeper.look(`/api/months/${name(month)}`);
  expect(before.lateNights).toEqual([{ nightId: night.nightId, heldOn: night.heldOn, title: expect.any(String), venueName: `Alder Gymnasium ${days}`, readsLogged: 0, readsPlanned: 0, signedOffSince: false }]);
  const refused = await close(department, month);
  expect([refused.body.code, refused.body.detail]).toEqual(['nights-not-signed-off', expect.stringContaining('One night of this month is not signed off.')]);
  expect((await close(department, month, { acknowledgesNights: true })).status).toBe(200);
  await department.director.make(`/api/nights/${night.nightId}/sign-off`, {});
  const after = await department.bookkeeper.look(`/api/months/${name(month)}`);
  expect(after.lateNights).toEqual([{ ...before.lateNights[0], signedOffSince: true }]);
});

test('a night whose only game was called off is not waited for', async () => {
  const { department } = await begun();
  const night = await aNightInDays(department, -35);
  await department.director.make(`/api/games/${night.gameId}/cancel`, { reason: 'Snow' });
  expect((await department.bookkeeper.look(`/api/months/${name(firstOfMonth(night.heldOn))}`)).lateNights).toEqual([]);
});

test('before closing it is told what no invoice took yet', async () => {
  const { department } = await begun();
  expect((await department.bookkeeper.look(`/api/months/${name(monthBefore)}`)).cautions).toEqual([{ kind: 'unapplied', count: 1, amountCents: 1_000 }]);
});

test('a month waits to be closed for whoever is still booking into it, and who comes after books into the next', async () => {
  const { department, pay } = await begun();
  const booking = await department.pool.connect();
  try {
    await booking.query(`begin; set local app.department_id = '${department.id}'`);
    await booking.query('select pg_advisory_xact_lock_shared(hashtextextended($1::uuid::text, 19))', [department.id]);
    const answers: string[] = [];
    const closing = close(department, monthBefore).then((answer) => (answers.push('closed'), answer));
    await waitingOn(department, 1);
    const after = pay(addDays(monthBefore, 10)).then((payment) => (answers.push('paid'), payment));
    await waitingOn(department, 2);
    expect(answers).toEqual([]);
    await booking.query(`insert into ledger_event (department_id, id, cause, happening, occurred_on, booked_on) values ($1, $2, 'payment', '{"kind": "test"}', $3, $3)`, [department.id, v7(), addDays(monthBefore, 8)]);
    await booking.query('commit');
    expect((await closing).body.events).toBe(2);
    const [event] = await department.ask('select booked_on from ledger_event where department_id = $1 and cause_id = $2', [department.id, (await after).id]);
    expect(event).toEqual({ booked_on: lastMonth });
  } finally {
    booking.release();
  }
});

/** Until so many connections wait for the lock that books and closing share. */
async function waitingOn(department: Department, connections: number): Promise<void> {
  for (const until = Date.now() + 20_000; Date.now() < until; await new Promise((done) => setTimeout(done, 15))) {
    const { rows } = await department.pool.query(
      `select count(*)::int as waiting from pg_locks where locktype = 'advisory' and not granted
         and (classid::bigint << 32) | objid::bigint = hashtextextended($1, 19)`, [department.id]);
    if (rows[0].waiting >= connections) return;
  }
  throw new Error(`${connections} were to wait`);
}

test('of a close and twenty payments at once, each payment is in the closed month before it closed or after it in the next', async () => {
  const { department, pay } = await begun();
  const paid = Array.from({ length: 20 }, (_, place) => pay(addDays(monthBefore, 10), 100 + place));
  const [answer, payments] = [await close(department, monthBefore), await Promise.all(paid)];
  expect(answer.status).toBe(200);
  const rows = await department.ask('select booked_on, count(*)::int as payments from ledger_event where department_id = $1 and cause_id = any($2::uuid[]) group by booked_on', [department.id, payments.map(({ id }) => id)]);
  expect(rows.reduce((sum, row) => sum + row['payments'], 0)).toBe(20);
  expect(rows.filter((row) => ![addDays(monthBefore, 10), lastMonth].includes(row['booked_on']))).toEqual([]);
});

test('of two who close the same month, one does', async () => {
  const { department } = await begun();
  const answers = await Promise.all([close(department, monthBefore), close(department, monthBefore)]);
  expect(answers.map((answer) => answer.body.code ?? 'closed').sort()).toEqual(['closed', 'month-already-closed']);
});

test('a closed month has what banners earned over its days, booked on its last day, and once', async () => {
  const { department, season } = await begun();
  const lastDay = addDays(lastMonth, -1);
  const banner = { name: 'Banner above the Perch', rateCents: 40_000, earns: 'overDays', startsOn: addDays(lastDay, -9), endsOn: addDays(lastDay, 10) };
  const contract = await aContract(department, season, { priceCents: 40_000, commitments: [], benefits: [banner], term: { startsOn: monthBefore, billingPlan: { kind: 'inFull', on: '2026-11-23' } } });
  await department.director.make(`/api/contracts/${contract.id}/sign`, { signedOn: addDays(monthBefore, 1), signedByName: 'Hazel Juniper' });
  expect((await close(department, monthBefore)).status).toBe(200);
  expect((await department.director.look(`/api/contracts/${contract.id}`)).standing.earnedCents).toBe(20_000);
  const booked = () => department.ask(`select occurred_on, booked_on from ledger_event where department_id = $1 and happening->>'kind' = 'benefitEarnedThrough'`, [department.id]);
  expect(await booked()).toEqual([{ occurred_on: lastDay, booked_on: lastDay }]);
  expect((await close(department, monthBefore)).body.code).toBe('month-already-closed');
  expect(await booked()).toHaveLength(1);
});
