import { v7 } from 'uuid';
import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { TableDevice, aNightInDays } from '../support/season.ts';
import { Visitor } from '../support/visitor.ts';

const CAR = { car: 'blue Honda Civic', where: 'the north entrance', plate: 'k70-ob2', wrong: 'the lights are on' };
const NOTICE = { text: 'The snack stand closes at halftime.' };

async function aNight(days = 0) {
  const department = await aDepartment();
  const { nightId } = await aNightInDays(department, days);
  const { director } = department;
  const anyone = new Visitor('somebody in the building', null);
  const open = async () => /#ask\/([\w-]+)$/.exec((await director.make(`/api/nights/${nightId}/request-form/open`)).address)![1]!;
  const ask = (token: string, body: Record<string, unknown> = {}) => anyone.post(`/api/ask/${token}`, { id: v7(), kind: 'other', fields: NOTICE, ...body });
  const list = async () => (await director.look(`/api/nights/${nightId}/requests`)).data as any[];
  const device = new TableDevice();
  let sequence = 0;
  const log = async (kind: string, more: Record<string, unknown>) => {
    const id = v7();
    const { results } = await department.announcer.make(`/api/nights/${nightId}/log`, {
      deviceId: device.deviceId, entries: [{ id, sequence: (sequence += 1), kind, occurredAt: new Date().toISOString(), ...more }],
    });
    expect(results).toMatchObject([{ status: 'stored' }]);
    return id;
  };
  return { department, director, nightId, anyone, open, ask, list, log };
}

test('the public form is shut until the director opens it, and what it takes waits at the table', async () => {
  const { department, director, nightId, anyone, open, ask, list } = await aNight();
  expect(await director.look(`/api/nights/${nightId}/request-form`)).toMatchObject({ isOpen: false, hasCode: false });
  expect((await director.look(`/api/nights/${nightId}/bundle`)).settings.takesPublicRequests).toBe(false);
  const token = await open();
  expect(await anyone.look(`/api/ask/${token}`)).toEqual({ title: expect.any(String), departmentName: department.name, kinds: ['vehicle', 'fundraiser', 'music', 'other'], isOpen: true });
  expect((await director.look(`/api/nights/${nightId}/bundle`)).settings.takesPublicRequests).toBe(true);
  expect((await ask(token, { kind: 'vehicle', fields: CAR })).body).toEqual({ state: 'waiting' });
  expect(await list()).toMatchObject([{ source: 'public', kind: 'vehicle', state: 'waiting', fields: { ...CAR, plate: 'K70OB2' }, answers: [] }]);
});

test('a request that is sent again because its answer was lost is one request', async () => {
  const { open, ask, list } = await aNight();
  const token = await open();
  const id = v7();
  await Promise.all([ask(token, { id }), ask(token, { id })]);
  expect((await ask(token, { id })).status).toBe(201);
  expect(await list()).toHaveLength(1);
});

test.each([
  ['markup', { fields: { text: '<b>Go Kestrels</b>' } }, 'fields.text', 'has a sign that cannot be read out; write it in words'],
  ['a web address', { fields: { text: 'See www.kestrels.example' } }, 'fields.text', 'has a web or mail address; say where to ask instead'],
  ['280 characters and one', { fields: { text: 'a'.repeat(281) } }, 'fields.text', 'has at most 280 characters'],
  ['nothing', { fields: {} }, 'fields.text', 'is missing'],
  ['a plate of nine characters', { kind: 'vehicle', fields: { ...CAR, plate: 'ABCD12345' } }, 'fields.plate', 'has at most 8 characters'],
  ['a lost child', { kind: 'lostChild', fields: {} }, 'kind', 'is one of vehicle, fundraiser, music, other'],
  ['something found', { kind: 'foundItem', fields: {} }, 'kind', 'is one of vehicle, fundraiser, music, other'],
  ['a medical matter', { kind: 'medical', fields: {} }, 'kind', 'is one of vehicle, fundraiser, music, other'],
  ['an answer of its own', { state: 'approved' }, 'state', 'is not a field of this form'],
] as const)('the public form refuses %s with a sentence for its field', async (_, body, field, sentence) => {
  const { open, ask, list } = await aNight();
  const { status, body: problem } = await ask(await open(), body);
  expect([status, problem.code]).toEqual([400, 'malformed']);
  expect(field.split('.').reduce((errors: any, key) => errors[key], problem.errors)).toBe(sentence);
  expect(await list()).toEqual([]);
});

