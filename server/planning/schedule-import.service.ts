import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import { GameNights } from '../season/game-nights.service.ts';
import { ScheduleImport } from '../season/import-schedule.service.ts';
import type { ImportDto, ImportView } from '../season/import.dto.ts';
import { GamePromises } from './game-promises.service.ts';
import { PlacementsFollow } from './placements-follow.service.ts';

/** A schedule from a file, with what it does to reads promised and planned: all in one unit. */
@Injectable()
export class ScheduleImportService {
  constructor(
    @Inject(ScheduleImport) private readonly schedules: ScheduleImport,
    @Inject(GamePromises) private readonly promises: GamePromises,
    @Inject(PlacementsFollow) private readonly placements: PlacementsFollow,
    @Inject(GameNights) private readonly nights: GameNights,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async run(form: ImportDto): Promise<ImportView> {
    const { season, plan, view } = await this.schedules.prepare(form);
    if (!view.done) return view;
    const before = await this.promises.before([season.id]);
    for (const step of plan.steps) if (step.action === 'drop') await this.placements.drop(step.existingId!);
    const ids = await this.schedules.write(season, plan);
    await this.placements.follow(ids);
    const written = new Set([...ids, ...plan.steps.flatMap((step) => (step.action === 'drop' ? [step.existingId!] : []))]);
    await this.nights.tidy(before.games.filter((game) => written.has(game.id)).flatMap((game) => game.nightIds));
    await this.promises.settle(before, null, await this.departments.today());
    return view;
  }
}
