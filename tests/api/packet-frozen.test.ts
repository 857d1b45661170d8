import { expect, test, vi } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { pagesOfPdf } from '../support/pdf.ts';
import { aSeason } from '../support/season.ts';
import type { Visitor } from '../support/visitor.ts';

// Each of these sets whole packets several times over.
vi.setConfig({ testTimeout: 120_000 });

async function aNight() {
  const department = await aDepartment();
  const season = await aSeason(department, 2);
  const { nightId } = season.games[0]!;
  const { director, announcer, bookkeeper } = department;
  const path = `/api/nights/${nightId}`;
  const paper = async (who: Visitor, name: string) => {
    const { status, bytes, headers } = await who.bytes(`${path}/${name}`);
    const kind = headers.get('content-type') ?? '';
    return { status, bytes, name: headers.get('content-disposition') ?? '', code: kind.includes('json') ? JSON.parse(bytes.toString()).code : null };
  };
  const pages = async (who: Visitor, name: string) => pagesOfPdf((await paper(who, name)).bytes);
  const roster = async (players: readonly object[]) => {
    const { version } = await director.look(`/api/teams/${season.teamId}`);
    const answer = await director.put(`/api/teams/${season.teamId}/roster`, { players }, { version });
    expect(answer.status).toBe(200);
  };
  const choose = async (playerId: string, announce: string) => {
    const { version } = await director.look(`/api/players/${playerId}`);
    expect((await director.patch(`/api/players/${playerId}`, { announce }, { version })).status).toBe(200);
  };
  const issue = (who: Visitor = director) => who.make(`${path}/packet-issues`);
  const { roster: rows } = await director.look(`/api/teams/${season.teamId}`);
  const playerOf = (number: string): string => rows.find((row: any) => row.number === number).playerId;
  return { playerOf, department, season, director, announcer, bookkeeper, path, paper, pages, roster, choose, issue };
}

const STARTERS = [
  { number: '3', name: 'Łukasz Wren', sayAs: 'WOO-kash ren', isStarter: true },
  { number: '00', name: 'Nguyễn Tam', sayAs: 'nwin tahm', isStarter: true },
  { number: '12', name: 'Xochitl Marlowe', sayAs: 'SO-cheel MAR-low', announce: 'aMember' },
];
const labelOf = (text: string): string => /page (\d+[a-z]*) of \d+/.exec(text)?.[1] ?? 'none';
const versionOf = (text: string): string => /Version (\d+) · [0-9a-f]{12}/.exec(text)?.[1] ?? 'none';

test('an issue stays as it was on its day, to the byte, while the draft moves on', async () => {
  const { director, announcer, paper, roster, issue, path } = await aNight();
  expect(await director.look(`${path}/next-issue`)).toMatchObject({ number: 1, reason: 'first', changes: null });
  const first = await issue();
  expect(first).toMatchObject({ number: 1, reason: 'first', changes: null, isCurrent: true, isSealed: false });
  const onItsDay = await paper(director, 'packet.pdf?issue=1');
  expect(onItsDay.name).toContain('packet-2026-12-04-alder-fieldhouse-version-1.pdf');
  expect((await pagesOfPdf(onItsDay.bytes)).map(labelOf)).toEqual(Array.from({ length: first.pageCount }, (_, place) => String(place + 1)));
  expect((await paper(announcer, 'packet.pdf')).bytes.equals(onItsDay.bytes)).toBe(true);
  expect([(await issue()).id, (await issue(announcer)).number]).toEqual([first.id, 1]);
  expect(await director.look(`${path}/next-issue`)).toMatchObject({ number: 1, reason: 'none' });

  await roster([...STARTERS, { number: '21', name: 'Odile Fenwick' }]);
  expect(await director.look(`${path}/packet`)).toMatchObject({ isOutOfDate: true, issue: { number: 1, isCurrent: false } });
  expect(await director.look(path)).toMatchObject({ packetOutOfDate: true, packetBecause: 'change' });
  expect((await paper(director, 'packet.pdf?issue=1')).bytes.equals(onItsDay.bytes)).toBe(true);
  const draft = (await pagesOfPdf((await paper(director, 'packet.pdf')).bytes)).join(' ');
  expect([draft.includes('DRAFT, not issued'), draft.includes('Odile Fenwick')]).toEqual([true, true]);
  expect(await issue()).toMatchObject({ number: 2, reason: 'change' });
  expect((await paper(director, 'packet.pdf?issue=1')).bytes.equals(onItsDay.bytes)).toBe(true);
  const issues = await announcer.look(`${path}/packet-issues`);
  expect(issues.data.map((one: any) => [one.number, one.isCurrent, one.issuedByName !== null])).toEqual([[2, true, true], [1, false, true]]);
});

test('the change set has a cover and the pages that differ; old pages and new ones make the binder of a full print', async () => {
  const { director, pages, paper, roster, issue, path } = await aNight();
  await issue();
  const before = await pages(director, 'packet.pdf?issue=1');
  await roster([...STARTERS, { number: '21', name: 'Odile Fenwick' }]);
  const planned = await director.look(`${path}/next-issue`);
  const second = await issue();
  expect([planned.sentence, planned.changes]).toEqual([second.sentence, second.changes]);
  const { swap, add, takeOut } = second.changes;
  expect(swap.length).toBeGreaterThan(0);
  expect(swap.length + add.length).toBeLessThan(6);

  const [cover, ...sent] = await pages(director, 'change-set.pdf?issue=2');
  expect(cover).toContain('Change set');
  expect(cover).toContain('Version 1 → Version 2');
  expect(cover).toContain('changed: roster Tamarack Ridge');
  expect(sent.map(labelOf)).toEqual([...swap, ...add].toSorted((one, other) => Number.parseInt(one, 10) - Number.parseInt(other, 10)));
  expect(sent.map(versionOf)).toEqual(sent.map(() => '2'));
  expect(sent.join(' ')).toContain('Odile Fenwick');

  const now = new Map((await pages(director, 'packet.pdf?issue=2')).map((text) => [labelOf(text), text]));
  const binder = new Map(before.map((text) => [labelOf(text), text]));
  for (const label of takeOut) binder.delete(label);
  for (const text of sent) binder.set(labelOf(text), text);
  expect(new Map([...binder].toSorted())).toEqual(new Map([...now].toSorted()));
  expect((await paper(director, 'change-set.pdf?issue=2')).name).toContain('change-set-2026-12-04-alder-fieldhouse-version-2.pdf');
});

