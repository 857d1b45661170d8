import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aSeason } from '../support/season.ts';
import type { Season } from '../support/season.ts';

const MARKED = 'Come on down to Juniper & Pike Hardware for the finest tools.';
const NEUTRAL = 'Juniper & Pike Hardware, on Third Street, is a sponsor of the Kestrels.';

const aCopy = ({ director }: Department, season: Season, more: Record<string, unknown> = {}) =>
  director.make('/api/copies', { sponsorId: season.sponsorId, readKindId: season.readKinds.gameBall, title: 'Game ball', fallbackText: 'Juniper & Pike Hardware.', text: NEUTRAL, ...more });

async function set({ director }: Department, settings: Record<string, unknown>): Promise<void> {
  const { version } = await director.look('/api/department');
  expect((await director.patch('/api/department', { settings }, { version })).status).toBe(200);
}

test('words that nobody saved are checked for their sponsor, each mark with its paragraph', async () => {
  const department = await aDepartment();
  const { sponsorId } = await aSeason(department, 1);
  const answer = await department.director.make('/api/copies/check', { sponsorId, text: MARKED });
  expect(answer).toMatchObject({ verdict: 'advertising', paragraph: '26 CFR 1.513-4(c)(2)(v)' });
  expect(answer.caution).toContain('not tax advice');
  const [{ marks }] = answer.texts;
  expect(marks.map((mark: { kind: string; start: number; end: number }) => [mark.kind, MARKED.slice(mark.start, mark.end)])).toEqual([['callToBuy', 'Come on down'], ['qualitative', 'finest']]);
  expect(marks[0].sentence.length).toBeGreaterThan(40);
  expect((await department.announcer.make('/api/copies/check', { sponsorId, text: NEUTRAL })).verdict).toBe('acknowledgment');
});

test('a slogan passes once it is registered, and no longer when it is taken away', async () => {
  const department = await aDepartment();
  const { director } = department;
  const { sponsorId } = await aSeason(department, 1);
  const verdict = async () => (await director.make('/api/copies/check', { sponsorId, text: 'Juniper & Pike: better tools, better days.' })).verdict;
  expect(await verdict()).toBe('advertising');
  const slogan = await director.make('/api/slogans', { sponsorId, text: 'Better tools, better days', knownFrom: 'On the sign over the door since 1988' });
  expect(slogan).toMatchObject({ sponsorName: 'Juniper & Pike Hardware', registeredOn: expect.stringMatching(/^\d{4}-\d\d-\d\d$/) });
  expect(await verdict()).toBe('acknowledgment');
  expect((await director.post('/api/slogans', { sponsorId, text: 'Better tools, better days', knownFrom: 'x' })).body.code).toBe('slogan-taken');
  expect((await director.remove(`/api/slogans/${slogan.id}`)).status).toBe(204);
  expect(await verdict()).toBe('advertising');
});

test('two texts of one message are judged together, and each is marked in its own language', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const copy = await aCopy(department, season, { secondText: 'La mejor ferretería del valle.' });
  const [version] = copy.versions;
  expect(version).toMatchObject({ secondLanguage: 'es', check: { verdict: 'advertising' } });
  expect(copy.fallbackMarks).toEqual([]);
  expect(version.check.texts.map((text: { language: string; marks: unknown[] }) => [text.language, text.marks.length])).toEqual([['en', 0], ['es', 1]]);
  const same = await department.director.post(`/api/copies/${copy.id}/versions`, { text: NEUTRAL, secondText: 'x', secondLanguage: 'en' });
  expect(same.body.code).toBe('second-language-is-the-first');
});

test('marked words are approved with guidance, unless the department approves none: then only with a reason', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 1);
  const approval = { approvedByName: 'Hazel Juniper', approvedOn: '2026-11-20', note: 'By telephone' };
  const free = await aCopy(department, season, { title: 'Guidance', text: MARKED });
  expect((await director.make(`/api/copies/${free.id}/versions/${free.versions[0].id}/approve`, approval)).state).toBe('approved');

  await set(department, { copyCheckBlocks: true });
  const held = await aCopy(department, season, { title: 'Held', text: MARKED });
  const path = `/api/copies/${held.id}/versions/${held.versions[0].id}/approve`;
  const refused = await director.post(path, approval);
  expect([refused.status, refused.body.code, refused.body.override]).toEqual([422, 'copy-marked', 'director']);
  expect(refused.body.detail).toContain('“finest”');
  const approved = await director.make(path, { ...approval, overrideReason: 'Counsel read it' });
  expect(approved.versions[0].approvalNote).toContain('By telephone');
  expect(approved.versions[0].approvalNote).toContain('approved all the same: Counsel read it');

  const clean = await aCopy(department, season, { title: 'Clean' });
  expect((await director.make(`/api/copies/${clean.id}/versions/${clean.versions[0].id}/approve`, approval)).state).toBe('approved');
});
