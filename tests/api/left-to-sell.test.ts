import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aLaterSeason, aSignedContract } from '../support/season.ts';

/** A season of games, with the reads that are signed; concession reads go to halftime and to the time-outs. */
async function aRoom(games: number, commitments: (kinds: { gameBall: string; concession: string }) => Record<string, unknown>[]) {
  const department = await aDepartment();
  const { director } = department;
  const season = await aLaterSeason(department, games);
  const promised = commitments(season.readKinds).map((one) => ({ rateCents: 4_000, counting: 'perTerm', ...one }));
  if (promised.length > 0) await aSignedContract(department, season, { commitments: promised });
  const left = async () => director.look(`/api/seasons/${season.seasonId}/left-to-sell`);
  const fits = async (readKindId: string, reads: number, more = {}) =>
    (await director.make('/api/plan/promise-checks', { seasonId: season.seasonId, lines: [{ readKindId, counting: 'perTerm', reads, separation: 'none', ...more }] })).can === 'yes';
  return { department, director, season, left, fits };
}

test('what is left is exact: so many more reads fit, and one more does not', async () => {
  const { season, left, fits } = await aRoom(3, ({ concession }) => [{ readKindId: concession, reads: 4 }]);
  const { concession } = season.readKinds;
  const view = await left();
  const most = view.extras.find((one: any) => one.readKindId === concession).most;
  expect(most).toBeGreaterThan(0);
  expect(await fits(concession, most)).toBe(true);
  expect(await fits(concession, most + 1)).toBe(false);
});

test('places, promised, held and left are told by month and read kind, and by window', async () => {
  const { director, season, left } = await aRoom(5, ({ concession }) => [{ readKindId: concession, reads: 6, windowKinds: ['halftime'] }]);
  const view = await left();
  const rows = view.months.filter((row: any) => row.readKindId === season.readKinds.concession);
  expect(rows.map((row: any) => [row.month, row.games])).toEqual([['2150-12', 4], ['2151-01', 1]]);
  expect(rows.reduce((sum: number, row: any) => sum + row.taken, 0)).toBe(6);
  for (const row of rows) expect(row.left, row.month).toBeGreaterThanOrEqual(row.places - row.taken - row.held);
  const windows = await director.look(`/api/seasons/${season.seasonId}/left-to-sell/windows?readKindId=${season.readKinds.concession}&month=2151-01`);
  expect(windows.map((row: any) => row.windowKind)).toEqual(expect.arrayContaining(['halftime', 'timeOut']));
  const halftime = windows.find((row: any) => row.windowKind === 'halftime');
  expect(halftime).toMatchObject({ places: 3, held: 0, isExact: true });
  // Six promised reads fit into the four games of December, so all of January's halftime is left.
  expect(halftime.left).toBe(3);
});

test('a game that takes no read of any kind is full', async () => {
  const { left, season } = await aRoom(2, ({ gameBall, concession }) => [
    { readKindId: gameBall, counting: 'perGame', reads: 9 },
    { readKindId: concession, counting: 'perGame', reads: 40 },
  ]);
  const view = await left();
  expect(view.fullGames.map((game: any) => game.gameId)).toEqual(season.games.map((game) => game.gameId));
  expect(view.fullGamesSentence).toBe('The two games from Dec 4 to Dec 11 are full: no read of any kind fits any more.');
  expect(view.shortNowSentence).toMatch(/^\d+ reads promised to others have no place as it is\.$/);
  expect(view.mixSentence).toBe('Nothing more fits that has a price on the rate card.');
});

test('a game on a locked night is named as locked, not as full', async () => {
  const { director, season, left } = await aRoom(2, () => []);
  await director.make(`/api/nights/${season.games[0]!.nightId}/lock`);
  const view = await left();
  expect(view.fullGames).toEqual([]);
  expect(view.fullGamesSentence).toBe('Herons at Kestrels on Dec 4 is on a locked night, to which nothing is added.');
});

test('the best extra is the most that fits at the price of the rate card, and the best mix takes the dearest reads first', async () => {
  const { director, season, left } = await aRoom(2, () => []);
  const { gameBall, concession } = season.readKinds;
  const price = (readKindId: string, priceCents: number) => director.make('/api/rate-card-lines', { seasonId: season.seasonId, readKindId, priceCents });
  await price(concession, 2_500);
  await price(gameBall, 7_500);
  const view = await left();
  const [first, second] = view.extras;
  expect(first.earnsCents).toBeGreaterThanOrEqual(second.earnsCents);
  for (const one of view.extras) expect(one.earnsCents).toBe(one.most * one.priceCents);
  // A second sponsor may not hold the ball of a game, and pregame has no other kind: neither takes a place from the other.
  expect(view.mix.map((one: any) => one.reads)).toEqual([gameBall, concession].map((id) => view.extras.find((one: any) => one.readKindId === id).most));
  expect(view.mixCents).toBe(first.earnsCents + second.earnsCents);
  expect(view.mixSentence).toMatch(/ sponsored game balls? and .+ concession reads: \$[\d,]+\.00 at the rate card\.$/);
});

test('only announced home games that are still to come are counted', async () => {
  const { director, season, left } = await aRoom(2, () => []);
  const path = `/api/games/${season.games[0]!.gameId}`;
  await director.patch(path, { announced: false }, { version: (await director.look(path)).version });
  const view = await left();
  expect(view.games).toBe(1);
  expect(view.months.every((row: any) => row.games === 1)).toBe(true);
});

test('a season without games has nothing left, and a season that is not here is not found', async () => {
  const { director, left } = await aRoom(0, () => []);
  expect(await left()).toMatchObject({ games: 0, months: [], fullGames: [], mixSentence: 'Nothing more fits that has a price on the rate card.' });
  expect(await director.get('/api/seasons/018f0000-0000-7000-8000-000000000000/left-to-sell')).toMatchObject({ status: 404 });
});
