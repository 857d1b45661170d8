import { v7 } from 'uuid';
import { beforeAll, expect, test } from 'vitest';
import { LINK_RIGHTS } from '../../server/domain/access/link-rights.ts';
import { mayUse } from '../../server/domain/access/rights.ts';
import type { Right, Role } from '../../server/domain/access/rights.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { operationsOf } from '../support/open-document.ts';
import type { OpenDocument } from '../support/open-document.ts';
import { aContract, aNightInDays, aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';
import { Visitor } from '../support/visitor.ts';
import { LINK_ROUTES, OR_LINK_ROUTES, ROUTES } from './routes.ts';

const document = (await new Visitor('anyone', null).look('/api/openapi.json')) as OpenDocument;
const operations = operationsOf(document);
const ROLES: Role[] = ['director', 'bookkeeper', 'announcer'];

/** An object of each kind that routes name in their address, by the first word of the address and the name in braces. */
type Objects = Record<string, string>;

async function everyObject(department: Department): Promise<Objects> {
  const { director } = department;
  const season = await aSeason(department, 1);
  const signed = await aSignedContract(department, season, { benefits: [{ name: 'Banner at the Perch', quantity: 1, rateCents: 10_000 }], title: 'Walls' });
  const draft = await aContract(department, season, { title: 'Draft of the walls' });
  const copy = await director.make('/api/copies', { sponsorId: season.sponsorId, readKindId: season.readKinds.gameBall, title: 'Game ball', fallbackText: 'Tonight’s game ball.', text: 'Tonight’s game ball comes from Juniper and Pike Hardware.' });
  const slogan = await director.make('/api/slogans', { sponsorId: season.sponsorId, text: 'Better tools, better days', knownFrom: 'The sign over the door' });
  const link = await director.make(`/api/sponsors/${season.sponsorId}/links`, { label: 'Hazel Juniper', expiresAt: '2099-01-01T00:00:00.000Z' });
  const tonight = await aNightInDays(department, 0);
  const tableLink = await director.make(`/api/nights/${tonight.nightId}/table-links`, { label: 'Odell, substitute', maySignOff: true });
  const line = await director.make('/api/rate-card-lines', { seasonId: season.seasonId, readKindId: season.readKinds.gameBall, priceCents: 7500 });
  const script = await director.make('/api/scripts', { moment: 'welcome', title: 'Welcome of the walls', text: 'Good evening.' });
  await director.make(`/api/nights/${season.games[0]!.nightId}/packet-issues`);
  const placement = await director.make('/api/placements', { commitmentId: signed.commitments[0].id, gameId: season.games[0]!.gameId, windowKey: 'pregame' });
  await director.make(`/api/nights/${season.games[0]!.nightId}/packet-issues`);
  const honours = await director.make(`/api/nights/${season.games[0]!.nightId}/honours-lists`, { title: 'Senior night', kind: 'seniors', windowKind: 'pregame' });
  const invoice = await director.make('/api/invoices', { contractId: signed.id, throughDay: '2026-11-30', issuedOn: '2026-11-23' });
  const payment = await director.make('/api/payments', {
    sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-01', method: 'check', reference: '1041', amountCents: 1000,
    applications: [{ invoiceId: invoice.id, amountCents: 1000 }],
  });
  const certificate = await director.make(`/api/payers/${season.payerId}/exemption-files`, { name: 'certificate.pdf', content: Buffer.from('%PDF-1.7').toString('base64') });
  const run = await director.make('/api/billing-runs', { throughDay: '2026-11-30', issuedOn: '2026-11-30' });
  const memo = await aMemo(department, season);
  const { waitingWriteOff } = await director.make(`/api/invoices/${(await director.make('/api/charges', { sellerId: season.sellerId, payerId: season.payerId, description: 'Fee of a returned check', amountCents: 1200, issuedOn: '2026-12-01' })).id}/write-off-requests`, { amountCents: 1200, reason: 'The store closed' });
  const batch = await director.make('/api/journal-batches', { sellerId: season.sellerId, throughOn: '2026-12-01', allowsOpenMonth: true });
  // Taken by the announcer, who sees no other.
  const take = (reference: string) => department.announcer.make('/api/receipts', { sellerId: season.sellerId, payerId: season.payerId, fromWhom: 'Hazel Juniper', takenOn: '2026-12-01', method: 'check', reference, amountCents: 700 });
  const [receipt, deposited] = [await take('2041'), await take('2042')];
  const slip = await director.make('/api/deposit-slips', { sellerId: season.sellerId, depositedOn: '2026-12-02', paymentIds: [deposited.paymentId], countedCents: 700 });
  const asked = await director.make(`/api/nights/${season.games[0]!.nightId}/requests`, { kind: 'other', fields: { text: 'The snack stand closes at halftime.' } });
  const people = await director.look('/api/people');
  const atTheDoors = { id: v7(), sequence: 1, kind: 'note', occurredAt: '2026-12-05T02:00:00.000Z' };
  for (const text of ['Doors open', 'Doors shut']) await director.make(`/api/nights/${season.games[0]!.nightId}/log`, { deviceId: signed.id, entries: [{ ...atTheDoors, detail: { text } }] });
  const aside = (await director.look(`/api/nights/${season.games[0]!.nightId}/log/aside`)).data[0];
  const message = await director.make('/api/messages', { kind: 'invoice', aboutId: invoice.id, toAddress: 'hazel@juniper.example' });
  return {
    'write-off-requests/id': waitingWriteOff.id,
    'messages/id': message.id,
    'people/id': people.data[0].id, 'requests/id': asked.id, 'ask/token': link.token,
    'schools/id': season.schoolId, 'venues/id': season.venueId, 'seasons/id': season.seasonId, 'teams/id': season.teamId, 'players/id': season.playerIds[0]!,
    'games/id': season.games[0]!.gameId, 'nights/id': season.games[0]!.nightId,
    'sponsor-categories/id': season.categoryId, 'sponsors/id': season.sponsorId, 'sellers/id': season.sellerId, 'payers/id': season.payerId,
    'read-kinds/id': season.readKinds.gameBall, 'rate-card-lines/id': line.id, 'contracts/id': signed.id, 'contracts/benefitId': signed.benefits[0].id,
    'copies/id': copy.id, 'copies/versionId': copy.versions[0].id, 'slogans/id': slogan.id, 'sponsors/linkId': link.id, 'sponsor-page/versionId': copy.versions[0].id, linkToken: link.token, 'nights/linkId': tableLink.id, tableAddress: tableLink.address, tablePin: tableLink.pin, tonightId: tonight.nightId, 'placements/id': placement.id, 'honours-lists/id': honours.id, 'scripts/id': script.id,
    'receipts/id': receipt.id, 'deposit-slips/id': slip.id,
    'billing-runs/id': run.id, 'payers/fileId': certificate.data[0].id,
    'nights/asideId': aside.id, 'credit-memos/id': memo.id, 'journal-batches/id': batch.id, 'journal-layouts/id': season.sellerId, 'months/month': '2026-11', 'accounts/code': '1000', 'invoices/id': invoice.id, 'payments/id': payment.id, 'applications/id': payment.applications[0].id, draft: draft.id,
  };
}

/** Names that are the same in every department: months of the calendar and accounts of the chart. What they show is each department's own. */
const NAMES_OF_ALL = ['/api/months/', '/api/accounts/'];

/** A game that was billed is cancelled, so that its read is credited. */
async function aMemo(department: Department, season: Season): Promise<{ id: string }> {
  const { director } = department;
  const game = { seasonId: season.seasonId, level: 'varsity', homeTeamId: season.teamId, visitorTeamIds: [season.opponentTeamId], playedOn: '2027-01-22', startsAtClock: '19:00', venueId: season.venueId };
  const cancelled = await director.make('/api/games', game);
  const commitments = [{ readKindId: season.readKinds.concession, counting: 'perGame', reads: 1, rateCents: 4000 }];
  const contract = await aSignedContract(department, season, { title: 'Credited', commitments, priceCents: 8000, billingPlan: { kind: 'inFull', on: '2026-11-20' } });
  await director.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-30', issuedOn: '2026-11-23' });
  await director.make(`/api/games/${cancelled.id}/cancel`, { reason: 'Ice' });
  return (await director.look('/api/credit-memos')).data[0];
}

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

/** Bodies that fit, so that the request reaches the object in its address. */
const on = '2026-12-04';
const BODIES: Record<string, Record<string, unknown>> = {
  'PATCH /api/people/{id}': { roles: ['announcer'] },
  'POST /api/messages/{id}/bounced': { detail: 'The mailbox is full' },
  'PUT /api/teams/{id}/roster': { players: [] },
  'PUT /api/nights/{id}/people': { people: [] },
  'POST /api/games/{id}/play': { scores: [] },
  'POST /api/games/{id}/postpone': { reason: 'Snow' },
  'POST /api/games/{id}/cancel': { reason: 'Snow' },
  'POST /api/contracts/{id}/sign': { signedOn: on, signedByName: 'Hazel Juniper' },
  'POST /api/contracts/{id}/opening': { givenByCommitment: [], billedCents: 0, paidCents: 0, asOf: on },
  'POST /api/contracts/{id}/amend': { commitmentId: v7(), reads: 1, priceCents: 0 },
  'POST /api/contracts/{id}/amend/preview': { commitmentId: v7(), reads: 1, priceCents: 0 },
  'POST /api/contracts/{id}/swap': { fromLineId: v7(), fromReads: 1, toLineId: v7(), toReads: 1 },
  'POST /api/contracts/{id}/swap/preview': { fromLineId: v7(), fromReads: 1, toLineId: v7(), toReads: 1 },
  'POST /api/contracts/{id}/lower-price': { byCents: 1 },
  'POST /api/contracts/{id}/lower-price/preview': { byCents: 1 },
  'POST /api/contracts/{id}/hold': { reason: 'Unpaid since January' },
  'POST /api/contracts/{id}/hold/preview': { reason: 'Unpaid since January' },
  'POST /api/contracts/{id}/lift-hold': { reason: 'Paid' },
  'POST /api/contracts/{id}/lift-hold/preview': { reason: 'Paid' },
  'POST /api/contracts/{id}/assign': { reason: 'The store is sold', toSponsorId: v7(), toPayerId: v7() },
  'POST /api/contracts/{id}/assign/preview': { reason: 'The store is sold', toSponsorId: v7(), toPayerId: v7() },
  'POST /api/contracts/{id}/carry': { toContractId: v7(), lineId: v7(), count: 1, toLineId: v7() },
  'POST /api/contracts/{id}/carry/preview': { toContractId: v7(), lineId: v7(), count: 1, toLineId: v7() },
  'POST /api/contracts/{id}/goods': { receivedOn: on, what: 'Twelve game balls', amountCents: 100 },
  'PUT /api/contracts/{id}/goods-promises': { promises: [] },
  'POST /api/contracts/{id}/goods-deliveries': { promiseId: v7(), receivedOn: on, quantity: 1, proof: 'Taken in by Odell' },
  'POST /api/contracts/{id}/goods-shortage': { settles: 'billed' },
  'POST /api/contracts/{id}/benefits/{benefitId}/deliveries': { deliveredOn: on, quantity: 1, proof: 'Hung at the Perch' },
  'POST /api/contracts/{id}/benefits/{benefitId}/earned': { throughOn: on },
  'POST /api/nights/{id}/table-links': { label: 'Odell, substitute', maySignOff: false },
  'POST /api/sponsors/{id}/links': { label: 'Hazel Juniper', expiresAt: '2099-01-01T00:00:00.000Z' },
  'POST /api/copies/{id}/stop': { stoppedByName: 'Hazel Juniper', reason: 'The store moves' },
  'POST /api/sponsor-page/versions/{versionId}/approve': { name: 'Hazel Juniper' },
  'POST /api/sponsor-page/versions/{versionId}/ask-for-change': { name: 'Hazel Juniper', note: 'The street is Third' },
  'POST /api/copies/{id}/versions': { text: 'Juniper and Pike Hardware.' },
  'POST /api/copies/{id}/versions/{versionId}/approve': { approvedByName: 'Hazel Juniper', approvedOn: on },
  'POST /api/nights/{id}/log': { deviceId: v7(), entries: [{ id: v7(), sequence: 1, kind: 'note', occurredAt: '2026-12-05T02:00:00.000Z', detail: { text: 'Doors open' } }] },
  'POST /api/nights/{id}/log/import': { format: 'rafterline-table-entries', version: 1, nightId: v7(), entries: [{ id: v7(), deviceId: v7(), sequence: 1, kind: 'note', occurredAt: '2026-12-05T02:00:00.000Z' }] },
  'POST /api/nights/{id}/log/aside/{asideId}/settle': { answer: 'setAside' },
  'POST /api/nights/{id}/settle': { entryId: v7(), answer: 'counts' },
  'POST /api/nights/{id}/amend': { reason: 'Forgotten at the table', deviceId: v7(), entries: [{ id: v7(), sequence: 1, kind: 'note', occurredAt: '2026-12-05T02:00:00.000Z', detail: { text: 'Doors open' } }] },
  'POST /api/nights/{id}/honours-lists': { title: 'Senior night', kind: 'seniors', windowKind: 'pregame' },
  'PUT /api/honours-lists/{id}/students': { students: [] },
  'POST /api/honours-lists/{id}/import': { csv: 'student\nLuka Wren', confirm: false },
  'POST /api/scripts/{id}/bring-back': { number: 1 },
  'POST /api/scripts/{id}/approve': { approvedByName: 'Hazel Juniper', approvedOn: on, wordsNumber: 1 },
  'POST /api/nights/{id}/requests': { kind: 'other', fields: { text: 'The snack stand closes at halftime.' } },
  'POST /api/requests/{id}/decline': { reason: 'No time left tonight' },
  'POST /api/ask/{token}': { id: v7(), kind: 'other', fields: { text: 'The snack stand closes at halftime.' } },
  'PUT /api/journal-layouts/{id}': { name: 'Journal', columns: [{ field: 'amount', heading: 'Amount' }], codeParts: [], delimiter: 'comma', dayForm: '2026-12-31', decimalSign: 'point', positiveIs: 'debit', hasHeadings: true },
  'POST /api/payers/{id}/exemption-files': { name: 'certificate.pdf', content: 'JVBERi0xLjc=' },
  'POST /api/invoices/{id}/void': { reason: 'Drawn up twice' },
  'POST /api/contracts/{id}/credits': { commitmentId: v7(), count: 1, reason: 'Missed' },
  'POST /api/contracts/{id}/credits/preview': { commitmentId: v7(), count: 1, reason: 'Missed' },
  'POST /api/contracts/{id}/allowances': { amountCents: 100, reason: 'Missed' },
  'POST /api/contracts/{id}/allowances/preview': { amountCents: 100, reason: 'Missed' },
  'POST /api/contracts/{id}/overbilling-credits': { reason: 'Missed' },
  'POST /api/contracts/{id}/overbilling-credits/preview': { reason: 'Missed' },
  'POST /api/contracts/{id}/forfeits': { commitmentId: v7(), count: 1, reason: 'Missed', notice: 'By letter' },
  'POST /api/contracts/{id}/forfeits/preview': { commitmentId: v7(), count: 1, reason: 'Missed', notice: 'By letter' },
  'POST /api/contracts/{id}/releases': { commitmentId: v7(), count: 1, reason: 'Missed' },
  'POST /api/contracts/{id}/releases/preview': { commitmentId: v7(), count: 1, reason: 'Missed' },
  'POST /api/contracts/{id}/minimum-claims': {},
  'POST /api/contracts/{id}/minimum-claims/preview': {},
  'POST /api/contracts/{id}/makegoods': { commitmentId: v7(), missed: 1, replacementReadKindId: v7(), replacements: 2, agreedOn: on, agreedWith: 'Hazel Juniper' },
  'POST /api/credit-memos/{id}/applications': { invoiceId: v7(), amountCents: 100 },
  'POST /api/payments/{id}/return': { kind: 'returned', returnedOn: on, reason: 'No funds' },
  'POST /api/payments/{id}/refunds': { amountCents: 100, refundedOn: on, method: 'check' },
  'POST /api/credit-memos/{id}/refunds': { amountCents: 100, refundedOn: on, method: 'check' },
  'POST /api/invoices/{id}/write-off-requests': { amountCents: 100, reason: 'The store closed' },
  'POST /api/invoices/{id}/recoveries': { amountCents: 100, recoveredOn: on, reason: 'Paid after all' },
  'POST /api/invoices/{id}/discounts': { basisPoints: 200, takenOn: on, reason: 'Paid within ten days' },
  'POST /api/write-off-requests/{id}/decline': { reason: 'Ask them once more' },
  'POST /api/payments/{id}/applications': { invoiceId: v7(), amountCents: 100 },
};

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
