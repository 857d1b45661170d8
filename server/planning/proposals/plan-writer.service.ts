import { Inject, Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import { planChanges } from '../../domain/planning/proposal/plan-changes.ts';
import type { PlanChange } from '../../domain/planning/proposal/plan-changes.ts';
import type { PlanPromise, PlanRead, PlanSeason } from '../../domain/planning/season.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { CopyShelf } from '../copy-shelf.ts';
import { CopyShelves } from '../copy-shelf.service.ts';
import { Placement } from '../placement.entity.ts';
import { HeldPlace } from './held-place.entity.ts';
import { sittingRounds } from './sitting-rounds.ts';
import type { SittingRead } from './sitting-rounds.ts';

/** Why a read may stand beside a competitor, and which. */
export interface BesideCompetitor {
  readonly reason: string;
  readonly stands: (read: PlanRead) => boolean;
}

interface Written extends SittingRead {
  nightId: string;
  copyVersionId: string | null;
  besideCompetitorReason: string | null;
}

const MOVE = `update placement set game_id = r.game_id, night_id = r.night_id, window_key = r.window_key, place = r.place, copy_version_id = r.copy_version_id,
    beside_competitor_reason = r.beside_competitor_reason, version = placement.version + 1
  from jsonb_to_recordset($2::jsonb) as r(id uuid, game_id uuid, night_id uuid, window_key text, place smallint, copy_version_id uuid, beside_competitor_reason text)
  where placement.department_id = $1 and placement.id = r.id`;

/** Writes a plan down: what stays keeps its row, with its id, its pin and its words. */
@Injectable()
export class PlanWriter {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(CopyShelves) private readonly shelves: CopyShelves,
  ) {}

  /**
   * The caller holds the season's plan and loaded the season in this unit.
   *
   * @returns how many reads were added
   */
  async write(seasonId: string, season: PlanSeason, reads: readonly PlanRead[], beside: BesideCompetitor | null = null): Promise<number> {
    const promises = new Map(season.promises.map((promise) => [promise.promiseId, promise]));
    const isOwed = (read: PlanRead): boolean => promises.has(read.promiseId) && promises.get(read.promiseId)!.source !== 'offer';
    const changes = planChanges(season.placed.filter(isOwed), reads.filter(isOwed), season.games);
    const shelf = await this.shelves.of([...new Set(season.promises.map((promise) => promise.sponsorId))], season.games.map((game) => game.gameId));
    const laid = new Laid(season, promises, shelf, beside);
    const gone = changes.filter((change) => change.to === null).map((change) => change.from!.placementId!);
    for (let at = 0; at < gone.length; at += 500) await this.work.remove(Placement, { id: In(gone.slice(at, at + 500)) });
    await this.move(season, changes, laid, new Set(gone));
    const added = changes.flatMap((change) => (change.from === null ? [change.to!] : []));
    await this.insert(added, promises, laid);
    await this.hold(seasonId, reads.filter((read) => promises.get(read.promiseId)?.source === 'offer'), laid);
    return added.length;
  }

  /** A place is free before somebody sits down on it; who would wait in a circle stands up for a moment. */
  private async move(season: PlanSeason, changes: readonly PlanChange[], laid: Laid, gone: ReadonlySet<string>): Promise<void> {
    const moving = changes.filter((change) => change.from !== null && change.to !== null).map((change) => laid.moved(change));
    const seated = season.placed.filter((read) => read.placementId !== null && !gone.has(read.placementId)).map((read) => ({ ...read, id: read.placementId! }));
    for (const { stands, sits } of sittingRounds(seated, moving)) {
      if (stands.length > 0) await this.work.sql('update placement set place = -place where department_id = $1 and id = any($2::uuid[])', [stands]);
      const rows = sits.map((row) => ({
        id: row.id, game_id: row.gameId, night_id: row.nightId, window_key: row.windowKey, place: row.place, copy_version_id: row.copyVersionId, beside_competitor_reason: row.besideCompetitorReason,
      }));
      await this.work.sql(MOVE, [JSON.stringify(rows)]);
    }
  }

  private async insert(added: readonly PlanRead[], promises: ReadonlyMap<string, PlanPromise>, laid: Laid): Promise<void> {
    const makegoodIds = [...new Set(added.map((read) => read.promiseId))].filter((id) => promises.get(id)!.source === 'makegood');
    const replaced = await this.work.sql<{ id: string; commitmentId: string }>('select id, commitment_id as "commitmentId" from makegood where department_id = $1 and id = any($2::uuid[])', [makegoodIds]);
    const commitmentOf = new Map(replaced.map((row) => [row.id, row.commitmentId]));
    const rows = added.map((read) => ({
      ...laid.row(read),
      commitmentId: commitmentOf.get(read.promiseId) ?? read.promiseId,
      makegoodId: commitmentOf.has(read.promiseId) ? read.promiseId : null,
      isPinned: false,
    }));
    for (let at = 0; at < rows.length; at += 500) await this.work.insert(Placement, rows.slice(at, at + 500));
  }

  private async hold(seasonId: string, reads: readonly PlanRead[], laid: Laid): Promise<void> {
    await this.work.sql('delete from held_place where department_id = $1 and game_id in (select id from game where department_id = $1 and season_id = $2)', [seasonId]);
    const rows = reads.map((read) => ({ offerLineId: read.promiseId, gameId: read.gameId, nightId: laid.nightOf(read), windowKey: read.windowKey, place: read.place }));
    for (let at = 0; at < rows.length; at += 500) await this.work.insert(HeldPlace, rows.slice(at, at + 500));
  }
}

/** Rows of the reads of one plan. */
class Laid {
  private readonly games: ReadonlyMap<string, PlanSeason['games'][number]>;

  constructor(
    season: PlanSeason,
    private readonly promises: ReadonlyMap<string, PlanPromise>,
    private readonly shelf: CopyShelf,
    private readonly beside: BesideCompetitor | null,
  ) {
    this.games = new Map(season.games.map((game) => [game.gameId, game]));
  }

  nightOf(read: PlanRead): string {
    return this.games.get(read.gameId)!.nightId;
  }

  row(read: PlanRead): Omit<Written, 'id'> {
    const { gameId, windowKey, place } = read;
    const { sponsorId, readKindId } = this.promises.get(read.promiseId)!;
    const copyVersionId = this.shelf.versionFor({ sponsorId, readKindId, day: this.games.get(gameId)!.playedOn, gameId });
    const besideCompetitorReason = this.beside?.stands(read) === true ? this.beside.reason : null;
    return { gameId, nightId: this.nightOf(read), windowKey, place, copyVersionId, besideCompetitorReason };
  }

  moved({ from, to }: PlanChange): Written {
    return { id: from!.placementId!, ...this.row(to!) };
  }
}
