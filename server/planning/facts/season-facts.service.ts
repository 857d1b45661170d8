import { Inject, Injectable } from '@nestjs/common';
import { createHash } from 'node:crypto';
import { DepartmentService } from '../../access/department.service.ts';
import type { DepartmentView } from '../../access/department.dto.ts';
import type { Day } from '../../domain/day.ts';
import { keepOut } from '../../domain/planning/company/keep-out.ts';
import { isStillToPlan, planWindows } from '../../domain/planning/facts/plan-games.ts';
import { planPromise } from '../../domain/planning/facts/promise-to-plan.ts';
import type { PromiseToPlan } from '../../domain/planning/facts/promise-to-plan.ts';
import type { PlacedRead, PlanGame, PlanSeason } from '../../domain/planning/season.ts';
import type { CompanyLimit } from '../../domain/sponsorship/company/limits.ts';
import { refuse } from '../../domain/refusals.ts';
import { CompanyLimits } from '../../sponsorship/company/company-limits.service.ts';
import { profileOfGame } from '../game-windows.ts';
import { PlannedGames } from '../planned-games.service.ts';
import type { PlannedGame } from '../planned-games.service.ts';
import { SeasonPlans } from '../proposals/season-plans.service.ts';
import { FactsRows } from './facts-rows.service.ts';
import type { HeldRow, NightRow, PlacedRow } from './facts-rows.service.ts';
import { labelsOf } from './game-labels.ts';
import { PromisesToPlan } from './promises-to-plan.service.ts';
import type { PlanLine } from './plan-line.ts';

export interface FactsWanted {
  /** whether room is kept for the open offers */
  offers: 'open' | 'none';
  leavingOutOfferId?: string;
  /** lines that are asked about, as if they were promised */
  adding?: readonly PlanLine[];
  /** games as if they were not held */
  withoutGameIds?: readonly string[];
}

export interface Facts {
  season: PlanSeason;
  /** of the season's plan: whoever changes a placement moves it on */
  version: number;
  /** of all of the facts */
  digest: string;
  today: Day;
}

/** Everything the plan of a season is made from, read in one unit of work. */
@Injectable()
export class SeasonFacts {
  constructor(
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(PlannedGames) private readonly games: PlannedGames,
    @Inject(FactsRows) private readonly rows: FactsRows,
    @Inject(PromisesToPlan) private readonly promises: PromisesToPlan,
    @Inject(SeasonPlans) private readonly plans: SeasonPlans,
    @Inject(CompanyLimits) private readonly company: CompanyLimits,
  ) {}

  /** @throws Refused `unknown-season`, `unknown-read-kind` */
  async load(seasonId: string, wanted: FactsWanted): Promise<Facts> {
    const { season, today } = await this.gather(seasonId, wanted, () => true);
    return { season, version: await this.plans.version(seasonId), digest: digestOf(season), today };
  }

  /** The facts beside what is owed in all: reads on games that wait are owed here, and have no place to rely on. */
  async standing(seasonId: string): Promise<Facts & { owed: readonly PromiseToPlan[] }> {
    const { season, today, toPlan } = await this.gather(seasonId, { offers: 'open' }, (row) => !row.isWaiting);
    return { season, version: await this.plans.version(seasonId), digest: digestOf(season), today, owed: toPlan };
  }

  private async gather(seasonId: string, wanted: FactsWanted, isSpokenFor: (row: PlacedRow) => boolean): Promise<{ season: PlanSeason; today: Day; toPlan: PromiseToPlan[] }> {
    if (!(await this.rows.isSeason(seasonId))) refuse('unknown-season');
    const today = await this.departments.today();
    const without = new Set(wanted.withoutGameIds ?? []);
    const all = await this.games.ofSeason(seasonId);
    const remaining = all.filter((game) => isStillToPlan(game, today) && !without.has(game.id));
    const nights = await this.rows.nights(remaining.map((game) => game.nightId!));
    const rows = (await this.rows.placed(seasonId)).filter((row) => !without.has(row.gameId));
    const toPlan = await this.promises.ofSeason(seasonId, today, wanted, elsewhereOf(rows, remaining).filter(isSpokenFor));
    const held = wanted.offers === 'open' ? await this.rows.held(seasonId) : [];
    const limits = await this.company.of(seasonId);
    return { season: seasonOf({ all, remaining, nights, rows, held, toPlan, limits }, await this.departments.here()), today, toPlan };
  }
}

