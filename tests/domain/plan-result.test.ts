import { expect, test } from 'vitest';
import { planPlaces } from '../../server/domain/planning/places/plan-places.ts';
import { resultOf } from '../../server/domain/planning/proposal/make-result.ts';
import { solveSeason } from '../../server/planning/solver/season-solving.ts';
import { aGame, aPlanSeason, aPromise, aWindow } from '../support/small-plan-season.ts';

const rivals = [aPromise('Creamery', 1, ['g1'], { categoryId: 'food' }), aPromise('Pizzeria', 1, ['g1'], { categoryId: 'food' })];
const room = (places: number) => aPlanSeason([aGame(1, [aWindow('timeOut1', { places })])], rivals);
const inCompany = async (places: number) => resultOf(room(places), await solveSeason({ id: 1, season: room(places), wishes: { keeps: 'nothing' }, company: true, seconds: 10 }, () => {}), null);
const NO_ROOM = 'the seconds of the windows, competitors who keep apart or the sponsors one game may have of a read kind leave no room';

test('a read that finds no place although no window is full is told by what keeps it out', async () => {
  expect(await inCompany(2)).toMatchObject({ shortfallReads: 1, bottlenecks: [`One read would have places enough, but ${NO_ROOM} for it.`] });
});

test('a read that finds no place because a window is full is told by that window alone', async () => {
  const { shortfallReads, bottlenecks } = await inCompany(1);
  expect(shortfallReads).toBe(1);
  expect(bottlenecks).toHaveLength(1);
  expect(bottlenecks[0]).toMatch(/^The time-outs of .+ are full: .+ together need two places there, one exists\.$/);
});

test('a plan asks why where it puts competitors together, and only there', async () => {
  const inPlaces = resultOf(room(2), planPlaces(room(2), { keeps: 'nothing' }), null);
  expect(inPlaces).toMatchObject({ shortfallReads: 0, asksWhy: true });
  expect((await inCompany(2)).asksWhy).toBe(false);
});
