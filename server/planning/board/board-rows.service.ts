import { Inject, Injectable } from '@nestjs/common';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Season } from '../../season/season.entity.ts';
import { PLACEMENT_FROM } from '../placement.sql.ts';
import type { BoardGameView, BoardReadView } from './board.dto.ts';

const READS = `select placement.id, coalesce(placement.makegood_id, placement.commitment_id) as "promiseId", contract.sponsor_id as "sponsorId", sponsor.name as "sponsorName",
    read_kind.name as "readKindName", placement.game_id as "gameId", placement.window_key as "windowKey", placement.place, placement.is_pinned as "isPinned",
    exists (select from log_entry where log_entry.department_id = $1 and log_entry.placement_id = placement.id) as "isLogged",
    placement.beside_competitor_reason as "besideCompetitorReason", placement.version
  ${PLACEMENT_FROM}`;

/** What the board shows beside the facts of the plan. */
@Injectable()
export class BoardRows {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** @throws Refused `not-found` */
  async refuseUnlessThere(seasonId: string): Promise<void> {
    await this.work.one(Season, seasonId);
  }

  async readsAt(gameIds: readonly string[]): Promise<BoardReadView[]> {
    return this.work.sql<BoardReadView>(`${READS} and placement.game_id = any($2::uuid[]) order by placement.id`, [gameIds]);
  }

  async reads(ids: readonly string[]): Promise<Map<string, BoardReadView>> {
    if (ids.length === 0) return new Map();
    const rows = await this.work.sql<BoardReadView>(`${READS} and placement.id = any($2::uuid[])`, [ids]);
    return new Map(rows.map((row) => [row.id, row]));
  }

  /** Keeps these reads as they are until the unit ends. */
  async lock(ids: readonly string[]): Promise<void> {
    await this.work.sql('select 1 from placement where department_id = $1 and id = any($2::uuid[]) order by id for update', [ids]);
  }

  async nights(gameIds: readonly string[], nightIds: readonly string[]): Promise<BoardGameView[]> {
    return this.work.sql<BoardGameView>(
      `select game_night.game_id as "gameId", night.title as "nightTitle",
         case when night_lock.id is null then null else jsonb_build_object('why', night_lock.why, 'note', night_lock.note) end as lock
       from game_night join night on night.department_id = $1 and night.id = game_night.night_id
         left join night_lock on night_lock.department_id = $1 and night_lock.night_id = night.id
       where game_night.department_id = $1 and game_night.game_id = any($2::uuid[]) and game_night.night_id = any($3::uuid[])`,
      [gameIds, nightIds],
    );
  }

  async teams(seasonId: string): Promise<{ id: string; name: string }[]> {
    return this.work.sql<{ id: string; name: string }>(
      `select team.id, case when count(*) over (partition by team.name) > 1 then school.nickname || ', ' || team.name else team.name end as name
       from team join school on school.department_id = $1 and school.id = team.school_id
       where team.department_id = $1 and team.season_id = $2 and school.is_ours order by name, team.id`,
      [seasonId],
    );
  }

  /** The season a read is planned in, by its game. */
  async seasonOf(placementId: string): Promise<string | null> {
    const [row] = !isId(placementId) ? [] : await this.work.sql<{ seasonId: string }>(
      `select game.season_id as "seasonId" from placement join game on game.department_id = $1 and game.id = placement.game_id
        where placement.department_id = $1 and placement.id = $2`,
      [placementId],
    );
    return row?.seasonId ?? null;
  }
}
