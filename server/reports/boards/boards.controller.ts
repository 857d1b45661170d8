import { Controller, Get, Inject, Query } from '@nestjs/common';
import type { StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { answerIn } from '../../platform/files/file-answer.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { glanceTable } from './board-tables.ts';
import { BoardQuery } from './board.dto.ts';
import type { GlanceView } from './board.dto.ts';
import { GlanceService } from './glance.service.ts';

/** The director's boards. Each is read in one short unit; a file is made after it. */
@ApiTags('reports')
@Controller('api/boards')
@OutsideUnit()
export class BoardsController {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(GlanceService) private readonly glances: GlanceService,
  ) {}

  @Get('glance')
  @Needs('see packets')
  async glance(@Query() { seasonId, as }: BoardQuery): Promise<GlanceView | StreamableFile> {
    return answerIn(as, await this.work.run(() => this.glances.show(seasonId)), glanceTable);
  }
}
