import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aContract, aSeason, aSignedContract } from '../support/season.ts';

test('a commitment narrowed to time-outs is refused at halftime, though its kind is read there', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 1);
  const [game] = season.games;
  const concession = { readKindId: season.readKinds.concession, counting: 'perTerm', reads: 4, rateCents: 5000 };
  const contract = await aSignedContract(department, season, { priceCents: 40_000, commitments: [{ ...concession, windowKinds: ['timeOut'] }, concession] });
  const [narrow, wide] = contract.commitments;
  const place = (commitmentId: string, windowKey: string) => director.post('/api/placements', { commitmentId, gameId: game!.gameId, windowKey });
  expect((await place(narrow.id, 'halftime')).body.code).toBe('window-not-of-the-kind');
  expect((await place(narrow.id, 'timeOut1')).body).toMatchObject({ windowKey: 'timeOut1' });
  expect((await place(wide.id, 'halftime')).body).toMatchObject({ windowKey: 'halftime' });
});

test('a game on a blackout day promises nothing, and one that moves onto it is credited and loses its places', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 3);
  const [first, second] = season.games;
  const contract = await aSignedContract(department, season, {
    priceCents: 40_000,
    commitments: [{ readKindId: season.readKinds.concession, counting: 'perGame', reads: 2, rateCents: 5000, blackoutDays: [first!.playedOn, '2026-12-16'] }],
  });
  expect(contract.standing).toMatchObject({ promised: 4, owed: 4 });
  const placed = await director.post('/api/placements', { commitmentId: contract.commitments[0].id, gameId: first!.gameId, windowKey: 'halftime' });
  expect(placed.body.code).toBe('placement-game-not-covered');
  await director.make('/api/placements', { commitmentId: contract.commitments[0].id, gameId: second!.gameId, windowKey: 'halftime' });
  await director.make(`/api/games/${second!.gameId}/postpone`, { reason: 'Ice on the roads', to: '2026-12-16', clock: '19:00' });
  expect((await director.look(`/api/contracts/${contract.id}`)).standing).toMatchObject({ owed: 2, credited: 2 });
  const { nightIds } = await director.look(`/api/games/${second!.gameId}`);
  expect((await director.look(`/api/nights/${nightIds.at(-1)}/placements`)).total).toBe(0);
});

test('a least above the most is refused at its field, an equal one is taken', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 1);
  const line = { readKindId: season.readKinds.concession, counting: 'perTerm', reads: 4, rateCents: 5000 };
  const draft = await aContract(department, season, { commitments: [{ ...line, leastPerGame: 2, mostPerGame: 2 }] });
  const refused = await director.patch(`/api/contracts/${draft.id}`, { commitments: [line, { ...line, leastPerGame: 3, mostPerGame: 2 }] }, { version: draft.version });
  expect(refused.body).toMatchObject({ code: 'least-above-most', errors: { commitments: { 1: { leastPerGame: 'The least in one game cannot be more than the most.' } } } });
});
