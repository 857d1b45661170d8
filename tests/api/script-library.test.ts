import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aSeason } from '../support/season.ts';
import type { Visitor } from '../support/visitor.ts';

const scriptOf = async (director: Visitor, moment: string) => (await director.look(`/api/scripts?moment=${moment}`)).data[0];
const numbers = async (director: Visitor, id: string) => (await director.look(`/api/scripts/${id}/versions`)).data.map((one: { number: number; text: string; recordedByName: string | null }) => [one.number, one.text, one.recordedByName]);

test('each change of words is a new number with who made it, and an old wording comes back as the newest', async () => {
  const { director } = await aDepartment();
  const welcome = await scriptOf(director, 'welcome');
  expect(await numbers(director, welcome.id)).toEqual([[1, welcome.text, null]]);
  const { body: first } = await director.patch(`/api/scripts/${welcome.id}`, { text: 'Welcome to {{ venue }}.' }, { version: 1 });
  expect(first).toMatchObject({ wordsNumber: 2, version: 2, isDefault: false, cameAs: 'welcome' });
  const { body: titled } = await director.patch(`/api/scripts/${welcome.id}`, { title: 'Our welcome' }, { version: 2 });
  expect(titled).toMatchObject({ wordsNumber: 2, version: 3 });
  expect((await numbers(director, welcome.id)).map(([number, text, who]: unknown[]) => [number, text, who !== null])).toEqual([[2, 'Welcome to {{ venue }}.', true], [1, welcome.text, false]]);
  expect((await director.send('POST', `/api/scripts/${welcome.id}/bring-back`, { number: 7 }, { version: 3 })).body.code).toBe('script-version-gone');
  expect((await director.send('POST', `/api/scripts/${welcome.id}/bring-back`, { number: 1 }, { version: 2 })).status).toBe(412);
  const { body: back } = await director.send('POST', `/api/scripts/${welcome.id}/bring-back`, { number: 1 }, { version: 3 });
  expect(back).toMatchObject({ wordsNumber: 3, text: welcome.text });
  expect((await numbers(director, welcome.id)).map(([number]: unknown[]) => number)).toEqual([3, 2, 1]);
});

test('a script taken out comes back as it was, and its next wording has a number of its own', async () => {
  const { director } = await aDepartment();
  const conduct = await scriptOf(director, 'conduct');
  await director.patch(`/api/scripts/${conduct.id}`, { text: 'Be fair.' }, { version: 1 });
  expect((await director.remove(`/api/scripts/${conduct.id}`)).status).toBe(204);
  expect(await numbers(director, conduct.id)).toEqual([[1, conduct.text, null]]);
  const { body } = await director.patch(`/api/scripts/${conduct.id}`, { text: 'Be kind.' }, { version: 1 });
  expect(body.wordsNumber).toBe(4);
  expect((await numbers(director, conduct.id)).map(([number]: unknown[]) => number)).toEqual([4, 3, 2, 1]);
});

test('an approval names who and when, and a change of words takes it away while a change of order does not', async () => {
  const { director, announcer } = await aDepartment();
  const seating = await scriptOf(director, 'seating');
  const approval = { approvedByName: 'Ngozi Okonkwo', approvedOn: '2026-11-24', wordsNumber: 1 };
  expect((await director.post(`/api/scripts/${seating.id}/approve`, { ...approval, wordsNumber: 2 })).status).toBe(412);
  expect((await announcer.post(`/api/scripts/${seating.id}/approve`, approval)).status).toBe(403);
  const approved = (await director.post(`/api/scripts/${seating.id}/approve`, approval)).body;
  expect(approved).toMatchObject({ approvedByName: 'Ngozi Okonkwo', approvedOn: '2026-11-24', isDefault: false });
  const moved = (await director.patch(`/api/scripts/${seating.id}`, { place: 5 }, { version: approved.version })).body;
  expect(moved.approvedOn).toBe('2026-11-24');
  const changed = (await director.patch(`/api/scripts/${seating.id}`, { text: 'Ask any usher.' }, { version: moved.version })).body;
  expect(changed).toMatchObject({ approvedOn: null, approvedByName: null, wordsNumber: 2 });
});

test('a second language goes with its words, in another language than the first, and is checked like them', async () => {
  const { director } = await aDepartment();
  const { id } = await scriptOf(director, 'welcome');
  const change = async (form: object) => director.patch(`/api/scripts/${id}`, form, { version: 1 });
  expect((await change({ secondLanguage: 'es' })).body.code).toBe('second-text-incomplete');
  expect((await change({ secondLanguage: 'en', secondText: 'Welcome.' })).body.code).toBe('second-language-is-the-first');
  const broken = await change({ secondLanguage: 'es', secondText: 'Hola\n{{ venu }}' });
  expect([broken.status, broken.body.errors]).toEqual([422, expect.objectContaining({ secondText: 'cannot be filled in: line 2: `venu` is not known; did you mean `venue`?' })]);
  const both = (await change({ secondLanguage: 'es', secondText: 'Bienvenidos a {{ venue }}.' })).body;
  expect(both).toMatchObject({ secondLanguage: 'es', secondText: 'Bienvenidos a {{ venue }}.', wordsNumber: 2 });
  const one = (await director.patch(`/api/scripts/${id}`, { secondText: null }, { version: both.version })).body;
  expect(one).toMatchObject({ secondLanguage: null, secondText: null, wordsNumber: 3 });
});