test('280 characters are taken, what cannot be seen is taken out', async () => {
  const { open, ask, list } = await aNight();
  const token = await open();
  expect((await ask(token, { fields: { text: 'a'.repeat(280) } })).status).toBe(201);
  expect((await ask(token, { fields: { text: 'The\u202E snack\u0007 stand\nis open.' } })).status).toBe(201);
  expect((await list()).map(({ fields }) => fields.text)).toContain('The snack stand is open.');
});

test('whoever fills in the field that nobody sees is answered as if it was taken, and nothing is kept', async () => {
  const { open, ask, list } = await aNight();
  expect((await ask(await open(), { website: 'cheap.example' })).body).toEqual({ state: 'waiting' });
  expect(await list()).toEqual([]);
});

test('one address asks eight times in ten minutes; the ninth waits and is told how long', async () => {
  const { department, open, ask, list } = await aNight();
  const token = await open();
  const answers = await Promise.all(Array.from({ length: 9 }, () => ask(token)));
  expect(answers.map(({ status }) => status).toSorted()).toEqual([...Array.from({ length: 8 }, () => 201), 429]);
  const { headers, body } = answers.find(({ status }) => status === 429)!;
  expect(Number(headers.get('retry-after'))).toBeGreaterThan(500);
  expect(body).toMatchObject({ code: 'asked-too-often', detail: 'Many requests came from here in a short time. Try again in 10 minutes.' });
  expect(await list()).toHaveLength(8);
  await department.ask(`update night_request set asked_at = asked_at - interval '10 minutes' where department_id = $1`, [department.id]);
  expect((await ask(token)).status).toBe(201);
});

test('the director closes the form and opens it again with the same code; a new code ends the old one', async () => {
  const { director, nightId, anyone, open, ask } = await aNight();
  const token = await open();
  const at = `/api/nights/${nightId}/request-form`;
  expect(await director.make(`${at}/close`)).toMatchObject({ isOpen: false, hasCode: true });
  expect((await anyone.look(`/api/ask/${token}`)).isOpen).toBe(false);
  expect((await ask(token)).body.code).toBe('requests-closed');
  expect(await director.make(`${at}/open`)).toMatchObject({ isOpen: true, address: null });
  expect((await ask(token)).status).toBe(201);
  const { address } = await director.make(`${at}/new-code`);
  expect((await ask(token)).body.code).toBe('requests-closed');
  expect((await ask(address.split('/').at(-1))).status).toBe(201);
});

test('after the night the form is closed, and it is not opened any more', async () => {
  const { department, nightId, open, ask } = await aNight();
  const token = await open();
  await department.announcer.make(`/api/nights/${nightId}/sign-off`, {});
  expect((await ask(token)).body.code).toBe('requests-closed');
  expect((await department.director.post(`/api/nights/${nightId}/request-form/open`)).body.code).toBe('requests-of-night-over');
  const past = await aNight(-2);
  expect((await past.director.post(`/api/nights/${past.nightId}/request-form/open`)).body.code).toBe('requests-of-night-over');
});

test('a code that is none, and the link of a sponsor or a table, open no form', async () => {
  const { director, nightId, anyone, ask } = await aNight();
  const { address } = await director.make(`/api/nights/${nightId}/table-links`, { label: 'Odell', maySignOff: false });
  for (const token of ['x'.repeat(43), address.split('/').at(-1)]) {
    expect((await anyone.get(`/api/ask/${token}`)).body.code).toBe('not-found');
    expect((await ask(token)).body.code).toBe('not-found');
  }
});

test('a request is approved and read, or declined with a reason, and never answered twice', async () => {
  const { department, open, ask, list } = await aNight();
  const { announcer } = department;
  const token = await open();
  await ask(token);
  await ask(token);
  const [one, other] = await list();
  expect((await announcer.post(`/api/requests/${one.id}/mark-read`)).body.code).toBe('request-answered-already');
  expect(await announcer.make(`/api/requests/${one.id}/approve`)).toMatchObject({ state: 'approved', answers: [{ answer: 'approved', answeredByName: expect.stringContaining('announcer') }] });
  expect((await announcer.post(`/api/requests/${one.id}/decline`, { reason: 'No time' })).body.code).toBe('request-answered-already');
  expect(await announcer.make(`/api/requests/${one.id}/mark-read`)).toMatchObject({ state: 'read' });
  expect((await announcer.post(`/api/requests/${other.id}/decline`, { reason: ' ' })).status).toBe(400);
  expect(await announcer.make(`/api/requests/${other.id}/decline`, { reason: 'Asked already' })).toMatchObject({ state: 'declined', answers: [{ reason: 'Asked already' }] });
});

