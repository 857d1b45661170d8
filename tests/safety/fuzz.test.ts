import { request } from 'node:http';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mayUse } from '../../server/domain/access/rights.ts';
import type { Right } from '../../server/domain/access/rights.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { brokenBodies, operationsOf, valid } from '../support/open-document.ts';
import type { OpenDocument } from '../support/open-document.ts';
import { Visitor } from '../support/visitor.ts';
import { LINK_ROUTES, ROUTES } from './routes.ts';

const anyone = new Visitor('anyone', null);
const document = (await anyone.look('/api/openapi.json')) as OpenDocument;
const operations = operationsOf(document);
const seed = Number(process.env['FUZZ_SEED'] ?? 20261125);
const NOT_THERE = '01a212af-36aa-7084-9389-3479e6d3c1dc';
const SIGN_OUT = ['/api/sign-out', '/api/sign-in', '/api/me/password'];

const addressOf = (path: string) => path.replace(/\{\w+\}/g, NOT_THERE);

test('the document names every route that takes a body, with the bounds of its fields', () => {
  const bodies = operations.filter((operation) => operation.body);
  expect(bodies.length).toBeGreaterThan(30);
  const empty = bodies.filter((operation) => Object.keys(operation.body!.properties ?? {}).length === 0);
  expect(empty.map((operation) => operation.path)).toEqual([]);
});

/** Who gets as far as the form: the director, the bookkeeper where the right is theirs alone, and where a route is for links alone, the bearer of one. */
async function everyDoor({ director, bookkeeper }: Department): Promise<(operation: { method: string; path: string }) => Visitor> {
  const category = await director.make('/api/sponsor-categories', { name: 'Hardware' });
  const sponsor = await director.make('/api/sponsors', { name: 'Juniper & Pike Hardware', categoryId: category.id });
  const link = await director.make(`/api/sponsors/${sponsor.id}/links`, { label: 'Hazel Juniper', expiresAt: '2099-01-01T00:00:00.000Z' });
  const bearer = await Visitor.byLink(link.token);
  return ({ method, path }) => {
    const route = `${method} ${path}`;
    if (route in LINK_ROUTES) return bearer;
    const right = ROUTES[route];
    return right === undefined || right === 'open' || mayUse(['director'], right as Right) ? director : bookkeeper;
  };
}

test(`bodies that the document allows are taken or refused in words, never with a failure (seed ${seed})`, async () => {
  const sender = await everyDoor(await aDepartment());
  const failures: string[] = [];
  for (const operation of operations.filter((one) => one.body && !SIGN_OUT.includes(one.path))) {
    for (const body of fc.sample(valid(document, operation.body!), { seed, numRuns: 6 })) {
      const answer = await sender(operation).send(operation.method, addressOf(operation.path), body, { version: 1, key: crypto.randomUUID() });
      if (answer.status >= 500) failures.push(`${operation.method} ${operation.path} ${JSON.stringify(body)} → ${answer.status}`);
      if (answer.status >= 400 && !answer.headers.get('content-type')?.startsWith('application/problem+json')) failures.push(`${operation.path}: no problem+json`);
    }
  }
  expect(failures).toEqual([]);
});

test(`a body with one keyword broken is refused, and the field is named (seed ${seed})`, async () => {
  const sender = await everyDoor(await aDepartment());
  const failures: string[] = [];
  let sent = 0;
  for (const operation of operations.filter((one) => one.body && !SIGN_OUT.includes(one.path))) {
    const [whole] = fc.sample(valid(document, operation.body!), { seed, numRuns: 1 }) as Record<string, unknown>[];
    for (const { body, field, how } of brokenBodies(document, operation.body!, whole!)) {
      const answer = await sender(operation).send(operation.method, addressOf(operation.path), body, { version: 1, key: crypto.randomUUID() });
      sent += 1;
      if (answer.status !== 400 || !(field in (answer.body.errors ?? {}))) {
        failures.push(`${operation.method} ${operation.path} ${how} of ${field} → ${answer.status} ${JSON.stringify(answer.body).slice(0, 200)}`);
      }
    }
  }
  expect(sent).toBeGreaterThan(300);
  expect(failures.slice(0, 20)).toEqual([]);
});

test('an id that is none, broken JSON, a huge body and another content type are refused in words', async () => {
  const department = await aDepartment();
  const { director } = department;
  const sender = await everyDoor(department);
  for (const { method, path } of operations.filter((one) => one.method === 'GET' && /\{\w+\}/.test(one.path))) {
    const answer = await sender({ method, path }).get(path.replace(/\{\w+\}/g, "1' or true --"));
    expect([path, answer.status, answer.body.code]).toEqual([path, 404, 'not-found']);
  }
  const broken = await director.send('POST', '/api/schools', '{"name":', {});
  expect([broken.status, broken.body.code]).toEqual([400, 'malformed']);
  expect(await announcing(director, 5_000_000)).toEqual([413, 'too-large']);
  const other = await director.send('POST', '/api/schools', 'name=Kestrels', { headers: { 'content-type': 'application/x-www-form-urlencoded' } });
  expect([other.status, other.body.code]).toEqual([400, 'malformed']);
  expect((await director.get('/api/schools?sort=constructor')).status).toBe(200);
  const odd = await director.get('/api/schools?perPage=0&sort=;drop');
  expect([odd.status, odd.body.code]).toEqual([400, 'malformed']);
});

/** Says how large the body will be, and reads the refusal that comes before it is sent. */
function announcing(visitor: Visitor, bytes: number): Promise<[number | undefined, string]> {
  return new Promise((resolve, reject) => {
    const headers = { cookie: visitor.cookie, 'x-rafterline': '1', 'content-type': 'application/json', 'content-length': bytes };
    const sending = request(`${visitor.baseUrl}/api/schools`, { method: 'POST', headers }, (response) => {
      let text = '';
      response.on('data', (chunk) => (text += chunk));
      response.on('end', () => resolve([response.statusCode, JSON.parse(text).code]));
    });
    sending.on('error', reject);
    sending.write('{"name":"');
  });
}
