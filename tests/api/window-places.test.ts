import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aSeason, aSignedContract } from '../support/season.ts';

test('a department says how many reads a window holds, and a group of read kinds has places of its own in it', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 1);
  const { gameId } = season.games[0]!;
  const kind = (name: string, placeGroup: string | null) => director.make('/api/read-kinds', { name, timing: 'scheduled', windows: ['halftime'], sponsorsPerGame: 9, placeGroup });
  const [spot, long, plain] = [await kind('Spot', 'long reads'), await kind('Long read', 'long reads'), await kind('Plain read', null)];
  const contract = await aSignedContract(department, season, {
    priceCents: 30_000,
    commitments: [spot, long, plain].map(({ id }) => ({ readKindId: id, counting: 'perTerm', reads: 4, rateCents: 2500 })),
  });
  const [ofSpot, ofLong, ofPlain] = contract.commitments.map((one: any) => one.id);
  const place = (commitmentId: string) => director.post('/api/placements', { commitmentId, gameId, windowKey: 'halftime' });

  const group = await director.make('/api/window-places', { sport: 'basketball', windowKind: 'halftime', placeGroup: 'long reads', places: 1 });
  expect((await place(ofSpot)).status).toBe(201);
  expect((await place(ofLong)).body).toMatchObject({ code: 'window-group-full', detail: 'No place for long reads is left in this window: it holds 1 of them.' });
  expect((await director.patch(`/api/window-places/${group.id}`, { places: 2 }, { version: group.version })).body.places).toBe(2);
  expect((await place(ofLong)).status).toBe(201);
  expect((await place(ofPlain)).status).toBe(201);
  expect((await place(ofPlain)).body).toMatchObject({ code: 'window-full' });

  const whole = await director.make('/api/window-places', { sport: 'basketball', windowKind: 'halftime', places: 4 });
  expect((await place(ofPlain)).status).toBe(201);
  expect((await place(ofPlain)).body.code).toBe('window-full');
  expect((await director.post('/api/window-places', { sport: 'basketball', windowKind: 'halftime', places: 5 })).body.code).toBe('window-places-said-already');
  expect((await director.remove(`/api/window-places/${whole.id}`)).status).toBe(204);
  expect((await director.look('/api/window-places?sport=basketball')).data.map((one: any) => [one.windowKind, one.placeGroup, one.places])).toEqual([['halftime', 'long reads', 2]]);
  expect((await department.announcer.post('/api/window-places', { sport: 'basketball', windowKind: 'pregame', places: 1 })).status).toBe(403);
});
