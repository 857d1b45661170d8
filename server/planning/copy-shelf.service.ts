import { Inject, Injectable } from '@nestjs/common';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { CopyShelf } from './copy-shelf.ts';
import type { ShelfRow } from './copy-shelf.ts';

const ROWS = `select copy.id as "copyId", copy.sponsor_id as "sponsorId", copy.read_kind_id as "readKindId", copy.fallback_text as "fallbackText",
    copy.stopped_at is not null as "isStopped", copy.rotates, copy_version.id as "versionId", copy_version.number, copy_version.language, copy_version.text,
    copy_version.second_language as "secondLanguage", copy_version.second_text as "secondText",
    copy_version.starts_on as "startsOn", copy_version.ends_on as "endsOn", copy_version.approved_on is not null as "isApproved"
  from copy left join copy_version on copy_version.department_id = copy.department_id and copy_version.copy_id = copy.id
 where copy.department_id = $1 and copy.sponsor_id = any($2::uuid[])
 order by copy.id desc, copy_version.number desc`;

/** By the day a game was first planned for, whatever became of it: a game that moves or falls out leaves the turns of the others alone. */
const TURNS = `select placed.id, placed.turn from (
    select game.id, (row_number() over (partition by home.team_id order by coalesce(game.moved_from_on, game.played_on), game.id) - 1)::int as turn
      from game join game_participant as home on home.department_id = $1 and home.game_id = game.id and home.is_home
     where game.department_id = $1 and home.team_id in (
       select other.team_id from game_participant as other where other.department_id = $1 and other.game_id = any($2::uuid[]) and other.is_home)) as placed
  where placed.id = any($2::uuid[])`;

@Injectable()
export class CopyShelves {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** @param gameIds the games whose reads will be asked for */
  async of(sponsorIds: readonly string[], gameIds: readonly string[]): Promise<CopyShelf> {
    if (sponsorIds.length === 0) return new CopyShelf([]);
    const rows = await this.work.sql<ShelfRow>(ROWS, [[...new Set(sponsorIds)]]);
    if (!rows.some((row) => row.rotates)) return new CopyShelf(rows);
    const turns = await this.work.sql<{ id: string; turn: number }>(TURNS, [[...new Set(gameIds)]]);
    return new CopyShelf(rows, new Map(turns.map(({ id, turn }) => [id, turn])));
  }
}
