import type { PlanPromise, PlanSeason, SeasonPlan, Bottleneck } from '../season.ts';
import { earlierShortfall, readsAsked, readsShort } from './asking.ts';

/** What was found out about one asked line, alone and beside the others. */
export interface LineAnswer {
  readonly promiseId: string;
  readonly asked: number;
  /** reads of it that have a place in the plan that is shown, with all asked lines together */
  readonly inPlan: number;
  /** the most of it where no other asked line is promised: so many fit for certain, and more than `atMostAlone` never */
  readonly atLeastAlone: number;
  readonly atMostAlone: number;
  /** games in which it asks for reads by themselves and has fewer, in the order of play */
  readonly shortGameIds: readonly string[];
}

/** Whether the asked lines fit, everything promised before kept whole. */
export interface PromiseAnswer {
  /** `between`: all may fit, and it could not be proven in time */
  readonly can: 'yes' | 'no' | 'between';
  readonly asked: number;
  /** so many of the reads asked for fit, by the plan that is shown */
  readonly atLeast: number;
  /** no plan can hold more of them */
  readonly atMost: number;
  readonly lines: readonly LineAnswer[];
  /** reads of earlier promises that are short whether this is promised or not */
  readonly shortBefore: number;
  /** what is full because of what is asked */
  readonly bottlenecks: readonly Bottleneck[];
  /** in places alone, or with seconds and company as well */
  readonly by: SeasonPlan['by'];
}

/** What was solved: the same season without and with what is asked, earlier promises first. */
export interface Solved {
  /** the season with what is asked, as `withAskedLast` gives it */
  readonly season: PlanSeason;
  readonly askedIds: ReadonlySet<string>;
  /** of the season without what is asked, or `after` itself where no earlier promise is short in it */
  readonly before: SeasonPlan;
  readonly after: SeasonPlan;
  /** where `after` made earlier promises shorter than `before`: what is asked beside the plan `before` */
  readonly beside: SeasonPlan | null;
}

/** Whether the plan with what is asked takes anything from earlier promises. */
export function takesFromEarlier({ season, askedIds, before, after }: Omit<Solved, 'beside'>): boolean {
  return earlierShortfall(season, after, askedIds) > earlierShortfall(season, before, askedIds);
}

/**
 * How many of the reads asked for fit: those of the plan found at least, and at most what its bound leaves, once earlier
 * promises are as short as they are without it.
 */
export function fitBetween(solved: Solved): { asked: number; atLeast: number; atMost: number } {
  const { season, askedIds, before, after } = solved;
  const shown = solved.beside ?? after;
  const asked = season.promises.filter((one) => askedIds.has(one.promiseId)).reduce((sum, one) => sum + readsAsked(one), 0);
  const atLeast = asked - readsShort(shown, (id) => askedIds.has(id));
  const surelyShort = Math.max(0, Math.ceil(after.bound - earlierShortfall(season, before, askedIds)));
  return { asked, atLeast, atMost: Math.max(atLeast, asked - Math.min(asked, surelyShort)) };
}

function shortGames(promise: PlanPromise, plan: SeasonPlan): string[] {
  const short = plan.shortfall.filter((one) => one.promiseId === promise.promiseId && one.reads > 0).map((one) => promise.slots[one.slot]);
  return promise.slots.length < 2 ? [] : [...new Set(short.flatMap((slot) => slot?.gameIds ?? []))];
}

function bottlenecksOf({ askedIds, after, beside }: Solved, inPlaces: SeasonPlan | null, short: number): Bottleneck[] {
  const about = (plan: SeasonPlan | null): Bottleneck[] => (plan?.bottlenecks ?? []).filter((one) => one.promiseIds.some((id) => askedIds.has(id)));
  const own = [...about(after), ...about(beside)];
  if (own.length > 0) return own;
  const ofPlaces = about(inPlaces);
  return ofPlaces.reduce((sum, one) => sum + one.needed - one.places, 0) === short ? ofPlaces : [];
}

/**
 * The answer to "can we promise this?". What is short already is not blamed on what is asked: the shortfall of earlier
 * promises is compared with the season in which nothing is asked.
 *
 * @param alone for each asked line the season in which only it is asked; a line that is not named is the only one
 * @param inPlaces the plan in places alone, where seconds and company left no bottleneck to tell: where it lacks just as
 *   many reads, its bottleneck is told
 * @source common practice, no source
 */
export function promiseAnswer(solved: Solved, alone: ReadonlyMap<string, Solved>, inPlaces: SeasonPlan | null = null): PromiseAnswer {
  const { season, askedIds, before } = solved;
  const shown = solved.beside ?? solved.after;
  const { asked, atLeast, atMost } = fitBetween(solved);
  const lines = season.promises.filter((one) => askedIds.has(one.promiseId)).map((promise): LineAnswer => {
    const ofLine = fitBetween(alone.get(promise.promiseId) ?? solved);
    return {
      promiseId: promise.promiseId,
      asked: readsAsked(promise),
      inPlan: readsAsked(promise) - readsShort(shown, (id) => id === promise.promiseId),
      atLeastAlone: ofLine.atLeast,
      atMostAlone: ofLine.atMost,
      shortGameIds: shortGames(promise, shown),
    };
  });
  return {
    can: atLeast === asked ? 'yes' : atMost < asked ? 'no' : 'between',
    asked,
    atLeast,
    atMost,
    lines,
    shortBefore: readsShort(before, (id) => !askedIds.has(id)),
    bottlenecks: atLeast === asked ? [] : bottlenecksOf(solved, inPlaces, asked - atMost),
    by: shown.by,
  };
}
