import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aSeason } from '../support/season.ts';

async function aSeniorNight() {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const { nightId } = season.games[0]!;
  const list = await department.director.make(`/api/nights/${nightId}/honours-lists`, { title: 'Senior night', kind: 'seniors', windowKind: 'pregame' });
  return { ...department, season, nightId, list, path: `/api/honours-lists/${list.id}` };
}

const FILE = 'Student,Escorts,Order,One line\r\n"Wren, Lukasz",his parents Ola and Bo,2,Plays the tuba\r\nMette Orr,her aunt,1,\r\nXochitl Marlowe,her brother,,Choir\r\n';

test('a file of seniors is shown before it is stored, and finds the players of the school by name', async () => {
  const { director, announcer, path, season } = await aSeniorNight();
  const dry = (await director.post(`${path}/import`, { csv: FILE, confirm: false })).body;
  expect(dry).toMatchObject({ done: false, summary: { create: 3, refuse: 0 } });
  expect((await director.look(path)).students).toEqual([]);
  expect((await director.post(`${path}/import`, { csv: `${FILE}Ada Lind,,,\r\n`, confirm: dry.planDigest })).body.code).toBe('import-changed-since');
  expect((await director.post(`${path}/import`, { csv: FILE, confirm: dry.planDigest })).body.done).toBe(true);
  const list = await director.look(path);
  expect(list.students.map(({ name, place, playerId, announce }: Record<string, unknown>) => [place, name, season.playerIds.includes(playerId as string), announce])).toEqual([
    [1, 'Mette Orr', false, 'name'], [2, 'Łukasz Wren', true, 'name'], [3, 'Xochitl Marlowe', true, 'aMember'],
  ]);
  expect(list).toMatchObject({ secondsEach: 20, secondsInAll: 60 });
  const seen = await announcer.look(path);
  expect(JSON.stringify(seen)).not.toContain('Marlowe');
  expect(seen.students[2]).toMatchObject({ escorts: null, line: null });
});

test('bad rows are named, the good ones are taken, and a list keeps a student whose row was refused', async () => {
  const { director, path } = await aSeniorNight();
  const csv = 'student,order,line\nMette Orr,1,\nLuka Orr,soon,\n,3,\n';
  const dry = (await director.post(`${path}/import`, { csv, confirm: false })).body;
  expect(dry.rows.map(({ line, action, reason }: Record<string, unknown>) => [line, action, reason])).toEqual([[2, 'create', undefined], [3, 'refuse', 'import-order-unreadable'], [4, 'refuse', 'import-value-missing']]);
  await director.post(`${path}/import`, { csv, confirm: dry.planDigest });
  expect((await director.look(path)).students.map(({ name }: { name: string }) => name)).toEqual(['Mette Orr']);
  expect((await director.post(`${path}/import`, { csv: 'escorts\nher aunt', confirm: false })).body.code).toBe('heading-missing');
});

test('the packet reads the list student by student, and a family’s choice holds there', async () => {
  const { director, path, nightId } = await aSeniorNight();
  const list = await director.look(path);
  const put = await director.put(`${path}/students`, { students: [{ name: 'Mette Orr', escorts: 'her aunt', line: 'Carries a 4.0 GPA.' }, { name: 'Xochitl Marlowe', escorts: 'her brother Ilan' }] }, { version: list.version });
  expect(put.body.students[0].leaveOut).toEqual(['4.0 GPA']);
  const packet = JSON.stringify(await director.look(`/api/nights/${nightId}/packet`));
  expect(packet).toContain('Mette Orr, with her aunt.');
  expect(packet).toContain('meet our 2 seniors');
  for (const secret of ['Marlowe', 'Ilan']) expect(packet).not.toContain(secret);
  expect((await director.put(`${path}/students`, { students: [{ name: 'Mette Orr' }, { name: 'mette orr' }] }, { version: put.body.version })).status).toBe(409);
  expect((await director.put(`${path}/students`, { students: [] }, { version: list.version })).status).toBe(412);
});

test('a list is changed and taken away by who may change students, with its opening checked like a script', async () => {
  const { director, announcer, bookkeeper, path, nightId, list } = await aSeniorNight();
  const broken = await director.patch(path, { openingText: 'Our\n{{ senior }}' }, { version: list.version });
  expect([broken.body.code, broken.body.errors.openingText]).toEqual(['script-broken', expect.stringContaining('line 2: `senior` is not known')]);
  expect((await director.patch(path, { secondsEach: 30, openingText: '{{ honoursTitle }}: {{ honoursCount }} seniors.' }, { version: list.version })).body.secondsEach).toBe(30);
  expect([(await announcer.remove(path)).status, (await bookkeeper.get(path)).status]).toEqual([403, 403]);
  expect((await director.post(`/api/nights/${nightId}/honours-lists`, { title: 'Senior night', kind: 'seniors', windowKind: 'halftime' })).body.code).toBe('honours-title-taken');
  expect((await director.remove(path)).status).toBe(204);
  expect((await director.look(`/api/nights/${nightId}/honours-lists`)).total).toBe(0);
});

test('erasing a student takes away what was written beside the name on every list', async () => {
  const { director, path, season } = await aSeniorNight();
  const list = await director.look(path);
  await director.put(`${path}/students`, { students: [{ playerId: season.playerIds[0], name: 'Łukasz Wren', escorts: 'his parents', line: 'Plays the tuba' }] }, { version: list.version });
  await director.make(`/api/players/${season.playerIds[0]}/erase`);
  const after = await director.look(path);
  expect(after.students).toMatchObject([{ playerId: season.playerIds[0], escorts: null, line: null, announce: 'silence' }]);
  expect(JSON.stringify(after)).not.toContain('Wren');
});
