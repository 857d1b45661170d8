import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aSeason } from '../support/season.ts';

test('two players may swap their numbers, and nobody may wear one that is taken', async () => {
  const department = await aDepartment();
  const { director } = department;
  const { teamId } = await aSeason(department, 0);
  const team = await director.look(`/api/teams/${teamId}`);
  const [a, b, c] = team.roster;
  const swapped = await director.put(`/api/teams/${teamId}/roster`, { players: [{ ...a, number: b.number }, { ...b, number: a.number }, c] }, { version: team.version });
  expect(swapped.body.roster.find((line: { id: string }) => line.id === a.id).number).toBe(b.number);
  const doubled = await director.put(`/api/teams/${teamId}/roster`, { players: [a, { ...b, number: a.number }] }, { version: swapped.body.version });
  expect([doubled.status, doubled.body.code]).toEqual([409, 'number-taken']);
});

test('two of one name on one list keep each their number and what the family chose, and a third is asked about', async () => {
  const department = await aDepartment();
  const { director } = department;
  const { teamId } = await aSeason(department, 0);
  const put = async (players: object[]) => director.put(`/api/teams/${teamId}/roster`, { players }, { version: (await director.look(`/api/teams/${teamId}`)).version });
  const seen = ({ roster }: any) => roster.map((line: any) => [line.number, line.announce, line.playerId]);
  const written = await put([{ number: '3', name: 'Lukasz Wren', isNew: true }, { number: '4', name: 'Lukasz Wren', isNew: true, announce: 'silence' }]);
  expect(seen(written.body).map(([number, announce]: any) => [number, announce])).toEqual([['3', 'name'], ['4', 'silence']]);
  const again = await put([{ number: '4', name: 'Lukasz Wren' }, { number: '3', name: 'Lukasz Wren' }]);
  expect([again.status, seen(again.body)]).toEqual([200, seen(written.body)]);
  const third = await put([{ number: '3', name: 'Lukasz Wren' }, { number: '4', name: 'Lukasz Wren' }, { number: '5', name: 'Lukasz Wren' }]);
  expect([third.status, third.body.code]).toEqual([422, 'player-name-twice']);
});

// NFHS Basketball Rule 3-4-3
test.each([
  [['0', '5'], []],
  [['0', '00'], ['numbers-0-and-00']],
  [['55'], []],
  [['56'], ['number-odd']],
])('numbers %j warn of %j and are kept', async (numbers, codes) => {
  const department = await aDepartment();
  const { director } = department;
  const { teamId } = await aSeason(department, 0);
  const { version } = await director.look(`/api/teams/${teamId}`);
  const players = numbers.map((number) => ({ number, name: `Player ${number}` }));
  const { body } = await director.put(`/api/teams/${teamId}/roster`, { players }, { version });
  expect([body.roster.map((line: { number: string }) => line.number), body.warnings.map((warning: { code: string }) => warning.code)]).toEqual([numbers, codes]);
});

test('a name the family keeps silent is seen by the director only, and an erased name by nobody', async () => {
  const department = await aDepartment();
  const { teamId, playerIds } = await aSeason(department, 0);
  const names = async (who: 'director' | 'announcer') => (await department[who].look(`/api/teams/${teamId}`)).roster.map((line: { name: string }) => line.name);
  expect(await names('director')).toContain('Xochitl Marlowe');
  expect(await names('announcer')).toEqual(expect.not.arrayContaining(['Xochitl Marlowe']));
  expect((await department.bookkeeper.look(`/api/teams/${teamId}`)).roster).toBeUndefined();
  for (const id of playerIds) await department.director.make(`/api/players/${id}/erase`);
  expect(new Set(await names('director'))).toEqual(new Set(['Erased']));
});
