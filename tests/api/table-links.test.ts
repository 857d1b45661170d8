import { createHash, randomUUID } from 'node:crypto';
import { expect, test } from 'vitest';
import { aDepartment, aMember } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { TableDevice, aNightInDays } from '../support/season.ts';
import { Visitor } from '../support/visitor.ts';

const hashOf = (text: string) => createHash('sha256').update(text).digest('hex');
const tokenOf = ({ address }: { address: string }) => address.split('/').at(-1)!;

async function aTable(days = 0): Promise<{ department: Department; director: Visitor; nightId: string; links: string; log: string }> {
  const department = await aDepartment();
  const { nightId } = await aNightInDays(department, days);
  return { department, director: department.director, nightId, links: `/api/nights/${nightId}/table-links`, log: `/api/nights/${nightId}/log` };
}

const giveOut = (director: Visitor, links: string, more = {}) => director.make(links, { label: 'Odell, substitute', maySignOff: true, ...more });

const aNote = (device = new TableDevice()) => ({ deviceId: device.deviceId, entries: [device.entry({ kind: 'note', detail: { text: 'Doors open' } })] });

const endsNow = ({ department }: { department: Department }, id: string) =>
  department.ask(`update link set expires_at = now() - interval '1 second' where department_id = $1 and id = $2`, [department.id, id]);