interface Loaded {
  all: readonly PlannedGame[];
  remaining: readonly PlannedGame[];
  nights: ReadonlyMap<string, NightRow>;
  rows: readonly PlacedRow[];
  held: readonly HeldRow[];
  toPlan: readonly PromiseToPlan[];
  limits: readonly CompanyLimit[];
}

function elsewhereOf(rows: readonly PlacedRow[], remaining: readonly PlannedGame[]): PlacedRow[] {
  const isHere = new Set(remaining.map((game) => game.id));
  return rows.filter((row) => row.isOpen && !isHere.has(row.gameId));
}

function seasonOf(loaded: Loaded, { settings }: DepartmentView): PlanSeason {
  const { all, remaining, nights, toPlan, limits } = loaded;
  const labels = labelsOf(remaining);
  const games = remaining.map((game): PlanGame => {
    const night = nights.get(game.nightId!);
    const main = mainGameOf(all.filter((other) => other.nightId === game.nightId));
    const profile = profileOfGame(game.sport, game.playedOn, settings.state);
    const capacity = { halftimeSeconds: main?.id === game.id ? (night?.halftimeSeconds ?? null) : null, timeOutsReliedOn: settings.timeOutsReliedOn };
    return {
      gameId: game.id,
      nightId: game.nightId!,
      label: labels.get(game.id)!,
      playedOn: game.playedOn,
      teamIds: game.ourTeamIds,
      windows: planWindows(game.windows, profile, capacity),
      isLocked: night?.isLocked ?? false,
    };
  });
  const placed = placedOn(games, loaded);
  const promises = toPlan.map((asked) => {
    const { promise, games: open } = keepOut(asked, remaining, limits);
    return planPromise(promise, open, placed.filter((read) => read.promiseId === promise.id));
  });
  const gamesOf = new Map(promises.map((promise) => [promise.promiseId, new Set(promise.slots.flatMap((slot) => slot.gameIds))]));
  return {
    games,
    promises: promises.filter((promise) => promise.slots.some((slot) => slot.reads > 0) || placed.some((read) => read.promiseId === promise.promiseId)),
    placed: placed.filter((read) => read.placementId !== null || gamesOf.has(read.promiseId)).map((read) => {
      const isStray = read.isFixed && read.placementId !== null && gamesOf.get(read.promiseId)?.has(read.gameId) === false;
      // It stays where it is and only takes a place.
      return isStray ? { ...read, promiseId: read.placementId! } : read;
    }),
  };
}

/** Reads that stand on games still to be played; what is held for an offer gives way where a read took its place. */
function placedOn(games: readonly PlanGame[], { rows, held }: Loaded): PlacedRead[] {
  const byId = new Map(games.map((game) => [game.gameId, game]));
  const spot = (read: { gameId: string; windowKey: string; place: number }): string => `${read.gameId} ${read.windowKey} ${read.place}`;
  const placements = rows.filter((row) => byId.has(row.gameId)).map(({ id, promiseId, gameId, windowKey, place, isPinned, isLogged }): PlacedRead => (
    { promiseId, gameId, windowKey, place, placementId: id, isFixed: isPinned || isLogged || byId.get(gameId)!.isLocked }
  ));
  const taken = new Set(placements.map(spot));
  const forOffers = held.filter((row) => byId.has(row.gameId) && !taken.has(spot(row))).map(({ offerLineId, gameId, windowKey, place }): PlacedRead => (
    { promiseId: offerLineId, gameId, windowKey, place, placementId: null, isFixed: byId.get(gameId)!.isLocked }
  ));
  return [...placements, ...forOffers];
}

/** The game whose halftime the night is about: the varsity's, or the last. */
function mainGameOf(games: readonly PlannedGame[]): PlannedGame | undefined {
  return games.find((game) => game.level === 'varsity') ?? games.at(-1);
}

function digestOf(season: PlanSeason): string {
  return createHash('sha256').update(JSON.stringify(season)).digest('hex');
}
