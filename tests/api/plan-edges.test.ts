import { describe, expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { anOpenOffer } from '../support/offers.ts';
import { accepted, aProposal } from '../support/plan.ts';
import { aLaterSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

const balls = (season: Season, reads: number) => [{ readKindId: season.readKinds.gameBall, counting: 'perTerm', reads, rateCents: 7500 }];

const heldAt = (department: Department, gameId: string) =>
  department.ask<{ night_id: string }>('select night_id from held_place where department_id = $1 and game_id = $2', [department.id, gameId]);

/** Three Fridays to come, and an open offer that holds a game ball at each. */
async function withHeldPlaces() {
  const department = await aDepartment();
  const season = await aLaterSeason(department);
  await anOpenOffer(department, season, { startsOn: season.startsOn, endsOn: season.endsOn, priceCents: 22_500, readLines: balls(season, 3) });
  await accepted(department.director, await aProposal(department.director, season.seasonId));
  return { department, director: department.director, season };
}

describe('a game moves in with another, and its night is gone', () => {
  const toTheFirst = (season: Season) => ({ reason: 'Snow', to: season.games[0]!.playedOn, clock: '16:00' });

  test('with the room that an open offer holds there', async () => {
    const { department, director, season } = await withHeldPlaces();
    const { gameId, nightId } = season.games[1]!;
    expect(await heldAt(department, gameId)).toEqual([{ night_id: nightId }]);
    expect(await director.post(`/api/games/${gameId}/postpone`, toTheFirst(season))).toMatchObject({ status: 200 });
    expect(await heldAt(department, gameId)).toEqual([{ night_id: season.games[0]!.nightId }]);
    expect(await director.post(`/api/nights/${nightId}/lock`, {})).toMatchObject({ status: 404 });
  });

  test('with its lock', async () => {
    const { director, season } = await withHeldPlaces();
    const { gameId, nightId } = season.games[2]!;
    await director.make(`/api/nights/${nightId}/lock`, { note: 'Senior night is full' });
    expect(await director.post(`/api/games/${gameId}/postpone`, toTheFirst(season))).toMatchObject({ status: 200 });
    expect((await director.look(`/api/seasons/${season.seasonId}/plan`)).lockedNights).toEqual([]);
  });
});

test('a game that is cancelled holds no room for an offer any more', async () => {
  const { department, director, season } = await withHeldPlaces();
  await director.make(`/api/games/${season.games[1]!.gameId}/cancel`, { reason: 'Snow' });
  expect(await heldAt(department, season.games[1]!.gameId)).toEqual([]);
});

test('a contract that has ended keeps no places: others get them', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aLaterSeason(department, 1);
  const ending = await aSignedContract(department, season, { commitments: balls(season, 3) });
  await accepted(director, await aProposal(director, season.seasonId));
  const other = await aSignedContract(department, season, { title: 'More game balls', commitments: balls(season, 3) });
  expect((await aProposal(director, season.seasonId)).result.shortfallReads).toBe(3);
  await director.make(`/api/contracts/${ending.id}/end`, { on: season.games[0]!.playedOn });
  const proposal = await aProposal(director, season.seasonId, { kind: 'replan' });
  expect(proposal.result).toMatchObject({ headline: 'All 3 reads have a place.', shortfallReads: 0 });
  await accepted(director, proposal);
  const { data } = await director.look(`/api/nights/${season.games[0]!.nightId}/placements`);
  expect(data.map((one: any) => one.commitmentId)).toEqual(Array(3).fill(other.commitments[0].id));
});

test('the reads of a contract on hold are not taken out of a locked night', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aLaterSeason(department);
  const contract = await aSignedContract(department, season, { commitments: balls(season, 3) });
  await accepted(director, await aProposal(director, season.seasonId));
  await director.make(`/api/contracts/${contract.id}/hold`, { reason: 'Unpaid since January', on: season.startsOn });
  const { reads } = await director.look(`/api/seasons/${season.seasonId}/board`);
  const takeOut = (gameId: string) => {
    const { id, version } = reads.find((one: any) => one.gameId === gameId);
    return director.post(`/api/seasons/${season.seasonId}/board-changes`, { changes: [{ kind: 'remove', placementId: id, version }] });
  };
  await director.make(`/api/nights/${season.games[0]!.nightId}/lock`, {});
  expect(await takeOut(season.games[0]!.gameId)).toMatchObject({ status: 409, body: { code: 'night-locked' } });
  expect((await takeOut(season.games[1]!.gameId)).status).toBe(200);
});

test('a read is changed once in a list', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aLaterSeason(department);
  const contract = await aSignedContract(department, season, { commitments: balls(season, 3) });
  const read = await director.make('/api/placements', { commitmentId: contract.commitments[0].id, gameId: season.games[0]!.gameId, windowKey: 'pregame' });
  const to = (game: number) => ({ kind: 'move', placementId: read.id, version: read.version, gameId: season.games[game]!.gameId, windowKey: 'pregame' });
  const answer = await director.post(`/api/seasons/${season.seasonId}/board-changes`, { changes: [to(1), to(2)] });
  expect(answer).toMatchObject({ status: 409, body: { code: 'board-changes-refused' } });
});
