import { Controller, Get, Inject, Query } from '@nestjs/common';
import type { StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { answerIn } from '../../platform/files/file-answer.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { AtRiskService } from './at-risk.service.ts';
import { atRiskTable, glanceTable, inventoryTable } from './board-tables.ts';
import { BoardQuery } from './board.dto.ts';
import type { AtRiskView, GlanceView, InventoryView } from './board.dto.ts';
import { GlanceService } from './glance.service.ts';
import { InventoryService } from './inventory.service.ts';

/** The director's boards. Each is read in one short unit; a file is made after it. */
@ApiTags('reports')
@Controller('api/boards')
@OutsideUnit()
export class BoardsController {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(GlanceService) private readonly glances: GlanceService,
    @Inject(AtRiskService) private readonly risks: AtRiskService,
    @Inject(InventoryService) private readonly inventories: InventoryService,
  ) {}

  @Get('glance')
  @Needs('see packets')
  async glance(@Query() { seasonId, as }: BoardQuery): Promise<GlanceView | StreamableFile> {
    return answerIn(as, await this.work.run(() => this.glances.show(seasonId)), glanceTable);
  }

  @Get('at-risk')
  @Needs('see contracts')
  async atRisk(@Query() { seasonId, as }: BoardQuery): Promise<AtRiskView | StreamableFile> {
    return answerIn(as, await this.work.run(() => this.risks.show(seasonId)), atRiskTable);
  }

  @Get('inventory')
  @Needs('see contracts')
  async inventory(@Query() { seasonId, as }: BoardQuery): Promise<InventoryView | StreamableFile> {
    return answerIn(as, await this.work.run(() => this.inventories.show(seasonId)), inventoryTable);
  }
}
