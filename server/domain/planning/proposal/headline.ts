import type { PlanSeason, SeasonPlan } from '../season.ts';
import { WEIGHT_OF_PRIORITY } from '../season.ts';
import { asSentence, countedInWords, numberInWords } from '../words/counted.ts';

/**
 * What a plan achieves, in one sentence. "No plan can place more" is only said where that is proven; else between how many
 * and how many reads are missing in the best plan there is.
 */
export function headlineOf(season: PlanSeason, plan: Pick<SeasonPlan, 'shortfallReads' | 'shortfall' | 'weightedShortfall' | 'bound' | 'isProven' | 'by'>): string {
  const owed = season.promises.reduce((sum, promise) => sum + promise.slots.reduce((all, slot) => all + slot.reads, 0), 0);
  if (season.games.length === 0) return owed === 0 ? 'Nothing is left to play and nothing is owed.' : `No game is left to play: ${countedInWords(owed, 'read')} ${owed === 1 ? 'finds' : 'find'} no place.`;
  if (owed === 0) return 'Nothing is left to plan.';
  const missing = plan.shortfallReads;
  if (missing === 0) return owed === 1 ? 'The one read owed has a place.' : owed === 2 ? 'Both reads have a place.' : `All ${owed} reads have a place.`;
  const finds = `${asSentence(countedInWords(missing, 'read'))} of ${owed} ${missing === 1 ? 'finds' : 'find'} no place`;
  if (plan.isProven) return plan.by === 'places' ? `${finds}; no plan can place more.` : `${finds}; no better plan exists.`;
  const least = leastMissing(season, plan);
  return `${finds}. The best plan there is leaves between ${numberInWords(least)} and ${numberInWords(missing)} without one.`;
}

/** However the reads are chosen, so many are missing at least: the bound over the heaviest weight there is. */
function leastMissing(season: PlanSeason, { bound, shortfallReads }: Pick<SeasonPlan, 'bound' | 'shortfallReads'>): number {
  const heaviest = Math.max(1, ...season.promises.map((promise) => WEIGHT_OF_PRIORITY[promise.priority]));
  return Math.min(shortfallReads, Math.ceil(bound / heaviest));
}
