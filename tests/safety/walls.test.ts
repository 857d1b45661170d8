import { v7 } from 'uuid';
import { beforeAll, expect, test } from 'vitest';
import { LINK_RIGHTS } from '../../server/domain/access/link-rights.ts';
import { mayUse } from '../../server/domain/access/rights.ts';
import type { Right, Role } from '../../server/domain/access/rights.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { operationsOf } from '../support/open-document.ts';
import type { OpenDocument } from '../support/open-document.ts';
import { Visitor } from '../support/visitor.ts';
import { LINK_ROUTES, OR_LINK_ROUTES, ROUTES } from './routes.ts';
import { BODIES } from './wall-bodies.ts';
import { everyObject } from './wall-objects.ts';
import type { Objects } from './wall-objects.ts';

const document = (await new Visitor('anyone', null).look('/api/openapi.json')) as OpenDocument;
const operations = operationsOf(document);
const ROLES: Role[] = ['director', 'bookkeeper', 'announcer'];

/** Names that are the same in every department: months of the calendar and accounts of the chart. What they show is each department's own. */
const NAMES_OF_ALL = ['/api/months/', '/api/accounts/'];

function addressOf(path: string, objects: Objects | null): string {
  const noun = path.split('/')[2]!;
  return path.replace(/\{(\w+)\}/g, (_, name: string) => (objects ? (objects[`${noun}/${name}`] ?? 'an-object-the-test-does-not-know') : v7()));
}

let home: Department;
let own: Objects;
let foreign: Objects;

/** The department outlives one test here, so its books are checked in the last one. */
beforeAll(async () => {
  home = await aDepartmentForAll();
  own = await everyObject(home);
  foreign = await everyObject(await aDepartmentForAll());
});

async function aDepartmentForAll(): Promise<Department> {
  return aDepartment({ checksBooks: false });
}

test('every route of the server stands in the table of rights, and the table names no other', () => {
  const served = operations.map((operation) => `${operation.method} ${operation.path}`).sort();
  const known = { ...ROUTES, ...LINK_ROUTES };
  expect(served.filter((route) => !(route in known))).toEqual([]);
  expect(Object.keys(known).filter((route) => !served.includes(route))).toEqual([]);
});

test('the test knows an object for every name in an address', () => {
  expect(operations.filter((operation) => addressOf(operation.path, own).includes('an-object')).map((operation) => operation.path)).toEqual([]);
});

test('nobody who is not signed in gets past the door', async () => {
  const wrong: string[] = [];
  for (const { method, path } of operations) {
    if (ROUTES[`${method} ${path}`] === 'open') continue;
    const answer = await home.stranger.send(method, addressOf(path, own), method === 'GET' ? undefined : {}, { version: 1, key: v7() });
    const code = `${method} ${path}` in LINK_ROUTES ? 'link-not-good' : 'not-signed-in';
    if (answer.status !== 401 || answer.body.code !== code) wrong.push(`${method} ${path} → ${answer.status}`);
  }
  expect(wrong).toEqual([]);
});

test('each role gets exactly as far as its rights go', async () => {
  const wrong: string[] = [];
  for (const role of ROLES) {
    for (const { method, path } of operations) {
      const right = ROUTES[`${method} ${path}`] as Right | 'open';
      if (`${method} ${path}` in LINK_ROUTES || right === 'open' || path === '/api/sign-out' || path === '/api/me/password') continue;
      const answer = await home[role].send(method, addressOf(path, method === 'GET' ? own : null), method === 'GET' ? undefined : {}, { version: 1, key: v7() });
      const refused = answer.status === 403 && answer.body.code === 'role-missing';
      if (refused === mayUse([role], right)) wrong.push(`${role}: ${method} ${path} (${right}) → ${answer.status}`);
      if (answer.status >= 500) wrong.push(`${role}: ${method} ${path} failed with ${answer.status}`);
      if (method === 'GET' && !refused && answer.status !== 200) wrong.push(`${role}: ${method} ${path} does not show the department’s own object: ${answer.status}`);
    }
  }
  expect(wrong).toEqual([]);
});

