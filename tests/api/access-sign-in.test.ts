import { request } from 'node:http';
import { expect, test } from 'vitest';
import { hashPassword } from '../../server/access/password.ts';
import { webPool, baseUrl } from '../support/database.ts';
import { aDepartment, aMember } from '../support/department.ts';
import { Visitor } from '../support/visitor.ts';

const PASSWORD = 'quiet kestrels over the ridge';

async function aPersonWithPassword() {
  const department = await aDepartment();
  const member = await aMember(webPool, department.id, ['director']);
  const email = `${member.personId}@tamarack.example`;
  await webPool.query('update person set password_hash = $1 where id = $2', [await hashPassword(PASSWORD), member.personId]);
  return { department, email, personId: member.personId };
}

const nobody = new Visitor('nobody', null);

test('a director signs in with the right password and is told who they are', async () => {
  const { department, email } = await aPersonWithPassword();
  const answer = await nobody.post('/api/sign-in', { email: email.toUpperCase(), password: PASSWORD });
  expect(answer.status).toBe(200);
  expect(answer.body).toMatchObject({ department: { id: department.id }, roles: ['director'] });
  const cookie = answer.headers.get('set-cookie') ?? '';
  expect(cookie).toMatch(/HttpOnly/);
  expect(cookie).toMatch(/SameSite=Lax/);
  const token = /=([\w-]+);/.exec(cookie)![1]!;
  const [stored] = (await webPool.query('select count(*)::int as count from session where token_hash = $1', [token])).rows;
  expect(stored.count).toBe(0);
});

test('an unknown person and a wrong password get the same answer', async () => {
  const { email } = await aPersonWithPassword();
  const wrong = await nobody.post('/api/sign-in', { email, password: 'something else entirely' });
  const unknown = await nobody.post('/api/sign-in', { email: 'nobody.at.all@tamarack.example', password: 'something else entirely' });
  expect([wrong.status, wrong.body.code]).toEqual([401, 'wrong-sign-in']);
  expect(unknown.body).toEqual(wrong.body);
});

test('the fifth wrong password in a row makes the next try wait, even with the right one', async () => {
  const { email } = await aPersonWithPassword();
  for (let failure = 1; failure <= 6; failure += 1) {
    await webPool.query(
      `insert into sign_in_attempt (id, email_hash, address_hash, succeeded) values (gen_random_uuid(), encode(sha256($1::bytea), 'hex'), 'elsewhere', false)`,
      [email],
    );
  }
  const answer = await nobody.post('/api/sign-in', { email, password: PASSWORD });
  expect([answer.status, answer.body.code]).toEqual([429, 'sign-in-delayed']);
  expect(Number(answer.headers.get('retry-after'))).toBeGreaterThan(0);
});

test('a password of fourteen characters is refused and one of fifteen is taken', async () => {
  const { director } = await aDepartment();
  const person = { name: 'Xochitl Brandvold', roles: ['announcer'] };
  const short = await director.post('/api/people', { ...person, email: 'short@tamarack.example', password: 'fourteen chars' });
  expect([short.status, short.body.code]).toEqual([422, 'password-too-short']);
  expect(short.body.errors.password).toMatch(/15 characters/);
  const long = await director.post('/api/people', { ...person, email: `x${director.personId}@tamarack.example`, password: 'fifteen chars !' });
  expect(long.status).toBe(201);
});

test('a password does not travel in the open: over http only this same computer signs in', async () => {
  const { email } = await aPersonWithPassword();
  const from = (host: string) =>
    new Promise<[number | undefined, string | undefined]>((resolve, reject) => {
      const sending = request(`${baseUrl}/api/sign-in`, { method: 'POST', headers: { host, 'x-rafterline': '1', 'content-type': 'application/json' } }, (response) => {
        let text = '';
        response.on('data', (chunk) => (text += chunk));
        response.on('end', () => resolve([response.statusCode, JSON.parse(text).code]));
      });
      sending.on('error', reject);
      sending.end(JSON.stringify({ email, password: PASSWORD }));
    });
  expect(await from('gym.tamarack.example')).toEqual([403, 'insecure-address']);
  expect(await from('localhost:3000')).toEqual([200, undefined]);
});

