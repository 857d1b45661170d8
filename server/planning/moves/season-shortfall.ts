import type { PlanSeason, SeasonPlan } from '../../domain/planning/season.ts';
import { bottleneckInWords } from '../../domain/planning/words/bottleneck.ts';
import type { BottleneckNames } from '../../domain/planning/words/bottleneck.ts';
import type { SeasonShortfall } from './move-preview.dto.ts';

/** A season with the plan that misses the fewest reads. */
export interface PlannedSeason {
  season: PlanSeason;
  plan: SeasonPlan;
}

/** What finds no place before a move and after it, and why after it. */
export function seasonShortfall(before: PlannedSeason, after: PlannedSeason): SeasonShortfall {
  const [missingBefore, missingAfter] = [missingOf(before.plan), missingOf(after.plan)];
  const promises = new Map([...before.season.promises, ...after.season.promises].map((promise) => [promise.promiseId, promise]));
  return {
    readsBefore: before.plan.shortfallReads,
    readsAfter: after.plan.shortfallReads,
    isProven: before.plan.isProven && after.plan.isProven,
    promises: [...promises.values()].flatMap(({ promiseId, sponsorName, readKindName }) => {
      const [readsBefore, readsAfter] = [missingBefore.get(promiseId) ?? 0, missingAfter.get(promiseId) ?? 0];
      return readsBefore === readsAfter ? [] : [{ promiseId, sponsorName, readKindName, readsBefore, readsAfter }];
    }),
    because: after.plan.shortfallReads > before.plan.shortfallReads ? after.plan.bottlenecks.map((bottleneck) => bottleneckInWords(bottleneck, namesIn(after.season))) : [],
  };
}

function missingOf({ shortfall }: SeasonPlan): Map<string, number> {
  const missing = new Map<string, number>();
  for (const { promiseId, reads } of shortfall) missing.set(promiseId, (missing.get(promiseId) ?? 0) + reads);
  return missing;
}

function namesIn(season: PlanSeason): BottleneckNames {
  const games = new Map(season.games.map((game) => [game.gameId, game]));
  const promises = new Map(season.promises.map((promise) => [promise.promiseId, promise]));
  return {
    game: (gameId) => games.get(gameId),
    promise: (promiseId) => {
      const promise = promises.get(promiseId);
      return promise && { ...promise, isThis: false };
    },
    this: 'this contract',
  };
}
