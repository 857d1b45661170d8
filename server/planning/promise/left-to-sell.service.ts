import { Inject, Injectable } from '@nestjs/common';
import { NO_MONEY, addCents, timesCents } from '../../domain/money.ts';
import { readsShort, withAskedLast } from '../../domain/planning/promise/asking.ts';
import { mixInWords, orderOfMix, rankedExtras } from '../../domain/planning/promise/best-extra.ts';
import type { MixedKind } from '../../domain/planning/promise/best-extra.ts';
import { monthOf, monthsOf, placesOfKind, probeOf, windowKindsOf, windowsOfOneKind, withPromises } from '../../domain/planning/promise/left-to-sell.ts';
import type { KindToSell } from '../../domain/planning/promise/left-to-sell.ts';
import { fitBetween } from '../../domain/planning/promise/promise-answer.ts';
import type { PlanGame, PlanSeason, SeasonPlan } from '../../domain/planning/season.ts';
import { asSentence, countedInWords, gamesInWords } from '../../domain/planning/words/counted.ts';
import { refuse } from '../../domain/refusals.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Season } from '../../season/season.entity.ts';
import { SeasonFacts } from '../facts/season-facts.service.ts';
import { KindsToSell } from './kinds-to-sell.service.ts';
import type { PricedKind } from './kinds-to-sell.service.ts';
import type { Left, LeftInWindowsQuery, LeftOfMonth, LeftOfWindow, LeftToSellView } from './left-to-sell.dto.ts';
import { PromiseSolving, SolvingTime } from './promise-solving.service.ts';

/** A flow for each kind and month takes longer than one answer; what is not worked out by then is said to be so. Common practice, no source. */
const SECONDS = 45;

interface Looked {
  readonly season: PlanSeason;
  readonly kinds: readonly PricedKind[];
}

interface Laid extends Looked {
  /** the plan of everything promised, in places */
  readonly base: SeasonPlan;
  readonly time: SolvingTime;
  /** games in which one more read was seen to fit */
  readonly open: Set<string>;
}

function fullInWords(games: readonly PlanGame[]): string | null {
  return games.length === 0 ? null : `${asSentence(gamesInWords(games))} ${games.length === 1 ? 'is' : 'are'} full: no read of any kind fits any more.`;
}

function lockedInWords(games: readonly PlanGame[]): string | null {
  if (games.length === 0) return null;
  const nights = new Set(games.map((game) => game.nightId)).size;
  return `${asSentence(gamesInWords(games))} ${games.length === 1 ? 'is' : 'are'} on ${nights === 1 ? 'a locked night' : 'locked nights'}, to which nothing is added.`;
}

