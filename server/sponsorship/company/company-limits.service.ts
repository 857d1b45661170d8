import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { windowsForbidden } from '../../domain/sponsorship/company/limits.ts';
import type { CompanyLimit, GameOfLimits } from '../../domain/sponsorship/company/limits.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { CompanyRows } from './company-rows.service.ts';

const GAMES = `select game.id as "gameId", game.played_on as "playedOn",
    (select team.school_id from game_participant join team on team.department_id = $1 and team.id = game_participant.team_id
      where game_participant.department_id = $1 and game_participant.game_id = game.id and game_participant.is_home limit 1) as "schoolId"
  from game where game.department_id = $1 and game.season_id = $2 order by game.played_on, game.id`;

/** Which games and windows of a season exclusive rights keep for one sponsor of a category. */
@Injectable()
export class CompanyLimits {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(CompanyRows) private readonly rows: CompanyRows,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async of(seasonId: string): Promise<CompanyLimit[]> {
    const rights = (await this.rows.standing(await this.departments.today())).filter((right) => right.reach !== 'season');
    if (rights.length === 0) return [];
    return windowsForbidden(rights, await this.work.sql<GameOfLimits>(GAMES, [seasonId]));
  }
}
