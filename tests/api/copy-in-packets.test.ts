import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { TableDevice, aLaterSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

async function approvedCopy({ director }: Department, season: Season, title: string, more: Record<string, unknown> = {}): Promise<any> {
  const copy = await director.make('/api/copies', {
    sponsorId: season.sponsorId, readKindId: season.readKinds.gameBall, title, fallbackText: `The neutral line of ${title}.`, text: `The words of ${title}.`, ...more,
  });
  return director.make(`/api/copies/${copy.id}/versions/${copy.versions[0].id}/approve`, { approvedByName: 'Hazel Juniper', approvedOn: '2026-11-20' });
}

const packetOf = async ({ director }: Department, nightId: string): Promise<string> => JSON.stringify(await director.look(`/api/nights/${nightId}/packet`));

async function aPlannedSeason(department: Department, games: number): Promise<Season> {
  const season = await aLaterSeason(department, games);
  await aSignedContract(department, season, { commitments: [{ readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: games, rateCents: 7500 }] });
  return season;
}

test('two copies that rotate are read in turn, game by game, and the packet of a night never changes its mind', async () => {
  const department = await aDepartment();
  const season = await aPlannedSeason(department, 3);
  await approvedCopy(department, season, 'Lumber', { rotates: true });
  await approvedCopy(department, season, 'Nails', { rotates: true });
  await department.director.make('/api/plan/spread', { seasonId: season.seasonId });
  const read = [];
  for (const { nightId } of season.games) read.push(/The words of (\w+)\./.exec(await packetOf(department, nightId))?.[1]);
  expect(read).toEqual(['Lumber', 'Nails', 'Lumber']);
  expect(/The words of (\w+)\./.exec(await packetOf(department, season.games[1]!.nightId))?.[1]).toBe('Nails');
});

test('rotation turned on after the reads were placed takes hold of them too, and the log names the words that were read', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aPlannedSeason(department, 2);
  const lumber = await approvedCopy(department, season, 'Lumber');
  await director.make('/api/plan/spread', { seasonId: season.seasonId });
  const nails = await approvedCopy(department, season, 'Nails');
  for (const { nightId } of season.games) expect(await packetOf(department, nightId)).toContain('The words of Lumber.');
  for (const copy of [lumber, nails]) expect((await director.patch(`/api/copies/${copy.id}`, { rotates: true }, { version: copy.version })).body.rotates).toBe(true);
  expect(await packetOf(department, season.games[0]!.nightId)).toContain('The words of Lumber.');
  const { gameId, nightId } = season.games[1]!;
  expect(await packetOf(department, nightId)).toContain('The words of Nails.');

  const placement = (await director.look(`/api/nights/${nightId}/placements`)).data.find((one: { gameId: string }) => one.gameId === gameId);
  const device = new TableDevice();
  await director.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries: [device.entry({ kind: 'read', outcome: 'given', placementId: placement.id, gameId, commitmentId: placement.commitmentId, cueKey: placement.cueKey, windowKey: placement.windowKey })] });
  const [entry] = await department.ask<{ version: string }>('select copy_version_id as version from log_entry where department_id = $1 and placement_id = $2', [department.id, placement.id]);
  expect(entry!.version).toBe(nails.versions[0].id);
});

test('copy stopped now leaves the neutral line, says who stopped it and why, and the issued packet is out of date', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aPlannedSeason(department, 1);
  const copy = await approvedCopy(department, season, 'Lumber');
  await director.make('/api/plan/spread', { seasonId: season.seasonId });
  const { nightId } = season.games[0]!;
  await director.make(`/api/nights/${nightId}/packet-issues`);
  expect((await director.look(`/api/nights/${nightId}`)).packetOutOfDate).toBe(false);
  expect(await packetOf(department, nightId)).toContain('The words of Lumber.');

  expect((await director.post(`/api/copies/${copy.id}/stop`, {})).status).toBe(400);
  const stopped = await director.make(`/api/copies/${copy.id}/stop`, { stoppedByName: 'Hazel Juniper', reason: 'The store moves to Mill Lane' });
  expect(stopped).toMatchObject({ state: 'stopped', stoppedByName: 'Hazel Juniper', stoppedBecause: 'The store moves to Mill Lane' });
  expect((await director.look(`/api/nights/${nightId}`)).packetOutOfDate).toBe(true);
  const packet = await packetOf(department, nightId);
  expect(packet).not.toContain('The words of Lumber.');
  expect(packet).toContain('The neutral line of Lumber.');
});

test('a second text travels into the packet with its language', async () => {
  const department = await aDepartment();
  const season = await aPlannedSeason(department, 1);
  await approvedCopy(department, season, 'Lumber', { secondText: 'Las palabras de la madera.' });
  await department.director.make('/api/plan/spread', { seasonId: season.seasonId });
  const { cues } = await department.director.look(`/api/nights/${season.games[0]!.nightId}/packet`);
  const cue = cues.find((one: { isSponsored?: boolean }) => one.isSponsored);
  expect(JSON.stringify(cue.segments)).toContain('The words of Lumber.');
  expect(cue.second.language).toBe('es');
  expect(JSON.stringify(cue.second.segments)).toContain('Las palabras de la madera.');
});
