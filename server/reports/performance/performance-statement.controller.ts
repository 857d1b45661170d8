import { Controller, Get, Inject, Param, Query, StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { StatementListQuery } from './performance.dto.ts';
import type { StatementCheckView, StatementView, WholeStatementView } from './performance.dto.ts';
import { StatementCheck } from './statement-check.service.ts';
import { StatementPrinting } from './statement-printing.service.ts';
import { StatementViews } from './statement-views.service.ts';

@ApiTags('reports')
@Controller('api/performance-statements')
export class PerformanceStatementController {
  constructor(
    @Inject(StatementViews) private readonly views: StatementViews,
    @Inject(StatementPrinting) private readonly printing: StatementPrinting,
    @Inject(StatementCheck) private readonly checks: StatementCheck,
  ) {}

  @Get()
  @Needs('see money')
  async list(@Query() query: StatementListQuery): Promise<Listed<StatementView>> {
    return this.views.list(query);
  }

  @Get(':id')
  @Needs('see money')
  async one(@Param('id') id: string): Promise<WholeStatementView> {
    return this.views.one(id);
  }

  /** Whether the head on the paper stands in the books. */
  @Get(':id/check')
  @Needs('see money')
  async check(@Param('id') id: string): Promise<StatementCheckView> {
    return this.checks.of(id);
  }

  @Get(':id/statement.pdf')
  @OutsideUnit()
  @Needs('see money')
  async pdf(@Param('id') id: string): Promise<StreamableFile> {
    const { bytes, name } = await this.printing.issued(id);
    return new StreamableFile(bytes, { type: 'application/pdf', disposition: `inline; filename="${name}"`, length: bytes.length });
  }
}
