import { tellContracts } from './contracts.ts';
import { tellCopy } from './copy.ts';
import { tellSchedule } from './schedule.ts';
import { tellSchools } from './schools.ts';
import { tellMarket } from './sponsors.ts';
import type { Story } from './story.ts';

/** The season in the order in which it happened. */
export async function tellSeason(story: Story): Promise<void> {
  const places = await tellSchools(story);
  await tellSchedule(story, places);
  const market = await tellMarket(story, places.seasonId);
  await tellContracts(story, places, market);
  await tellCopy(story, market);
}
