import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aSeason } from '../support/season.ts';
import type { Season } from '../support/season.ts';
import { Visitor } from '../support/visitor.ts';

const LATER = '2099-01-01T00:00:00.000Z';
const soon = (seconds: number) => new Date(Date.now() + seconds * 1000).toISOString();

async function aWaitingCopy(): Promise<{ department: Department; season: Season; copy: any; links: string }> {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const copy = await department.director.make('/api/copies', {
    sponsorId: season.sponsorId, readKindId: season.readKinds.gameBall, title: 'Game ball', fallbackText: 'Juniper & Pike Hardware.',
    text: 'Juniper & Pike Hardware, on Third Street. [[pause 3]] A sponsor of the Kestrels.', secondText: 'Juniper & Pike, en la calle Tercera.',
  });
  return { department, season, copy, links: `/api/sponsors/${season.sponsorId}/links` };
}

test('a sponsor approves its words by a link, from the click on Start to the packet’s shelf', async () => {
  const { department, copy, links } = await aWaitingCopy();
  const { director } = department;
  const link = await director.make(links, { label: 'Hazel Juniper, owner', expiresAt: LATER });
  expect(Buffer.from(link.token, 'base64url')).toHaveLength(32);
  const [listed] = (await director.look(links)).data;
  expect(listed).toMatchObject({ label: 'Hazel Juniper, owner', state: 'open', madeByName: expect.stringContaining('director') });
  expect(JSON.stringify(listed)).not.toContain(link.token);

  const bearer = await Visitor.byLink(link.token);
  const page = await bearer.look('/api/sponsor-page');
  expect(page).toMatchObject({ sponsorName: 'Juniper & Pike Hardware', departmentName: department.name });
  expect(page.copies[0].waiting[0].texts).toEqual([
    { language: 'en', text: 'Juniper & Pike Hardware, on Third Street. A sponsor of the Kestrels.' },
    { language: 'es', text: 'Juniper & Pike, en la calle Tercera.' },
  ]);
  const path = `/api/sponsor-page/versions/${copy.versions[0].id}`;
  expect((await bearer.post(`${path}/approve`, { name: ' ' })).status).toBe(400);

  const asked = await bearer.make(`${path}/ask-for-change`, { name: 'Hazel Juniper', note: 'We moved to Mill Lane.' });
  expect(asked.copies[0].waiting[0]).toMatchObject({ changeNote: 'We moved to Mill Lane.', changeAskedByName: 'Hazel Juniper' });
  expect((await director.look(`/api/copies/${copy.id}`)).versions[0].changeNote).toBe('We moved to Mill Lane.');

  const changed = await director.make(`/api/copies/${copy.id}/versions`, { text: 'Juniper & Pike Hardware, on Mill Lane.' });
  expect((await bearer.look('/api/sponsor-page')).copies[0].waiting.map((one: { number: number }) => one.number)).toEqual([2]);
  const approved = await bearer.make(`/api/sponsor-page/versions/${changed.versions[0].id}/approve`, { name: 'Hazel Juniper' });
  expect(approved.copies[0]).toMatchObject({ waiting: [], approved: [{ number: 2, approvedByName: 'Hazel Juniper' }] });
  expect((await director.look(`/api/copies/${copy.id}`)).versions[0]).toMatchObject({ approvedHow: 'link', approvedByName: 'Hazel Juniper' });
  expect((await bearer.post(`/api/sponsor-page/versions/${changed.versions[0].id}/approve`, { name: 'Hazel Juniper' })).body.code).toBe('copy-already-approved');
});

test('a revoked link is refused at once, also for who is inside, with the same answer as one that never was', async () => {
  const { department, links } = await aWaitingCopy();
  const link = await department.director.make(links, { label: 'Hazel', expiresAt: LATER });
  const bearer = await Visitor.byLink(link.token);
  expect((await bearer.get('/api/sponsor-page')).status).toBe(200);
  expect((await department.director.make(`${links}/${link.id}/revoke`)).state).toBe('revoked');
  expect((await bearer.get('/api/sponsor-page')).body.code).toBe('link-not-good');
  const answers = [];
  for (const token of [link.token, 'x'.repeat(43)]) {
    const { status, body } = await new Visitor('nobody', null).post('/api/link-visits', { token });
    answers.push(JSON.stringify([status, body]));
  }
  expect(answers[0]).toBe(answers[1]);
  expect(JSON.parse(answers[0]!)[0]).toBe(401);
  expect((await department.director.post(`${links}/${link.id}/revoke`)).body.code).toBe('link-already-revoked');
  await Visitor.byLink((await department.director.make(links, { label: 'Hazel again', expiresAt: LATER })).token);
});

