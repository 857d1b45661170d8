import { expect, test } from 'vitest';
import { faultsOfPlan } from '../../server/domain/planning/company/checked-plan.ts';
import { WEIGHT_OF_PRIORITY } from '../../server/domain/planning/season.ts';
import type { PlanRead, PlanSeason } from '../../server/domain/planning/season.ts';
import { SEPARATIONS } from '../../server/domain/sponsorship/separation.ts';
import { solveSeason } from '../../server/planning/solver/season-solving.ts';
import { lots } from '../support/random-season.ts';
import { aGame, aPlanSeason, aPromise, aWindow } from '../support/small-plan-season.ts';

type Lot = (below: number) => number;

/** Two games of two or three short windows, four promises of two categories that want more than there is. */
function smallSeason(lot: Lot): PlanSeason {
  const games = [1, 2].map((number) => aGame(number, Array.from({ length: 2 + lot(2) }, (_, at) => aWindow(`timeOut${at + 1}`, { places: 1 + lot(2), seconds: [null, 30, 45][lot(3)]! }))));
  const promises = ['Creamery', 'Pizzeria', 'Hardware', 'Tire'].map((name, at) =>
    aPromise(name, 1 + lot(2), lot(3) === 0 ? ['g1'] : ['g1', 'g2'], {
      categoryId: lot(4) === 0 ? 'tools' : 'food', seconds: [15, 25, 30][lot(3)]!, priority: ([1, 2, 3] as const)[lot(3)]!, separation: SEPARATIONS[lot(4)]!,
      readKindId: at % 2 === 0 ? 'timeOutRead' : 'thanks', sponsorsPerGame: 1 + lot(2), mostPerGame: lot(3) === 0 ? 1 : null,
    }),
  );
  return aPlanSeason(games, promises);
}

/** The least weighted shortfall, by trying every plan that the separate check lets stand. */
function leastShortfall(season: PlanSeason): number {
  const wanted = season.promises.flatMap((promise) => promise.slots.flatMap((slot) => Array.from({ length: slot.reads }, () => ({ promise, gameIds: slot.gameIds }))));
  const spots = season.games.flatMap((game) => game.windows.flatMap((window) => Array.from({ length: window.places }, (_, at) => ({ gameId: game.gameId, windowKey: window.key, place: at + 1 }))));
  let least = Infinity;
  const place = (at: number, reads: readonly PlanRead[], lacking: number): void => {
    if (lacking >= least) return;
    const next = wanted[at];
    if (next === undefined) {
      least = lacking;
      return;
    }
    for (const spot of spots) {
      if (!next.gameIds.includes(spot.gameId)) continue;
      // Reads of a promise are alike: only in order, and into the first free place of a window.
      if (reads.filter((read) => read.gameId === spot.gameId && read.windowKey === spot.windowKey).length !== spot.place - 1) continue;
      const tried = [...reads, { ...spot, promiseId: next.promise.promiseId }];
      if (faultsOfPlan(season, tried).length === 0) place(at + 1, tried, lacking);
    }
    place(at + 1, reads, lacking + WEIGHT_OF_PRIORITY[next.promise.priority]);
  };
  place(0, [], 0);
  return least;
}

test('the shortfall with seconds and company is the least there is, in twelve small seasons', { timeout: 120_000 }, async () => {
  const lot = lots(20261204);
  let worst = 0;
  for (let round = 0; round < 12; round += 1) {
    const season = smallSeason(lot);
    const plan = await solveSeason({ id: round, season, wishes: { keeps: 'nothing' }, company: true, seconds: 20 }, () => {});
    const least = leastShortfall(season);
    expect({ round, shortfall: plan.weightedShortfall, bound: plan.bound, isProven: plan.isProven }).toEqual({ round, shortfall: least, bound: least, isProven: true });
    expect(faultsOfPlan(season, plan.reads)).toEqual([]);
    worst = Math.max(worst, least);
  }
  expect(worst).toBeGreaterThan(9);
});
