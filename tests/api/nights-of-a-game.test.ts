import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aSeason, aSignedContract } from '../support/season.ts';

test('a game that went on another evening belongs to the later evening, also where that one was entered first', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 2);
  const [first] = season.games as [(typeof season.games)[0]];
  const early = await director.make('/api/games', {
    seasonId: season.seasonId, level: 'varsity', homeTeamId: season.teamId, visitorTeamIds: [season.opponentTeamId], playedOn: '2026-12-02', startsAtClock: '19:00', venueId: season.venueId, floorId: season.floorId,
  });
  await director.make(`/api/games/${early.id}/start`);
  await director.make(`/api/games/${early.id}/suspend`, { reason: 'Lightning' });
  const resumed = await director.make(`/api/games/${early.id}/resume`, { nightId: first.nightId });
  expect(resumed.nightIds).toEqual([early.nightIds[0], first.nightId]);
  expect(first.nightId < early.nightIds[0]).toBe(true);
  const contract = await aSignedContract(department, season, { commitments: [{ readKindId: season.readKinds.gameBall, counting: 'perNight', reads: 1, rateCents: 7500 }] });
  // One read on the evening that both games share in the end, one on the next Friday.
  expect(contract.standing).toMatchObject({ promised: 2, owed: 2 });
});