test('the district’s words for a threat are locked in every way', async () => {
  const { director } = await aDepartment();
  const threat = await scriptOf(director, 'threat');
  expect(threat.isLocked).toBe(true);
  const tries = [
    await director.patch(`/api/scripts/${threat.id}`, { text: 'Run.' }, { version: 1 }),
    await director.patch(`/api/scripts/${threat.id}`, { isOn: false }, { version: 1 }),
    await director.remove(`/api/scripts/${threat.id}`),
    await director.post('/api/scripts', { moment: 'threat', title: 'Ours', text: 'Run.' }),
    await director.post(`/api/scripts/${threat.id}/approve`, { approvedByName: 'Ngozi Okonkwo', approvedOn: '2026-11-24', wordsNumber: 1 }),
    await director.patch(`/api/scripts/${(await scriptOf(director, 'delay')).id}`, { moment: 'threat' }, { version: 1 }),
  ];
  expect(tries.map(({ status, body }) => [status, body.code])).toEqual(tries.map(() => [422, 'script-locked']));
});

test('a prayer is turned on by the department’s setting and by nothing else', async () => {
  const { director } = await aDepartment();
  const prayer = await scriptOf(director, 'prayer');
  expect(prayer.isOn).toBe(false);
  expect((await director.patch(`/api/scripts/${prayer.id}`, { isOn: true }, { version: 1 })).body.code).toBe('script-prayer-off');
  expect((await director.post('/api/scripts', { moment: 'prayer', title: 'Ours', text: 'Please stand.', isOn: true })).body.code).toBe('script-prayer-off');
  expect((await director.post('/api/scripts', { moment: 'prayer', title: 'Ours', text: 'Please stand.' })).body.isOn).toBe(false);
  const department = await director.look('/api/department');
  await director.patch('/api/department', { settings: { prayerOn: true } }, { version: department.version });
  const stored = (await director.look('/api/scripts?moment=prayer')).data.find((one: { id: string }) => one.id === prayer.id);
  expect((await director.patch(`/api/scripts/${prayer.id}`, { isOn: true }, { version: stored.version })).body.isOn).toBe(true);
});

test('a form of the anthem belongs to the anthem', async () => {
  const { director } = await aDepartment();
  expect((await director.post('/api/scripts', { moment: 'welcome', title: 'x', text: 'x', variant: 'sungFlagInPlace' })).body.code).toBe('script-variant-unknown');
  expect((await director.post('/api/scripts', { moment: 'anthem', title: 'x', text: 'x', variant: 'sungFlagInPlace' })).body.variant).toBe('sungFlagInPlace');
  expect((await director.post('/api/scripts', { moment: 'anthem', title: 'y', text: 'x', sport: 'quidditch' })).status).toBe(400);
});

test('a preview fills a script in for a night, with what is said, what is done and how long both take', async () => {
  const department = await aDepartment();
  const { announcer } = department;
  const season = await aSeason(department, 1);
  const text = '[[Music down]]\nWelcome to {{ venue }}.\n[[pause 3]]\nThe {{ visitorNickname }} are here.';
  const show = async (form: object) => (await announcer.post('/api/scripts/preview', form)).body;
  const shown = await show({ text, moment: 'welcome', nightId: season.games[0]!.nightId });
  expect(shown.first.segments.map(({ kind, text: words }: { kind: string; text: string }) => [kind, words])).toEqual([
    ['direction', 'Music down'], ['spoken', 'Welcome to Alder Fieldhouse.'], ['direction', 'Pause 3 seconds'], ['spoken', 'The Herons are here.'],
  ]);
  expect(shown).toMatchObject({ wordsPerMinute: 140, second: null, first: { problems: [], notes: [] } });
  expect(shown.seconds).toBeGreaterThanOrEqual(6);
  expect((await show({ text: '{{ singer }}', nightId: season.games[0]!.nightId })).first.notes).toEqual([{ line: 1, sentence: 'nothing stands in `singer` on this night' }]);
  const example = await show({ text: 'The {{ homeNickname }}.', secondText: 'Los {{ homeNicknam }}.', secondLanguage: 'es' });
  expect(example.first.segments[0].text).toBe('The Kestrels.');
  expect(example.second.problems).toEqual([{ line: 1, sentence: '`homeNicknam` is not known; did you mean `homeNickname`?' }]);
  expect((await show({ text: 'x', nightId: season.teamId })).code).toBe('unknown-night');
});

test('a preview names no student whose family chose otherwise', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const shown = (await department.director.post('/api/scripts/preview', { text: 'A hand for Xochitl Marlowe!', nightId: season.games[0]!.nightId })).body;
  expect(JSON.stringify(shown)).not.toContain('Marlowe');
  expect(shown.first.notes[0].sentence).toContain('family chose otherwise');
});

test('a script of 100 kB, a bomb and a deep nest are answered with a sentence', async () => {
  const { director } = await aDepartment();
  const show = async (text: string) => director.post('/api/scripts/preview', { text });
  expect((await show('x'.repeat(100_000))).status).toBe(400);
  expect((await show('x'.repeat(5001))).body.first.problems[0].sentence).toContain('a script may have 5,000');
  expect((await show('{% for a in (1..100) %}{% for b in (1..100) %}{% for c in (1..100) %}{% for d in (1..100) %}{% endfor %}{% endfor %}{% endfor %}{% endfor %}')).body.first.problems[0].sentence).toContain('does too much');
  const saved = await director.post('/api/scripts', { moment: 'club', title: 'Bomb', text: '{% for i in (1..99999999) %}x{% endfor %}' });
  expect([saved.status, saved.body.code]).toEqual([422, 'script-broken']);
});
