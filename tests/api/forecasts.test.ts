import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { TableDevice, aSeason, aSignedContract } from '../support/season.ts';

test('what falls in the games signed off moves what is expected of those left', async () => {
  const department = await aDepartment();
  const { director, announcer } = department;
  const season = await aSeason(department, 3);
  const contract = await aSignedContract(department, season, {
    commitments: [{ readKindId: season.readKinds.bankShot, counting: 'onOccurrence', readsAtLeast: 4, readsAtMost: 9, rateCents: 1000 }], title: 'Bank shots',
  });
  const ofSeason = () => director.look(`/api/seasons/${season.seasonId}/forecasts`);
  const before = (await ofSeason()).data[0];
  // Two a game are believed where nothing is known: NB(2, 1/4), mean 6.
  expect(before).toMatchObject({ contractId: contract.id, counted: 0, gamesCounted: 0, gamesLeft: 3, expected: 6, readsAtLeast: 4, readsAtMost: 9, earlierGames: 0, likelyMostCents: null });
  // P(Y <= 3) = p^2 (1 + 2q + 3q^2 + 4q^3) with p = 1/4, q = 3/4: 0.3671875.
  expect(before.chanceOfLeast).toBeCloseTo(1 - 0.3671875, 12);

  const device = new TableDevice();
  const { gameId, nightId } = season.games[0]!;
  const commitmentId = contract.commitments[0].id;
  const mentions = ['7:00', '2:00'].flatMap((clock) => {
    const shot = device.entry({ kind: 'happening', gameId, teamId: season.teamId, playerNumber: '3', period: '2nd quarter', clock, detail: { happening: 'bankShot' } });
    return [shot, device.entry({ kind: 'mention', outcome: 'given', gameId, commitmentId, happeningEntryId: shot.id })];
  });
  await announcer.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries: mentions });
  await director.make(`/api/nights/${nightId}/sign-off`, { overrideReason: 'the test does not wait for the night' });
  expect((await ofSeason()).data[0]).toMatchObject({ counted: 2, gamesCounted: 1, gamesLeft: 2, expected: 4 });
});

test('a season without such promises has nothing to expect, and an unknown season is not there', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  expect(await department.director.look(`/api/seasons/${season.seasonId}/forecasts`)).toEqual({ data: [], total: 0 });
  expect(await department.director.get('/api/seasons/0197c0de-0000-7000-8000-000000000000/forecasts')).toMatchObject({ status: 404 });
});
