import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { TableDevice, aSeason } from '../support/season.ts';

const DECEMBER = { overrideReason: 'The season is told in advance' };

test('how the visiting coach said a name is kept at sign-off for next year; what the office wrote, and our own list, stay', async () => {
  const department = await aDepartment();
  const { director, announcer } = department;
  const season = await aSeason(department, 1);
  const { nightId, gameId } = season.games[0]!;
  const opponent = (await director.get(`/api/teams/${season.opponentTeamId}`)).body;
  const listed = await director.put(`/api/teams/${season.opponentTeamId}/roster`, { players: [
    { number: '4', name: 'Britta Sandoval' }, { number: '5', name: 'Mette Lund', sayAs: 'MET-uh lund' }, { number: '33', name: 'Zuleika Amari', announce: 'numberOnly' },
  ] }, { version: opponent.version });
  expect(listed.status).toBeLessThan(300);
  const device = new TableDevice();
  const worn = (playerNumber: string, detail: Record<string, string>, teamId = season.opponentTeamId) => device.entry({ kind: 'worn', gameId, teamId, playerNumber, detail });
  const wrong = worn('41', { name: 'Somebody Else', sayAs: 'wrong' });
  const entries = [
    worn('24', { name: 'Britta Sandoval', sayAs: 'BRIT-uh san-doh-VAL', wornInstead: '4' }),
    worn('5', { name: 'Mette Lund', sayAs: 'another way' }),
    worn('33', { name: 'Zuleika Amari', sayAs: 'zoo-LAY-kuh' }),
    worn('42', { name: 'Ingrid Vale', sayAs: 'ING-rid vayl' }),
    worn('00', { name: 'Nguyễn Tam', sayAs: 'another way' }, season.teamId),
    wrong, device.entry({ kind: 'takenBack', takesBackEntryId: wrong.id }),
  ];
  const sent = await announcer.post(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries });
  expect(sent.body.results.map((result: { status: string }) => result.status)).toEqual(entries.map(() => 'stored'));
  expect((await director.post(`/api/nights/${nightId}/sign-off`, DECEMBER)).status).toBeLessThan(300);
  const rows = await department.ask<{ line: string }>(
    `select roster_entry.number || ' ' || player.name || ' ' || coalesce(player.say_as, '-') as line from roster_entry
       join player on player.department_id = $1 and player.id = roster_entry.player_id where roster_entry.department_id = $1`, [department.id]);
  expect(rows.map((row) => row.line).toSorted()).toEqual([
    '4 Britta Sandoval BRIT-uh san-doh-VAL', '42 Ingrid Vale ING-rid vayl', '5 Mette Lund MET-uh lund', '00 Nguyễn Tam nwin tahm', '12 Xochitl Marlowe SO-cheel MAR-low', '33 Zuleika Amari -', '3 Łukasz Wren WOO-kash ren',
  ].toSorted());
});

test('a name that a family chose against is kept in no entry, under whatever number it is typed; others stay as typed', async () => {
  const department = await aDepartment();
  const { games, teamId, opponentTeamId } = await aSeason(department, 1);
  const { nightId, gameId } = games[0]!;
  const device = new TableDevice();
  const worn = (playerNumber: string, detail: Record<string, string>, ofTeam = teamId) => device.entry({ kind: 'worn', gameId, teamId: ofTeam, playerNumber, detail });
  const entries = [
    worn('44', { name: 'xochitl  MARLOWE', sayAs: 'SO-cheel' }),
    worn('12', { name: 'Somebody Typed', sayAs: 'anything' }),
    worn('44', { name: 'Xochitl Marlowe', wornInstead: '12' }),
    worn('45', { name: 'Ingrid Vale', sayAs: 'ING-rid vayl' }),
    worn('12', { name: 'Xochitl Marlowe', sayAs: 'SO-cheel' }, opponentTeamId),
  ];
  const send = () => department.announcer.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries });
  expect((await send()).results.map((result: { status: string }) => result.status)).toEqual(entries.map(() => 'stored'));
  const { entries: kept } = await department.announcer.look(`/api/nights/${nightId}/log`);
  expect(kept.map((entry: { detail: unknown }) => entry.detail)).toEqual([
    { wornInstead: '12' }, { wornInstead: '12' }, { wornInstead: '12' }, { name: 'Ingrid Vale', sayAs: 'ING-rid vayl' }, { name: 'Xochitl Marlowe', sayAs: 'SO-cheel' },
  ]);
  expect((await send()).results.map((result: { status: string }) => result.status)).toEqual(entries.map(() => 'already'));
});