test('an object of another department answers exactly as one that never was', async () => {
  const wrong: string[] = [];
  for (const { method, path, body } of operations.filter(({ path }) => path.includes('{') && !NAMES_OF_ALL.some((name) => path.startsWith(name)))) {
    const sent = method === 'GET' ? undefined : (BODIES[`${method} ${path}`] ?? (body ? {} : undefined));
    const sending = { version: 1, key: v7() };
    const theirs = await home.director.send(method, addressOf(path, foreign), sent, sending);
    const nobodys = await home.director.send(method, addressOf(path, null), sent, { ...sending, key: v7() });
    const [one, other] = [theirs, nobodys].map((answer) => JSON.stringify([answer.status, { ...answer.body, instance: '' }]));
    if (one !== other) wrong.push(`${method} ${path}: ${one} / ${other}`);
    if (theirs.status < 400) wrong.push(`${method} ${path} reached another department's object`);
    if (theirs.status === 400) wrong.push(`${method} ${path}: the body of the test does not fit, so the wall was not reached: ${JSON.stringify(theirs.body.errors)}`);
  }
  expect(wrong).toEqual([]);
});

const atOwnTable = () => Visitor.atTable({ address: own['tableAddress']!, pin: own['tablePin']! });
const opensBy = (kind: 'sponsor' | 'table', route: string) => (LINK_RIGHTS[LINK_ROUTES[route]!] as readonly string[]).includes(kind);

test('a link opens its own page and no other route, and a session opens none of a link’s', async () => {
  const wrong: string[] = [];
  for (const [kind, bearer] of [['sponsor', await Visitor.byLink(own['linkToken']!)], ['table', await atOwnTable()]] as const) {
    for (const { method, path } of operations) {
      const route = `${method} ${path}`;
      if (ROUTES[route] === 'open') continue;
      const sent = method === 'GET' ? undefined : (BODIES[route] ?? {});
      // The night in the address is another one than the table's: there its link is worth as much as none.
      const byLink = await bearer.send(method, addressOf(path, route in LINK_ROUTES ? null : own), sent, { version: 1, key: v7() });
      const code = route in LINK_ROUTES ? 'link-not-good' : 'not-signed-in';
      const isOpen = route in LINK_ROUTES && opensBy(kind, route);
      if (isOpen ? ![200, 404].includes(byLink.status) : byLink.status !== 401 || byLink.body.code !== code) wrong.push(`${kind}’s link: ${route} → ${byLink.status} ${byLink.body.code}`);
      if (!(route in LINK_ROUTES)) continue;
      const bySession = await home.director.send(method, addressOf(path, own), sent, { version: 1, key: v7() });
      if (bySession.status !== 401 || bySession.body.code !== 'link-not-good') wrong.push(`director: ${route} → ${bySession.status}`);
    }
  }
  expect(wrong).toEqual([]);
});

test('the link of a night’s table opens what is said of that very night, and nothing more of it', async () => {
  const bearer = await atOwnTable();
  const ofNights = operations.filter(({ path }) => path.startsWith('/api/nights/{id}'));
  const wrong: string[] = [];
  for (const { method, path } of ofNights) {
    const route = `${method} ${path}`;
    const answer = await bearer.send(method, addressOf(path, { ...own, 'nights/id': own['tonightId']! }), method === 'GET' ? undefined : (BODIES[route] ?? {}), { version: 1, key: v7() });
    const isIn = answer.status !== 401 && answer.status < 500;
    if (isIn !== route in OR_LINK_ROUTES) wrong.push(`${route} → ${answer.status} ${answer.body.code}`);
  }
  expect(wrong).toEqual([]);
});

test('what a table’s link opens of its own night, it opens of no other: another’s, one that never was, another department’s', async () => {
  const bearer = await atOwnTable();
  const wrong: string[] = [];
  for (const route of Object.keys(OR_LINK_ROUTES)) {
    const [method, path] = route.split(' ') as [string, string];
    const answers = [];
    for (const nightId of [own['nights/id']!, foreign['nights/id']!, foreign['tonightId']!, v7()]) {
      const { status, body } = await bearer.send(method, addressOf(path, { ...own, 'nights/id': nightId }), method === 'GET' ? undefined : (BODIES[route] ?? {}), { version: 1, key: v7() });
      answers.push(JSON.stringify([status, { ...body, instance: '' }]));
    }
    if (new Set(answers).size > 1 || JSON.parse(answers[0]!)[0] < 400) wrong.push(`${route}: ${answers.join(' | ')}`);
  }
  expect(wrong).toEqual([]);
});