test('what a director changes of the department is in the audit, by field and person', async () => {
  const { director } = await aDepartment();
  await director.patch('/api/department', { settings: { prayerOn: true } }, { version: 1 });
  const audit = await director.look('/api/audit');
  expect(audit.data[0]).toMatchObject({ tableName: 'department', action: 'update', fields: ['settings'], personName: expect.stringContaining('director') });
});

test('signing out ends the session at once', async () => {
  const { announcer } = await aDepartment();
  expect((await announcer.get('/api/me')).status).toBe(200);
  expect((await announcer.post('/api/sign-out')).status).toBe(204);
  const after = await announcer.get('/api/me');
  expect([after.status, after.body.code]).toEqual([401, 'signed-out-by-now']);
});

test('a session ends after thirty idle minutes', async () => {
  const { bookkeeper } = await aDepartment();
  const idle = (minutes: number) => webPool.query(`update session set last_seen_at = now() - make_interval(mins => $1) where person_id = $2`, [minutes, bookkeeper.personId]);
  await idle(29);
  expect((await bookkeeper.get('/api/me')).status).toBe(200);
  await idle(31);
  expect((await bookkeeper.get('/api/me')).status).toBe(401);
});

test('a request from another site is refused', async () => {
  const { director } = await aDepartment();
  const school = { name: 'Linden Falls', shortName: 'Linden Falls', nickname: 'Otters', firstColour: '#4B2E83', secondColour: '#FFFFFF' };
  const crossSite = await director.post('/api/schools', school, { headers: { 'sec-fetch-site': 'cross-site' } });
  expect([crossSite.status, crossSite.body.code]).toEqual([403, 'other-site']);
  const otherOrigin = await director.post('/api/schools', school, { headers: { origin: 'https://elsewhere.example' } });
  expect(otherOrigin.body.code).toBe('other-site');
  for (const origin of ['null', 'no origin at all', 'http://']) {
    expect([origin, (await director.post('/api/schools', school, { headers: { origin } })).body.code]).toEqual([origin, 'other-site']);
  }
  const own = await director.post('/api/schools', school, { headers: { origin: baseUrl, 'sec-fetch-site': 'same-origin' } });
  expect(own.status).toBe(201);
});

test('a department keeps its last director', async () => {
  const { director } = await aDepartment();
  const people = await director.look('/api/people');
  const own = people.data.find((person: { personId: string }) => person.personId === director.personId);
  const answer = await director.patch(`/api/people/${own.id}`, { roles: ['announcer'] }, { version: own.version });
  expect([answer.status, answer.body.code]).toEqual([422, 'last-director']);
});

test('a change without the version seen is refused, and so is one from an old version', async () => {
  const { director } = await aDepartment();
  const settings = { settings: { prayerOn: true } };
  const missing = await director.patch('/api/department', settings);
  expect([missing.status, missing.body.code]).toEqual([428, 'version-missing']);
  const first = await director.patch('/api/department', settings, { version: 1 });
  expect([first.status, first.body.version]).toEqual([200, 2]);
  const stale = await director.patch('/api/department', settings, { version: 1 });
  expect([stale.status, stale.body.code]).toEqual([412, 'stale-version']);
});

test('a seal covers what was written, and each next one chains the one before', async () => {
  const { director } = await aDepartment();
  const first = await director.make('/api/seals');
  const second = await director.make('/api/seals');
  expect([first.number, second.number]).toEqual([1, 2]);
  expect(first.rowCount).toBeGreaterThan(0);
  expect(second.head).not.toBe(first.head);
});