/** What the rest of a season can still carry beside everything promised, by flows: one for each read kind and month. */
@Injectable()
export class LeftToSell {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(SeasonFacts) private readonly facts: SeasonFacts,
    @Inject(KindsToSell) private readonly kinds: KindsToSell,
    @Inject(PromiseSolving) private readonly solving: PromiseSolving,
  ) {}

  /** Outside a unit of work. @throws Refused `not-found`, `plan-cancelled`, `planning-busy` */
  async ofSeason(seasonId: string, signal?: AbortSignal): Promise<LeftToSellView> {
    const laid = await this.laid(await this.work.run(() => this.look(seasonId)), signal);
    const { season, kinds, base } = laid;
    const wholeSeason = new Map<string, Left>();
    for (const kind of kinds) wholeSeason.set(kind.readKindId, await this.extra(laid, kind, season.games));
    const mix = await this.mix(laid);
    const months: LeftOfMonth[] = [];
    for (const kind of kinds) for (const month of monthsOf(season)) months.push(await this.month(laid, kind, month, wholeSeason.get(kind.readKindId)!));
    const fullGames = await this.fullGames(laid, months);
    const shortNow = readsShort(base);
    return {
      seasonId,
      games: season.games.length,
      shortNow,
      shortNowSentence: shortNow === 0 ? null : `${asSentence(countedInWords(shortNow, 'read'))} promised to others ${shortNow === 1 ? 'has' : 'have'} no place as it is.`,
      months: months.toSorted((one, other) => (one.month < other.month ? -1 : one.month > other.month ? 1 : 0)),
      fullGames: fullGames.map(({ gameId, label, playedOn }) => ({ gameId, label, playedOn })),
      fullGamesSentence: [fullInWords(fullGames), lockedInWords(season.games.filter((game) => game.isLocked))].filter((one) => one !== null).join(' ') || null,
      extras: rankedExtras(kinds.map(({ readKindId, readKindName, priceCents }) => ({ readKindId, readKindName, priceCents, most: wholeSeason.get(readKindId)?.left ?? 0 }))),
      mix,
      isMixWhole: mix.length === orderOfMix(kinds).length,
      mixCents: mix.reduce((sum, kind) => addCents(sum, timesCents(kind.priceCents, kind.reads)), NO_MONEY),
      mixSentence: mixInWords(mix),
    };
  }

  /** Outside a unit of work: window by window. @throws Refused `not-found`, `unknown-read-kind` */
  async inWindows(seasonId: string, { readKindId, month }: LeftInWindowsQuery, signal?: AbortSignal): Promise<LeftOfWindow[]> {
    const laid = await this.laid(await this.work.run(() => this.look(seasonId)), signal);
    const kinds = laid.kinds.filter((one) => readKindId === undefined || one.readKindId === readKindId);
    if (readKindId !== undefined && kinds.length === 0) refuse('unknown-read-kind');
    const games = laid.season.games.filter((game) => month === undefined || monthOf(game) === month);
    const ids = new Set(games.map((game) => game.gameId));
    const rows: LeftOfWindow[] = [];
    for (const kind of kinds) {
      for (const windowKind of windowKindsOf(kind, games)) {
        const left = await this.extra(laid, kind, games, windowsOfOneKind(kind, games, windowKind));
        rows.push({ readKindId: kind.readKindId, windowKind, ...placesOfKind(kind, laid.season, laid.base.reads, ids, windowKind), ...left });
      }
    }
    return rows;
  }

  private async look(seasonId: string): Promise<Looked> {
    await this.work.one(Season, seasonId);
    const { season } = await this.facts.load(seasonId, { offers: 'open' });
    return { season, kinds: await this.kinds.ofSeason(seasonId) };
  }

  private async laid({ season, kinds }: Looked, signal: AbortSignal | undefined): Promise<Laid> {
    const time = new SolvingTime(SECONDS, signal);
    return { season, kinds, time, open: new Set(), base: await this.solving.plan(withAskedLast(season, new Set()), time, false, 2) };
  }

  /** The most further reads of a kind in these games. */
  private async extra(laid: Laid, kind: KindToSell, games: readonly PlanGame[], windows: readonly string[] = kind.windows): Promise<Left> {
    const probe = probeOf(kind, laid.season, games.filter((game) => !game.isLocked).map((game) => game.gameId), { windows });
    if (probe.slots.every((slot) => slot.reads === 0)) return { left: 0, isExact: true };
    if (laid.time.isUp) return { left: null, isExact: false };
    const solved = await this.solving.solved(withPromises(laid.season, [probe]), new Set([probe.promiseId]), laid.time, { company: false, before: laid.base });
    const { atLeast, atMost } = fitBetween(solved);
    for (const read of (solved.beside ?? solved.after).reads) if (read.promiseId === probe.promiseId) laid.open.add(read.gameId);
    return { left: atLeast, isExact: atLeast === atMost };
  }

  private async month(laid: Laid, kind: PricedKind, month: string, ofSeason: Left): Promise<LeftOfMonth> {
    const games = laid.season.games.filter((game) => monthOf(game) === month);
    const places = placesOfKind(kind, laid.season, laid.base.reads, new Set(games.map((game) => game.gameId)));
    const isKnown = games.length === laid.season.games.length || (ofSeason.left === 0 && ofSeason.isExact);
    const { left, isExact } = isKnown ? ofSeason : await this.extra(laid, kind, games);
    return { readKindId: kind.readKindId, readKindName: kind.readKindName, month, ...places, left, isExact };
  }

  /** Games that were not seen to take one more read are tried by themselves, where their month has anything left. */
  private async fullGames(laid: Laid, months: readonly LeftOfMonth[]): Promise<PlanGame[]> {
    const full: PlanGame[] = [];
    for (const game of laid.season.games) {
      if (game.isLocked || laid.open.has(game.gameId)) continue;
      const worthTrying = laid.kinds.filter((kind) => months.some((row) => row.readKindId === kind.readKindId && row.month === monthOf(game) && row.left !== 0));
      let isFull = true;
      for (const kind of worthTrying) {
        if (!isFull) break;
        const { left } = await this.extra(laid, kind, [game]);
        isFull = left === 0;
      }
      if (isFull) full.push(game);
    }
    return full;
  }

  /** The dearest reads first, as many as fit; then those of the next price beside them. */
  private async mix(laid: Laid): Promise<MixedKind[]> {
    const mix: MixedKind[] = [];
    let { season } = laid;
    const gameIds = laid.season.games.filter((game) => !game.isLocked).map((game) => game.gameId);
    for (const kind of orderOfMix(laid.kinds)) {
      if (laid.time.isUp) break;
      const probe = probeOf(kind, laid.season, gameIds);
      const solved = await this.solving.solved(withPromises(season, [probe]), new Set([probe.promiseId]), laid.time, { company: false });
      const reads = fitBetween(solved).atLeast;
      mix.push({ readKindId: kind.readKindId, readKindName: kind.readKindName, priceCents: kind.priceCents, reads });
      season = withPromises(season, [{ ...probe, priority: 2, slots: [{ reads, gameIds }] }]);
    }
    return mix;
  }
}