test('a change set is asked for by the number of an issue that has one before it', async () => {
  const { director, issue, path } = await aNight();
  await issue();
  const answers = await Promise.all(['', '?issue=1', '?issue=two', '?issue=2'].map((query) => director.get(`${path}/change-set.pdf${query}`)));
  expect(answers.map((answer) => [answer.status, answer.body.code])).toEqual([[409, 'change-set-unknown'], [400, 'malformed'], [400, 'malformed'], [404, 'not-found']]);
});

test('a family that opts out later seals the old issue to the director and forces a new one', async () => {
  const { playerOf, director, announcer, pages, paper, choose, issue, path } = await aNight();
  await issue();
  const onItsDay = await paper(director, 'packet.pdf?issue=1');
  expect((await pagesOfPdf(onItsDay.bytes)).join(' ')).toContain('Łukasz Wren');
  await choose(playerOf('3'), 'numberOnly');
  expect(await announcer.look(path)).toMatchObject({ packetIssued: 1, packetOutOfDate: true, packetBecause: 'choice' });
  const home = await director.look('/api/home');
  expect(home.nights.find((night: any) => path.endsWith(night.id))).toMatchObject({ packetBecause: 'choice' });
  const refused = await announcer.get(`${path}/packet.pdf?issue=1`);
  expect([refused.status, refused.body.code]).toEqual([403, 'packet-sealed']);
  expect((await paper(director, 'packet.pdf?issue=1')).bytes.equals(onItsDay.bytes)).toBe(true);

  expect(await director.look(`${path}/next-issue`)).toMatchObject({ number: 2, reason: 'choice' });
  expect(await issue(announcer)).toMatchObject({ number: 2, reason: 'choice', isSealed: false });
  const changes = await pages(announcer, 'change-set.pdf?issue=2');
  expect(changes[0]).toContain('A family chose that a name is no longer used.');
  expect([...changes, ...(await pages(announcer, 'packet.pdf?issue=2'))].join(' ')).not.toMatch(/Łukasz|Wren|WOO-kash/);
  expect(await announcer.look(path)).toMatchObject({ packetIssued: 2, packetOutOfDate: false, packetBecause: null });
  expect((await announcer.look(`${path}/packet-issues`)).data.map((one: any) => [one.number, one.isSealed])).toEqual([[2, false], [1, true]]);
  await choose(playerOf('3'), 'name');
  expect((await paper(announcer, 'packet.pdf?issue=1')).status).toBe(200);
});

test('with an erased student the words of every issue that names them are gone, and the rest of the history stays', async () => {
  const { playerOf, director, announcer, paper, roster, issue, path } = await aNight();
  await issue();
  await roster([...STARTERS, { number: '21', name: 'Odile Fenwick' }]);
  await issue();
  expect((await announcer.post(`/api/players/${playerOf('00')}/erase`)).status).toBe(403);
  expect((await director.post(`/api/players/${playerOf('00')}/erase`)).body).toMatchObject({ name: 'Erased', announce: 'silence' });
  expect((await director.post(`/api/players/${playerOf('00')}/erase`)).status).toBe(200);
  for (const name of ['packet.pdf?issue=1', 'packet.pdf?issue=2', 'change-set.pdf?issue=2']) expect([name, (await paper(director, name)).code]).toEqual([name, 'packet-erased']);
  const third = await issue();
  expect(third).toMatchObject({ number: 3, reason: 'choice' });
  expect(third.sentence).toMatch(/^Swap page/);
  const words = (await pagesOfPdf((await paper(announcer, 'change-set.pdf?issue=3')).bytes)).join(' ');
  expect([words.includes('Nguyễn'), words.includes('roster Tamarack Ridge')]).toEqual([false, true]);
  const issues = (await director.look(`${path}/packet-issues`)).data;
  expect(issues.map((one: any) => [one.number, one.erasedAt !== null, one.pageCount > 0])).toEqual([[3, false, true], [2, true, true], [1, true, true]]);
});

test('two at once give the packet one number', async () => {
  const { director, announcer, issue, path, roster } = await aNight();
  const both = await Promise.all([issue(director), issue(announcer), issue(director), issue(announcer)]);
  expect(new Set(both.map((one) => one.id)).size).toBe(1);
  await roster([...STARTERS, { number: '21', name: 'Odile Fenwick' }]);
  const again = await Promise.all([issue(director), issue(announcer)]);
  expect(again.map((one) => one.number)).toEqual([2, 2]);
  expect((await director.look(`${path}/packet-issues`)).total).toBe(2);
});

test('what changes while the pages are set is in the issue or makes it out of date, never neither', async () => {
  const { director, path, paper, roster, issue } = await aNight();
  const [issued] = await Promise.all([issue(), roster([...STARTERS, { number: '21', name: 'Odile Fenwick' }])]);
  const named = (await pagesOfPdf((await paper(director, `packet.pdf?issue=${issued.number}`)).bytes)).join(' ').includes('Odile Fenwick');
  expect((await director.look(path)).packetOutOfDate).toBe(!named);
});