test('a link opens between its first moment and its last, and not before or after', async () => {
  const { department, links } = await aWaitingCopy();
  const { director } = department;
  const early = await director.make(links, { label: 'Next week', notBeforeAt: soon(3600), expiresAt: LATER });
  expect(early.state).toBe('early');
  expect((await new Visitor('nobody', null).post('/api/link-visits', { token: early.token })).body.code).toBe('link-not-good');
  expect((await director.post(links, { label: 'Yesterday', expiresAt: soon(-60) })).body.code).toBe('link-ends-before-it-starts');
  const brief = await director.make(links, { label: 'Two seconds', expiresAt: soon(2) });
  const bearer = await Visitor.byLink(brief.token);
  await new Promise((resolve) => void setTimeout(resolve, 2200));
  expect((await bearer.get('/api/sponsor-page')).body.code).toBe('link-not-good');
  expect((await director.look(links)).data.find((one: { id: string }) => one.id === brief.id).state).toBe('ended');
});

test('the cookie of a link is kept from scripts and other sites, and another site cannot use it', async () => {
  const { department, copy, links } = await aWaitingCopy();
  const link = await department.director.make(links, { label: 'Hazel', expiresAt: LATER });
  const answer = await new Visitor('bearer', null).post('/api/link-visits', { token: link.token });
  expect(answer.headers.get('set-cookie')).toMatch(/HttpOnly/i);
  expect(answer.headers.get('set-cookie')).toMatch(/SameSite=Strict/i);
  expect(JSON.stringify(answer.body)).not.toContain(link.token);
  const bearer = await Visitor.byLink(link.token);
  const path = `/api/sponsor-page/versions/${copy.versions[0].id}/approve`;
  expect((await bearer.post(path, { name: 'Hazel' }, { headers: { 'sec-fetch-site': 'cross-site' } })).body.code).toBe('other-site');
  expect((await bearer.post(path, { name: 'Hazel' }, { headers: { origin: 'https://elsewhere.example' } })).body.code).toBe('other-site');
});

test('the database keeps the hash of a token and never the token', async () => {
  const { department, links } = await aWaitingCopy();
  const link = await department.director.make(links, { label: 'Hazel', expiresAt: LATER });
  const rows = await department.ask('select to_jsonb(link) as kept from link where department_id = $1', [department.id]);
  expect(JSON.stringify(rows)).not.toContain(link.token);
});

test('where the department approves no marked words, the link holds them back', async () => {
  const { department, copy, links } = await aWaitingCopy();
  const { director } = department;
  const { version } = await director.look('/api/department');
  await director.patch('/api/department', { settings: { copyCheckBlocks: true } }, { version });
  const marked = await director.make(`/api/copies/${copy.id}/versions`, { text: 'The finest tools in town.' });
  const bearer = await Visitor.byLink((await director.make(links, { label: 'Hazel', expiresAt: LATER })).token);
  expect((await bearer.look('/api/sponsor-page')).copies[0].waiting[0].isHeldBack).toBe(true);
  expect((await bearer.post(`/api/sponsor-page/versions/${marked.versions[0].id}/approve`, { name: 'Hazel' })).body.code).toBe('copy-marked');
});

test('whoever guesses at links waits longer and longer', async () => {
  const guess = () => new Visitor('nobody', null).post('/api/link-visits', { token: crypto.randomUUID().repeat(2) });
  const answers = [];
  for (let tries = 0; tries < 7; tries += 1) answers.push(await guess());
  expect(answers[0]!.body.code).toBe('link-not-good');
  expect(answers.at(-1)!.status).toBe(429);
  expect(answers.at(-1)!.headers.get('retry-after')).toMatch(/^\d+$/);
});
