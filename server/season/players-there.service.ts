import { Inject, Injectable } from '@nestjs/common';
import type { PlayerThere } from '../domain/season/import-rosters.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';

/** SQL: where a player stood last, "12 of Varsity boys, Basketball 2026-27"; `player` stands in the from. */
export const LAST_SEEN = `(select entry.number || ' of ' || team.name || ', ' || season.name
    from roster_entry as entry join team on team.department_id = $1 and team.id = entry.team_id
      join season on season.department_id = $1 and season.id = team.season_id
    where entry.department_id = $1 and entry.player_id = player.id order by season.starts_on desc, team.id desc limit 1)`;

/** Everybody who may come back: players stay when a season ends, with how the name is said and what the family chose. */
@Injectable()
export class PlayersThere {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** In the order in which they were first written down. */
  async all(): Promise<PlayerThere[]> {
    return this.work.sql<PlayerThere>(
      `select player.id, player.school_id as "schoolId", player.name, player.say_as as "sayAs", player.announce, ${LAST_SEEN} as "lastSeen"
         from player where player.department_id = $1 and player.erased_at is null order by player.id`,
    );
  }
}
