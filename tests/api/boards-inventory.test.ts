import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aHalfSeason } from '../support/half-season.ts';
import { anOffer, inDays } from '../support/offers.ts';
import { TableDevice, aSignedContract } from '../support/season.ts';

const EARLY = { overrideReason: 'the test does not wait for the night' };
const summed = (rows: any[], of: string) => rows.reduce((total, row) => total + row[of], 0);

test('a department without a season, and a season without games, have no places', async () => {
  const department = await aDepartment();
  expect(await department.director.look('/api/boards/inventory')).toMatchObject({ seasonId: null, months: [], unplaced: [] });
  const { seasonId } = await aHalfSeason(department, []);
  expect(await department.director.look(`/api/boards/inventory?seasonId=${seasonId}`)).toMatchObject({ seasonId, months: [], unplaced: [] });
});

test('what was given, is sold, is held and is left adds up to the places, and what has no place yet is told apart', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aHalfSeason(department, [-7, 7]);
  const [past, coming] = season.games as [any, any];
  const contract = await aSignedContract(department, season, {
    priceCents: 20_000, billingPlan: { kind: 'inFull', on: season.today }, term: { startsOn: season.startsOn, endsOn: season.endsOn },
    commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 5, rateCents: 4_000, windowKinds: ['halftime'] }],
  });
  const commitmentId = contract.commitments[0].id;
  const device = new TableDevice();
  await director.make(`/api/nights/${past.nightId}/log`, { deviceId: device.deviceId, entries: [device.read(commitmentId, past.gameId, 1)] });
  await director.make(`/api/nights/${past.nightId}/sign-off`, EARLY);
  await director.make('/api/placements', { commitmentId, gameId: coming.gameId, windowKey: 'halftime' });
  const board = async () => director.look(`/api/boards/inventory?seasonId=${season.seasonId}`);
  const view = await board();
  const all = view.months.filter(({ readKindId }: any) => readKindId === null);
  expect([summed(all, 'games'), summed(all, 'given'), summed(all, 'sold'), summed(all, 'held')]).toEqual([2, 1, 1, 0]);
  for (const { places, given, sold, held, left, unused } of all) expect(given + sold + held + left + unused).toBe(places);
  // Five promised, one given, one placed.
  expect(view.unplaced).toEqual([{ readKindId: season.readKinds.concession, readKindName: 'Concession read', reads: 3 }]);
  const mine = view.months.filter(({ readKindId }: any) => readKindId === season.readKinds.concession);
  expect([summed(mine, 'given'), summed(mine, 'sold')]).toEqual([1, 1]);
  const csv = (await director.bytes(`/api/boards/inventory?as=csv&seasonId=${season.seasonId}`)).bytes.toString('utf8');
  expect(csv).toContain('"Promised, without a place yet",Concession read');
});

test('an offer that holds its places is told apart from what is sold', async () => {
  const department = await aDepartment();
  const season = await aHalfSeason(department, [7, 14]);
  const offer = await anOffer(department, season, { title: 'Concession reads', readLines: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 2, rateCents: 4000 }] });
  await department.director.make(`/api/offers/${offer.id}/put`, { putOn: inDays(0) });
  const lineId = offer.readLines[0].id;
  for (const { gameId, nightId } of season.games) await department.ask('insert into held_place (department_id, id, offer_line_id, game_id, night_id, window_key, place) values ($1, gen_random_uuid(), $2, $3, $4, $5, 1)', [department.id, lineId, gameId, nightId, 'halftime']);
  const all = (await department.director.look(`/api/boards/inventory?seasonId=${season.seasonId}`)).months.filter(({ readKindId }: any) => readKindId === null);
  expect(summed(all, 'sold')).toBe(0);
  expect(summed(all, 'held')).toBe(2);
});
