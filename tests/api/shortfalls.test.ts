import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { TableDevice, aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

const OVERRIDE = { overrideReason: 'the test does not wait for the night' };

async function concessions(department: Department, season: Season, reads: number, more: Record<string, unknown> = {}) {
  const commitments = [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads, rateCents: 2_500, ...more }];
  return aSignedContract(department, season, { commitments, priceCents: 10_000, billingPlan: { kind: 'inFull', on: '2026-11-20' } });
}

test('a planned read that the table could not give is missed on that night, and short once no game is left for it', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 1);
  await director.make('/api/rate-card-lines', { seasonId: season.seasonId, readKindId: season.readKinds.gameBall, priceCents: 7_500 });
  const contract = await concessions(department, season, 2);
  const [{ gameId, nightId, playedOn }] = season.games as [Season['games'][number]];
  const [line] = contract.commitments;
  const first = await director.make('/api/placements', { commitmentId: line.id, gameId, windowKey: 'halftime' });
  const second = await director.make('/api/placements', { commitmentId: line.id, gameId, windowKey: 'timeOut1' });
  const look = async () => (await director.look(`/api/contracts/${contract.id}/shortfalls`)).data[0];
  expect(await look()).toMatchObject({ owed: 2, shortfall: 0, open: 0, stillOwed: 0, missed: [], options: [] });
  const device = new TableDevice();
  const entry = (placement: any, more: Record<string, unknown>) => device.entry({ kind: 'read', gameId, commitmentId: line.id, placementId: placement.id, cueKey: placement.cueKey, windowKey: placement.windowKey, ...more });
  await director.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries: [entry(first, { outcome: 'given' }), entry(second, { outcome: 'notRead', reason: 'noTime' })] });
  await director.make(`/api/nights/${nightId}/sign-off`, OVERRIDE);
  const short = await look();
  expect(short).toMatchObject({ owed: 1, shortfall: 1, open: 1, stillOwed: 1 });
  expect(short.missed).toMatchObject([{ placementId: second.id, nightId, gameId, missedOn: playedOn, because: 'windowOver', why: 'no time', windowName: '1st time-out', gameLabel: 'Herons at Kestrels', isOpen: true, proposalId: null }]);
  expect((await director.look('/api/open-shortfalls')).data).toMatchObject([{ contractId: contract.id, sponsorName: 'Juniper & Pike Hardware', readKindName: 'Concession read', open: 1, cheapest: { remedy: 'carryOver', costCents: 5_000 } }]);
  expect(short.options.map((one: any) => [one.remedy, one.costCents, one.fits])).toEqual([['carryOver', 5_000, true], ['credit', 5_000, true], ['moreReads', 0, false], ['otherKind', 7_500, false]]);
});

test('of a term whose games have room nothing is short, and a game that is called off takes its room away', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 2);
  const contract = await concessions(department, season, 4, { mostPerGame: 2 });
  const look = async () => (await director.look(`/api/contracts/${contract.id}/shortfalls`)).data[0];
  expect(await look()).toMatchObject({ owed: 4, shortfall: 0, missed: [] });
  await director.make(`/api/games/${season.games[1]!.gameId}/cancel`, { reason: 'snow' });
  const short = await look();
  expect(short).toMatchObject({ owed: 4, shortfall: 2, open: 2 });
  expect(short.missed.map((one: any) => [one.because, one.missedOn, one.why])).toEqual([
    ['gameCancelled', season.games[1]!.playedOn, 'the game was called off'],
    ['seasonEnding', season.games[0]!.playedOn, 'no game is left that could carry it'],
  ].toSorted((a, b) => (a[1]! < b[1]! ? -1 : 1)));
  expect(short.options[0]).toMatchObject({ remedy: 'moreReads', replacements: 2, costCents: 0, fits: true });
});
