import { newFaults } from '../board/change.ts';
import { checkPlan } from '../check-plan.ts';
import { isOfCompany } from '../plan-fault.ts';
import type { PlanSeason, SeasonPlan } from '../season.ts';
import { NO_ROOM_IN_COMPANY, bottleneckInWords } from '../words/bottleneck.ts';
import { asSentence, countedInWords } from '../words/counted.ts';
import { faultInWords } from '../words/fault.ts';
import { namesOf } from '../words/names.ts';
import { headlineOf } from './headline.ts';
import { movesOf } from './moves.ts';
import type { GameBeforeAfter, ProposalResult, ReadsMissing, SponsorBeforeAfter } from './proposal-result.ts';

/** A plan as it is shown to whoever accepts it. Counts are reads. */
export function resultOf(season: PlanSeason, plan: SeasonPlan, because: string | null): ProposalResult {
  const moves = movesOf(season, plan.reads, because);
  const count = (kind: (typeof moves)[number]['kind']): number => moves.filter((move) => move.kind === kind).length;
  const bySponsor = sponsorsOf(season, plan);
  const before = bySponsor.reduce((sum, one) => sum + one.before, 0);
  const { reads, shortfallReads, weightedShortfall, bound, isProven, by } = plan;
  return {
    headline: headlineOf(season, plan),
    reads, shortfallReads, weightedShortfall, bound, isProven, by,
    shortfall: missingOf(season, plan),
    bottlenecks: bottlenecksOf(season, plan),
    cautions: cautionsOf(season, plan),
    asksWhy: newFaults(checkPlan(season, season.placed), checkPlan(season, plan.reads)).some((fault) => fault.severity === 'wall' && isOfCompany(fault)),
    moves,
    bySponsor,
    byGame: gamesOf(season, plan),
    totals: {
      owed: bySponsor.reduce((sum, one) => sum + one.owed, 0),
      before,
      after: bySponsor.reduce((sum, one) => sum + one.after, 0),
      held: bySponsor.reduce((sum, one) => sum + one.held, 0),
      stayed: before - count('moved') - count('withinGame') - count('gone'),
      added: count('new'),
      moved: count('moved'),
      movedWithinGame: count('withinGame'),
      gone: count('gone'),
    },
  };
}

function missingOf(season: PlanSeason, plan: SeasonPlan): ReadsMissing[] {
  const missing = new Map<string, number>();
  for (const { promiseId, reads } of plan.shortfall) missing.set(promiseId, (missing.get(promiseId) ?? 0) + reads);
  return season.promises.flatMap(({ promiseId, sponsorName, readKindName, source, slots }): ReadsMissing[] => {
    const reads = missing.get(promiseId) ?? 0;
    return reads === 0 ? [] : [{ promiseId, sponsorName, readKindName, source, owed: slots.reduce((sum, slot) => sum + slot.reads, 0), missing: reads }];
  });
}

/** Full windows first; then what is missing although there are places, where lengths and competitors are looked at. */
function bottlenecksOf(season: PlanSeason, plan: SeasonPlan): string[] {
  const games = new Map(season.games.map((game) => [game.gameId, game]));
  const promises = new Map(season.promises.map((promise) => [promise.promiseId, { ...promise, isThis: false }]));
  const full = plan.bottlenecks.map((one) => bottleneckInWords(one, { game: (id) => games.get(id), promise: (id) => promises.get(id), this: 'this plan' }));
  const missing = plan.shortfallReads - plan.bottlenecks.reduce((sum, one) => sum + one.needed - one.places, 0);
  return plan.by === 'places' || missing <= 0 ? full : [...full, `${asSentence(countedInWords(missing, full.length === 0 ? 'read' : 'more read'))} would have places enough, but ${NO_ROOM_IN_COMPANY} for ${missing === 1 ? 'it' : 'them'}.`];
}

/** Each thing once, however often it is broken. */
function cautionsOf(season: PlanSeason, plan: SeasonPlan): string[] {
  const names = namesOf(season);
  return [...new Set(checkPlan(season, plan.reads).map((fault) => {
    const sentence = faultInWords(fault, names);
    const game = season.games.find((one) => one.gameId === fault.gameId);
    return game === undefined || sentence.includes(game.label) ? sentence : `${game.label}: ${sentence}`;
  }))];
}

function sponsorsOf(season: PlanSeason, plan: SeasonPlan): SponsorBeforeAfter[] {
  const tally = (reads: readonly { readonly promiseId: string }[]): Map<string, number> => {
    const counts = new Map<string, number>();
    for (const { promiseId } of reads) counts.set(promiseId, (counts.get(promiseId) ?? 0) + 1);
    return counts;
  };
  const [before, after] = [tally(season.placed), tally(plan.reads)];
  const sponsors = new Map<string, SponsorBeforeAfter>();
  for (const { promiseId, sponsorId, sponsorName, source, slots } of season.promises) {
    const sum = sponsors.get(sponsorId) ?? { sponsorId, sponsorName, owed: 0, before: 0, after: 0, held: 0 };
    const will = after.get(promiseId) ?? 0;
    sponsors.set(sponsorId, {
      ...sum,
      owed: sum.owed + slots.reduce((all, slot) => all + slot.reads, 0),
      before: sum.before + (before.get(promiseId) ?? 0),
      after: sum.after + will,
      held: sum.held + (source === 'offer' ? will : 0),
    });
  }
  return [...sponsors.values()].sort((one, other) => (one.sponsorName < other.sponsorName ? -1 : one.sponsorName > other.sponsorName ? 1 : 0));
}

function gamesOf(season: PlanSeason, plan: SeasonPlan): GameBeforeAfter[] {
  const promised = new Set(season.promises.map((promise) => promise.promiseId));
  const others = season.placed.filter((read) => !promised.has(read.promiseId));
  return season.games.map(({ gameId, label, playedOn, isLocked, windows }) => ({
    gameId, label, playedOn, isLocked,
    places: windows.reduce((sum, window) => sum + window.places, 0),
    before: season.placed.filter((read) => read.gameId === gameId).length,
    after: [...plan.reads, ...others].filter((read) => read.gameId === gameId).length,
  }));
}
