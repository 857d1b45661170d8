import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Season } from '../../season/season.entity.ts';
import type { OfSeason } from './board.dto.ts';

/** A season that is on goes first, then the next to come, then the last that was. */
const NEAREST = `select id, name from season where department_id = $1
  order by case when $2::date between starts_on and ends_on then 0 when starts_on > $2 then 1 else 2 end,
    case when starts_on > $2 then starts_on - $2::date else $2::date - starts_on end, id limit 1`;

/** Of which season a board is told. */
@Injectable()
export class BoardSeasons {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** @throws Refused `not-found` */
  async chosen(seasonId: string | undefined): Promise<OfSeason> {
    const today = await this.departments.today();
    if (seasonId !== undefined) {
      const { id, name } = await this.work.one(Season, seasonId);
      return { seasonId: id, seasonName: name, today };
    }
    const [nearest] = await this.work.sql<{ id: string; name: string }>(NEAREST, [today]);
    return { seasonId: nearest?.id ?? null, seasonName: nearest?.name ?? null, today };
  }
}