test('a name needs the director, and a song somebody who has read its words', async () => {
  const { department, open, ask, list } = await aNight();
  const { announcer, director } = department;
  const token = await open();
  await ask(token, { fields: { text: 'Happy birthday to Coach Ruiz.' } });
  await ask(token, { fields: { text: 'Well done, Ana Delgado.' } });
  await ask(token, { kind: 'music', fields: { title: 'River Song', artist: 'The Millers' } });
  const [coach, ana, song] = (await list()).map(({ id }) => `/api/requests/${id}/approve`);
  expect((await announcer.post(coach!)).body.code).toBe('request-names-person');
  expect(await announcer.make(coach!, { nameAllowedBy: 'Ms. Okafor' })).toMatchObject({ state: 'approved', answers: [{ nameAllowedBy: 'Ms. Okafor' }] });
  expect(await director.make(ana!)).toMatchObject({ state: 'approved', answers: [{ nameAllowedBy: expect.stringContaining('director') }] });
  expect((await director.post(song!)).body.code).toBe('request-words-unchecked');
  expect(await director.make(song!, { wordsChecked: true })).toMatchObject({ state: 'approved' });
});

test('an approval given at the table without a network counts when its entry arrives, and is taken back like any other', async () => {
  const { department, open, ask, list, log } = await aNight();
  await ask(await open());
  const [{ id: requestId }] = await list();
  const states = async () => [(await list())[0].state, (await department.ask('select state from night_request where department_id = $1', [department.id]))[0]!['state']];
  await log('requestAnswered', { detail: { requestId, answer: 'approved' } });
  expect(await states()).toEqual(['approved', 'approved']);
  const read = await log('requestAnswered', { detail: { requestId, answer: 'read' } });
  expect(await states()).toEqual(['read', 'read']);
  await log('takenBack', { takesBackEntryId: read });
  expect(await states()).toEqual(['approved', 'approved']);
  // Not allowed from here: the entry is kept in the log, and nothing moves.
  await log('requestAnswered', { detail: { requestId, answer: 'declined' }, reason: 'No time' });
  expect(await states()).toEqual(['approved', 'approved']);
  expect((await list())[0].answers[0].answeredByName).toContain('announcer');
});

test('an answer to a request of another night or another department moves nothing there', async () => {
  const here = await aNight();
  const there = await aNight();
  await there.ask(await there.open());
  const [{ id: requestId }] = await there.list();
  await here.log('requestAnswered', { detail: { requestId, answer: 'approved' } });
  await here.log('requestAnswered', { detail: { requestId: 'none', answer: 'approved' } });
  expect((await there.list())[0].state).toBe('waiting');
});

test('what was asked at the table alone is listed with its answers, and expires with the night', async () => {
  const { department, director, nightId, list, log } = await aNight();
  const asked = await log('request', { detail: { requestKind: 'lostChild', fields: {} } });
  await log('requestAnswered', { detail: { requestId: asked, answer: 'approved' } });
  await director.make(`/api/nights/${nightId}/requests`, { kind: 'foundItem', fields: { thing: 'a set of keys', where: 'the north bleachers', askAt: 'the ticket table' } });
  expect((await list()).map(({ source, kind, state }) => [source, kind, state])).toEqual([['office', 'foundItem', 'waiting'], ['table', 'lostChild', 'approved']]);
  await department.announcer.make(`/api/nights/${nightId}/sign-off`, {});
  expect((await list()).map(({ state }) => state)).toEqual(['expired', 'expired']);
  expect((await director.post(`/api/nights/${nightId}/requests`, { kind: 'other', fields: NOTICE })).body.code).toBe('requests-closed');
});

test('the link of the night’s table reads the requests of that night and of no other', async () => {
  const { department, director, nightId, open, ask } = await aNight();
  await ask(await open());
  const bearer = await Visitor.atTable(await director.make(`/api/nights/${nightId}/table-links`, { label: 'Odell', maySignOff: false }));
  expect((await bearer.look(`/api/nights/${nightId}/requests`)).data).toHaveLength(1);
  const other = await aNightInDays(department, 1);
  expect((await bearer.get(`/api/nights/${other.nightId}/requests`)).status).toBe(401);
});