test('a substitute without an account opens the table with a link and its PIN, and the log says who wrote', async () => {
  const { director, nightId, links, log } = await aTable();
  const link = await giveOut(director, links);
  expect(link).toMatchObject({ label: 'Odell, substitute', state: 'open', maySignOff: true, personName: null, pin: expect.stringMatching(/^\d{6}$/) });
  expect(link.address).toMatch(/\/night\/#link\/[\w-]{43}$/);
  const substitute = await Visitor.atTable(link);
  expect(await substitute.look('/api/table')).toEqual({ nightId, workerName: 'Odell, substitute', maySignOff: true, endsAt: link.expiresAt, kind: 'givenOut' });
  expect((await substitute.look(`/api/nights/${nightId}/bundle`)).nightId).toBe(nightId);
  expect((await substitute.make(log, aNote())).results).toMatchObject([{ status: 'stored', number: 1 }]);
  expect((await substitute.look(log)).entries).toMatchObject([{ loggedByName: 'Odell, substitute' }]);
  expect((await director.look(log)).entries).toMatchObject([{ loggedByName: 'Odell, substitute' }]);
});

test('address and PIN are told once: neither the list nor the database holds them', async () => {
  const { department, director, links } = await aTable();
  const link = await giveOut(director, links);
  const kept = JSON.stringify([await director.look(links), await department.ask('select to_jsonb(link) as kept from link where department_id = $1', [department.id])]);
  expect(kept).toContain('Odell');
  expect(kept).not.toContain(tokenOf(link));
  expect(kept).not.toContain(`"${link.pin}"`);
});

test('without the PIN or with a wrong one the link opens nothing, with the answer of a link that never was', async () => {
  const { director, links } = await aTable();
  const link = await giveOut(director, links);
  const wrong = String((Number(link.pin) + 1) % 1_000_000).padStart(6, '0');
  for (const pin of [undefined, wrong]) {
    const answer = await director.post('/api/link-visits', { token: tokenOf(link), pin });
    expect([answer.status, answer.body.code]).toEqual([401, 'link-not-good']);
  }
  const halfCookie = new Visitor('who has the address but not the PIN', null, director.baseUrl, tokenOf(link));
  expect((await halfCookie.get('/api/table')).body.code).toBe('link-not-good');
});

test('whoever guesses PINs slows down that one link, for everybody; the other link of the same building opens', async () => {
  const { department, director, links } = await aTable();
  const [guessed, other] = [await giveOut(director, links), await giveOut(director, links, { label: 'Sunniva, spotter' })];
  const guess = (pin: string) => director.post('/api/link-visits', { token: tokenOf(guessed), pin });
  for (let tries = 0; tries < 4; tries += 1) expect((await guess('x')).body.code).toBe('link-not-good');
  const who = hashOf(`link ${hashOf(tokenOf(guessed))}`);
  const [{ failures }] = (await department.pool.query('select count(*)::int as failures from sign_in_attempt where email_hash = $1', [who])).rows;
  expect(failures).toBe(4);
  // The fifth, an hour from now, so that the wait does not end while the test looks.
  await department.pool.query(`insert into sign_in_attempt (id, email_hash, address_hash, succeeded, attempted_at) values ($1, $2, $2, false, now() + interval '1 hour')`, [randomUUID(), who]);
  const right = await guess(guessed.pin);
  expect([right.status, right.body.code]).toEqual([429, 'sign-in-delayed']);
  await Visitor.atTable(other);
});

test('of many guesses at once no more pass than one after the other', async () => {
  const { department, director, links } = await aTable();
  const link = await giveOut(director, links);
  const guesses = await Promise.all(Array.from({ length: 30 }, () => director.post('/api/link-visits', { token: tokenOf(link), pin: 'x' })));
  const codes = guesses.map(({ body }) => body.code);
  expect(codes.filter((code) => code === 'link-not-good').length).toBeLessThanOrEqual(6);
  expect(new Set(codes)).toEqual(new Set(['link-not-good', 'sign-in-delayed']));
  const who = hashOf(`link ${hashOf(tokenOf(link))}`);
  const [{ failures }] = (await department.pool.query('select count(*)::int as failures from sign_in_attempt where email_hash = $1', [who])).rows;
  expect(failures).toBeLessThanOrEqual(6);
});

test('a link opens with the day before; who comes earlier is told so only after the right PIN', async () => {
  const { director, links } = await aTable(2);
  const early = await giveOut(director, links);
  expect(early.state).toBe('early');
  const visit = (pin?: string) => director.post('/api/link-visits', { token: tokenOf(early), pin });
  expect((await visit()).body.code).toBe('link-not-good');
  const told = await visit(early.pin);
  expect([told.status, told.body.code]).toEqual([403, 'link-not-yet-open']);
  const tomorrow = await aTable(1);
  await Visitor.atTable(await giveOut(tomorrow.director, tomorrow.links));
});

test('a revoked link is refused at once, also for who is inside, and what was logged before stays', async () => {
  const table = await aTable();
  const { director, links, log } = table;
  const link = await giveOut(director, links);
  const substitute = await Visitor.atTable(link);
  await substitute.make(log, aNote());
  expect((await director.make(`${links}/${link.id}/revoke`)).state).toBe('revoked');
  const late = await substitute.post(log, aNote());
  expect([late.status, late.body.code]).toEqual([403, 'table-link-revoked']);
  expect((await substitute.get('/api/table')).body.code).toBe('link-not-good');
  expect((await director.post('/api/link-visits', { token: tokenOf(link), pin: link.pin })).body.code).toBe('link-not-good');
  expect((await director.look(log)).entries).toHaveLength(1);
  expect((await director.post(`${links}/${link.id}/revoke`)).body.code).toBe('link-already-revoked');
});

test('when its time is over a link says so to whom it had let in', async () => {
  const table = await aTable();
  const link = await giveOut(table.director, table.links);
  const substitute = await Visitor.atTable(link);
  await endsNow(table, link.id);
  const answer = await substitute.post(table.log, aNote());
  expect([answer.status, answer.body.code]).toEqual([403, 'table-link-ended']);
});

test('the link of one night is worth nothing at another, whether that night is there or not', async () => {
  const { department, director, links } = await aTable();
  const neighbour = await aNightInDays(department, 1);
  const elsewhere = await aTable();
  const substitute = await Visitor.atTable(await giveOut(director, links));
  for (const send of [(path: string) => substitute.get(path), (path: string) => substitute.post(path, aNote())]) {
    const answers = [];
    for (const id of [neighbour.nightId, elsewhere.nightId, randomUUID()]) {
      const { status, body } = await send(`/api/nights/${id}/log`);
      answers.push(JSON.stringify([status, { ...body, instance: '' }]));
    }
    expect(JSON.parse(answers[0]!)).toMatchObject([401, { code: 'not-signed-in' }]);
    expect(new Set(answers).size).toBe(1);
  }
});

test('an announcer whose session ends goes on with the own link of the night, under the own name', async () => {
  const { department, nightId, log } = await aTable();
  const announcer = await department.announcer.opensTable(nightId);
  await department.pool.query(`update session set expires_at = now() - interval '1 second' where token_hash = $1`, [hashOf(announcer.token!)]);
  expect((await department.announcer.get(log)).body.code).toBe('signed-out-by-now');
  const table = await announcer.look('/api/table');
  expect(table).toMatchObject({ nightId, kind: 'own', maySignOff: true, workerName: expect.stringContaining('announcer') });
  await announcer.make(log, aNote());
  expect((await announcer.look(log)).entries).toMatchObject([{ loggedByName: table.workerName }]);
});

test('the desk opened again on the same device keeps its link; a link that ends soon is made anew', async () => {
  const table = await aTable();
  const announcer = await table.department.announcer.opensTable(table.nightId);
  expect((await announcer.opensTable(table.nightId)).linkCookie).toBe(announcer.linkCookie);
  const other = await announcer.opensTable((await aNightInDays(table.department, 1)).nightId);
  expect((await other.look('/api/table')).nightId).not.toBe(table.nightId);
  expect((await (await other.opensTable(table.nightId)).look('/api/table')).nightId).toBe(table.nightId);
  const [own] = (await table.director.look(table.links)).data;
  expect(own).toMatchObject({ state: 'open', personName: expect.stringContaining('announcer'), label: null });
  await table.department.ask(`update link set expires_at = now() + interval '1 hour' where department_id = $1 and id = $2`, [table.department.id, own.id]);
  const again = await announcer.opensTable(table.nightId);
  expect(again.linkCookie).not.toBe(announcer.linkCookie);
  expect((await table.director.look(table.links)).data).toHaveLength(2);
});

test('the own link ends with the membership and with a revocation, and then signing in is what helps', async () => {
  const { department, director, nightId, links, log } = await aTable();
  const leaver = await aMember(department.pool, department.id, ['announcer']);
  const withoutSession = ({ personId, baseUrl, linkCookie }: Visitor) => new Visitor(personId, null, baseUrl, linkCookie);
  const [staying, leaving] = [withoutSession(await department.announcer.opensTable(nightId)), withoutSession(await leaver.opensTable(nightId))];
  for (const bearer of [staying, leaving]) expect((await bearer.get(log)).status).toBe(200);
  await department.ask(`update membership set ended_on = '2020-01-01' where department_id = $1 and person_id = $2`, [department.id, leaver.personId]);
  expect((await leaving.get(log)).body.code).toBe('not-signed-in');
  expect((await staying.get(log)).status).toBe(200);
  const own = (await director.look(links)).data.find((one: { personName: string }) => one.personName.includes(staying.personId.slice(-4)));
  await director.make(`${links}/${own.id}/revoke`);
  expect((await staying.get(log)).body.code).toBe('not-signed-in');
});

test('signing out ends the own link of this browser; the link that was given out, and other devices, stay', async () => {
  const { department, director, nightId, links, log } = await aTable();
  const elsewhere = await department.announcer.opensTable(nightId);
  const given = await giveOut(director, links);
  const answer = await department.announcer.post('/api/table/open', { nightId });
  const own = /-link=([^;]+)/.exec(answer.headers.get('set-cookie')!)![1]!;
  const both = `${own}~${(await Visitor.atTable(given)).linkCookie}`;
  const here = new Visitor(department.announcer.personId, department.announcer.token, director.baseUrl, both);
  expect((await here.post('/api/sign-out')).status).toBe(204);
  const without = (linkCookie: string | null) => new Visitor('after signing out', null, director.baseUrl, linkCookie);
  expect((await without(own).get(log)).status).toBe(401);
  expect((await without(both).look('/api/table')).workerName).toBe('Odell, substitute');
  expect((await without(both).make(log, aNote())).results).toMatchObject([{ status: 'stored' }]);
  expect((await without(elsewhere.linkCookie).get(log)).status).toBe(200);
});

test('a bookkeeper, who may not log, works the table with a link like anybody', async () => {
  const { department, director, links, log } = await aTable();
  expect((await department.bookkeeper.get(log)).body.code).toBe('role-missing');
  const { linkCookie } = await Visitor.atTable(await giveOut(director, links, { label: 'Perpetua at the table' }));
  const both = new Visitor(department.bookkeeper.personId, department.bookkeeper.token, department.bookkeeper.baseUrl, linkCookie);
  await both.make(log, aNote());
  expect((await both.look(log)).entries[0].loggedByName).toBe('Perpetua at the table');
});

test('Friday’s table still takes what a device holds after Saturday’s was opened on it', async () => {
  const { department, director, nightId, links, log } = await aTable();
  const saturday = await aNightInDays(department, 1);
  const friday = await Visitor.atTable(await giveOut(director, links));
  const link = await giveOut(director, `/api/nights/${saturday.nightId}/table-links`);
  const both = await friday.post('/api/link-visits', { token: tokenOf(link), pin: link.pin });
  const device = new Visitor('substitute', null, friday.baseUrl, /-link=([^;]+)/.exec(both.headers.get('set-cookie')!)![1]!);
  await device.make(log, aNote());
  await device.make(`/api/nights/${saturday.nightId}/log`, aNote());
  expect((await device.look('/api/table')).nightId).toBe(saturday.nightId);
  expect((await device.look(`/api/table?nightId=${nightId}`)).nightId).toBe(nightId);
});

test('only who gives out links sees them and makes them, and none is made for a night that is signed off', async () => {
  const { department, director, nightId, links } = await aTable();
  for (const person of [department.announcer, department.bookkeeper]) expect((await person.get(links)).body.code).toBe('role-missing');
  expect((await director.post(links, { label: ' ', maySignOff: false })).status).toBe(400);
  await director.make(`/api/nights/${nightId}/sign-off`);
  expect((await director.post(links, { label: 'Too late', maySignOff: false })).body.code).toBe('night-already-signed-off');
});
