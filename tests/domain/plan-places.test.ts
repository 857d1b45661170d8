import { expect, test } from 'vitest';
import { checkPlan } from '../../server/domain/planning/check-plan.ts';
import { isOfCompany } from '../../server/domain/planning/plan-fault.ts';
import { planPlaces } from '../../server/domain/planning/places/plan-places.ts';
import type { PlanSeason } from '../../server/domain/planning/season.ts';
import { randomPlanSeason } from '../support/random-plan-season.ts';

const seeds = Array.from({ length: 200 }, (_, at) => at + 1);
const asked = (season: PlanSeason): number => season.promises.flatMap((promise) => promise.slots).reduce((sum, slot) => sum + slot.reads, 0);

test.each(['nothing', 'whatIsPlaced'] as const)('on 200 random seasons a plan that keeps %s holds, and its bottlenecks come to what is missing', (keeps) => {
  for (const seed of seeds) {
    const season = randomPlanSeason(seed);
    const plan = planPlaces(season, { keeps });
    const walls = checkPlan(season, plan.reads).filter((fault) => fault.severity === 'wall' && !isOfCompany(fault));
    const missing = plan.bottlenecks.reduce((sum, one) => sum + one.needed - one.places, 0);
    expect({ seed, walls, missing, asked: asked(season) }).toEqual({ seed, walls: [], missing: plan.shortfallReads, asked: plan.reads.length + plan.shortfallReads });
  }
});