test('by a link, the words of another department and of another sponsor here answer as if they never were', async () => {
  const { director } = home;
  const neighbour = await director.make('/api/sponsors', { name: 'Blue Lantern Tire', categoryId: own['sponsor-categories/id'] });
  const theirs = await director.make('/api/copies', { sponsorId: neighbour.id, readKindId: own['read-kinds/id'], title: 'Tires', fallbackText: 'Blue Lantern Tire.', text: 'Blue Lantern Tire, on Quarry Road.' });
  const bearer = await Visitor.byLink(own['linkToken']!);
  const page = JSON.stringify(await bearer.look('/api/sponsor-page'));
  for (const word of ['Blue Lantern', theirs.id, foreign['copies/id']!, 'Łukasz', 'Xochitl']) expect([word, page.includes(word)]).toEqual([word, false]);
  for (const [route, body] of [['approve', { name: 'Hazel' }], ['ask-for-change', { name: 'Hazel', note: 'x' }]] as const) {
    const answers = [];
    for (const id of [foreign['sponsor-page/versionId']!, theirs.versions[0].id as string, v7()]) {
      const { status, body: said } = await bearer.post(`/api/sponsor-page/versions/${id}/${route}`, body);
      answers.push(JSON.stringify([status, { ...said, instance: '' }]));
    }
    expect(JSON.parse(answers[0]!)[0]).toBe(404);
    expect(new Set(answers).size).toBe(1);
  }
});

test('a form that names an object of another department is refused like one that names nothing', async () => {
  const { director } = home;
  const on = '2026-12-04';
  const tries: [string, (objects: Objects) => unknown][] = [
    ['/api/teams', (objects) => ({ seasonId: objects['seasons/id'], schoolId: objects['schools/id'], name: 'Girls', level: 'varsity' })],
    ['/api/sponsors', (objects) => ({ name: 'Blue Lantern Tire', categoryId: objects['sponsor-categories/id'] })],
    ['/api/payers', (objects) => ({ name: 'Blue Lantern Tire', sponsorId: objects['sponsors/id'] })],
    ['/api/copies', (objects) => ({ sponsorId: objects['sponsors/id'], readKindId: objects['read-kinds/id'], title: 'x', fallbackText: 'x', text: 'x' })],
    ['/api/slogans', (objects) => ({ sponsorId: objects['sponsors/id'], text: 'Better tools', knownFrom: 'x' })],
    ['/api/copies/check', (objects) => ({ sponsorId: objects['sponsors/id'], text: 'x' })],
    ['/api/placements', (objects) => ({ commitmentId: objects['contracts/id'], gameId: objects['games/id'], windowKey: 'pregame' })],
    ['/api/invoices', (objects) => ({ contractId: objects['contracts/id'], throughDay: on, issuedOn: on })],
    ['/api/journal-batches', (objects) => ({ sellerId: objects['sellers/id'], throughOn: on, allowsOpenMonth: true })],
    ['/api/payments', (objects) => ({ sellerId: objects['sellers/id'], payerId: objects['payers/id'], receivedOn: on, method: 'cash', amountCents: 1 })],
    ['/api/receipts', (objects) => ({ sellerId: objects['sellers/id'], payerId: objects['payers/id'], fromWhom: 'Hazel Juniper', takenOn: on, method: 'cash', amountCents: 1 })],
    ['/api/deposit-slips', (objects) => ({ sellerId: own['sellers/id'], depositedOn: on, paymentIds: [objects['payments/id']], countedCents: 1 })],
  ];
  const nothing: Objects = new Proxy({}, { get: () => v7() });
  for (const [path, bodyOf] of tries) {
    const theirs = await director.post(path, bodyOf(foreign));
    const nobodys = await director.post(path, bodyOf(nothing));
    expect([path, theirs.status >= 400 && theirs.status < 500]).toEqual([path, true]);
    expect([path, theirs.status, theirs.body.code]).toEqual([path, nobodys.status, nobodys.body.code]);
  }
});

test('the lists of one department hold nothing of another', async () => {
  const theirs = new Set(Object.values(foreign));
  for (const { path } of operations.filter((operation) => operation.method === 'GET' && !operation.path.includes('{'))) {
    const answer = await home.director.get(path);
    const ids = JSON.stringify(answer.body).match(/[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[0-9a-f]{4}-[0-9a-f]{12}/g) ?? [];
    expect([path, ids.filter((id) => theirs.has(id))]).toEqual([path, []]);
  }
});
