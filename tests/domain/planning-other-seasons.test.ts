import { expect, test } from 'vitest';
import { keptForOthers } from '../../server/domain/planning/facts/kept-for-others.ts';

const season = (seasonId: string, gamesToCome: number, placed = 0) => ({ seasonId, gamesToCome, placed });

test.each([
  ['nothing has a place yet: each season takes its share of the games', 7, [season('football', 2), season('volleyball', 2), season('basketball', 2)], [4, 5, 5]],
  ['the others are planned already, so nothing more is kept for them', 7, [season('football', 2), season('volleyball', 2, 2), season('basketball', 2, 2)], [0, 3, 3]],
  ['one of the others has more than its share', 7, [season('football', 2), season('volleyball', 2, 4), season('basketball', 2)], [2, 5, 3]],
  ['the only season with games to come takes all', 7, [season('football', 0, 0), season('basketball', 5)], [7, 0]],
  ['no game is left anywhere', 7, [season('football', 0), season('basketball', 0)], [0, 0]],
])('a count over several seasons: %s', (_, owed, seasons, kept) => {
  expect(seasons.map((one) => keptForOthers(owed, seasons, one.seasonId))).toEqual(kept);
});
