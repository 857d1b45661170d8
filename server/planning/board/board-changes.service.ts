import { Inject, Injectable } from '@nestjs/common';
import { mayUse } from '../../domain/access/rights.ts';
import type { Role } from '../../domain/access/rights.ts';
import { changePlan, newFaults } from '../../domain/planning/board/change.ts';
import type { BoardChange, ChangedPlan } from '../../domain/planning/board/change.ts';
import { checkPlan } from '../../domain/planning/check-plan.ts';
import { isOfCompany } from '../../domain/planning/plan-fault.ts';
import type { PlacedRead, PlanSeason } from '../../domain/planning/season.ts';
import { refuse, sentenceOfRefusal } from '../../domain/refusals.ts';
import type { RefusalCode } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { SeasonFacts } from '../facts/season-facts.service.ts';
import { SeasonPlans } from '../proposals/season-plans.service.ts';
import type { BoardChangeDto, BoardChangesDto, BoardChangesView, BoardReadView } from './board.dto.ts';
import { inTheWay, refuseChanges, withoutCompany } from './board-refusals.ts';
import type { InTheWay } from './board-refusals.ts';
import { BoardRows } from './board-rows.service.ts';
import { BoardWriting } from './board-writing.service.ts';
import type { Laid } from './board-writing.service.ts';

/** A person's changes to the plan: all of them or none, and every wall is looked at before anything is written. */
@Injectable()
export class BoardChanges {
  constructor(
    @Inject(SeasonFacts) private readonly facts: SeasonFacts,
    @Inject(SeasonPlans) private readonly plans: SeasonPlans,
    @Inject(BoardRows) private readonly rows: BoardRows,
    @Inject(BoardWriting) private readonly writing: BoardWriting,
  ) {}

  /** @throws Refused `not-found`, and whatever one change of a list is refused for */
  async one(change: BoardChangeDto, version: number, overrideReason: string | null, roles: readonly Role[]): Promise<BoardReadView> {
    const seasonId = (await this.rows.seasonOf(change.placementId!)) ?? refuse('not-found');
    const { reads } = await this.many(seasonId, { changes: [{ ...change, version }], overrideReason }, roles);
    return reads[0]!;
  }

  async many(seasonId: string, form: BoardChangesDto, roles: readonly Role[]): Promise<BoardChangesView> {
    await this.rows.refuseUnlessThere(seasonId);
    const planVersion = await this.plans.moveOn(seasonId);
    await this.plans.holdTables(seasonId);
    const ids = form.changes.flatMap((change) => change.placementId ?? []);
    await this.rows.lock(ids);
    const before = await this.rows.reads(ids);
    const { season } = await this.facts.load(seasonId, { offers: 'open' });
    refuseChanges(form.changes.flatMap((_, index) => this.outOfHand(form.changes, index, before, season)), form.changes.length);
    const reason = mayUse(roles, 'override a refusal') ? (form.overrideReason ?? null) : null;
    const { plan, beside } = this.checked(season, form.changes, reason);
    const laid = form.changes.map((change, index): Laid => ({ change, id: change.placementId ?? newId(), read: before.get(change.placementId ?? ''), spot: plan.spots[index] ?? null, reason: beside.has(index) ? reason : undefined }));
    await this.writing.write(season, laid);
    const after = await this.rows.reads(laid.map((one) => one.id));
    return { planVersion, reads: laid.map((one) => after.get(one.id) ?? null) };
  }

  /** The plan once the changes are made, and which of them stand beside a competitor because somebody said so. */
  private checked(season: PlanSeason, changes: readonly BoardChangeDto[], reason: string | null): { plan: { spots: ChangedPlan['spots'] }; beside: Set<number> } {
    const moves = changes.map((change, index) => ({ change: asMove(change), index })).filter((one) => one.change !== null);
    const changed = changePlan(season, moves.map((one) => one.change!));
    const faults = newFaults(checkPlan(season, season.placed), checkPlan(changed.season, changed.reads));
    const spots: ChangedPlan['spots'] = changes.map((_, index) => changed.spots[moves.findIndex((one) => one.index === index)] ?? null);
    refuseChanges(inTheWay(withoutCompany(faults, reason), spots, season), changes.length);
    return { plan: { spots }, beside: new Set(inTheWay(faults.filter(isOfCompany), spots, season).map((way) => way.index)) };
  }

  /** What is wrong with one change whatever the others do. */
  private outOfHand(changes: readonly BoardChangeDto[], index: number, before: ReadonlyMap<string, BoardReadView>, season: PlanSeason): InTheWay[] {
    const change = changes[index]!;
    const no = (code: RefusalCode): InTheWay[] => [{ index, code, details: {}, sentence: sentenceOfRefusal(code) }];
    const isPlaced = change.kind === 'add' || change.kind === 'move';
    if (isPlaced && (change.gameId === undefined || change.windowKey === undefined)) return no('board-change-without-target');
    if (change.kind === 'add') {
      const promise = season.promises.find((one) => one.promiseId === change.promiseId);
      return promise === undefined || promise.source === 'offer' ? no('unknown-commitment') : [];
    }
    const read = before.get(change.placementId ?? '');
    const facts = season.placed.find((one) => one.placementId === change.placementId);
    if (read === undefined || facts === undefined) return no('unknown-board-read');
    if (change.version === undefined) return no('version-missing');
    if (change.version !== read.version) return no('stale-version');
    if (change.kind === 'pin' || change.kind === 'unpin') return [];
    if (changes.slice(0, index).some((one) => one.placementId === change.placementId)) return no('stale-version');
    if (read.isLogged) return no('placement-already-logged');
    if (staysOnLockedNight(facts, season)) return no('night-locked');
    if (change.kind === 'move' && !season.promises.some((one) => one.promiseId === read.promiseId)) return no('placement-not-planned');
    return [];
  }
}

/** On a locked night, of a promise that is not planned: the check of the plan does not miss it. */
function staysOnLockedNight(read: PlacedRead, season: PlanSeason): boolean {
  return !season.promises.some((one) => one.promiseId === read.promiseId) && season.games.some((game) => game.gameId === read.gameId && game.isLocked);
}

function asMove(change: BoardChangeDto): BoardChange | null {
  const { kind, placementId = '', promiseId = '', gameId = '', windowKey = '', place } = change;
  if (kind === 'move') return { kind, placementId, gameId, windowKey, place };
  if (kind === 'add') return { kind, promiseId, gameId, windowKey, place };
  return kind === 'remove' ? { kind, placementId } : null;
}
