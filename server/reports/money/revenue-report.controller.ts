import { Controller, Get, Inject, Query } from '@nestjs/common';
import type { StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { answerIn } from '../../platform/files/file-answer.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { IncomeByTeam } from './income-split.service.ts';
import { incomeSplitTable, rollForwardTable } from './report-tables.ts';
import { SpanQuery } from './report.dto.ts';
import type { IncomeSplitView, RollForwardView } from './report.dto.ts';
import { UnearnedRollForward } from './roll-forward.service.ts';

/** What one seller earned over a span, and what is still unearned. */
@ApiTags('reports')
@Controller('api/reports')
@OutsideUnit()
export class RevenueReportController {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(UnearnedRollForward) private readonly rolls: UnearnedRollForward,
    @Inject(IncomeByTeam) private readonly income: IncomeByTeam,
  ) {}

  @Get('roll-forward')
  @Needs('see money')
  async rollForward(@Query() query: SpanQuery): Promise<RollForwardView | StreamableFile> {
    return answerIn(query.format, await this.work.run(() => this.rolls.report(query)), rollForwardTable);
  }

  @Get('income-split')
  @Needs('see money')
  async incomeSplit(@Query() query: SpanQuery): Promise<IncomeSplitView | StreamableFile> {
    return answerIn(query.format, await this.work.run(() => this.income.report(query)), incomeSplitTable);
  }
}
