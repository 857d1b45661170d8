import { Body, Controller, Get, HttpCode, Inject, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { ListQuery } from '../../platform/http/lists.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { StartStatementRunDto } from './performance.dto.ts';
import type { StatementRunView, WholeStatementRunView } from './performance.dto.ts';
import { StatementRunViews } from './statement-run-views.service.ts';
import { StatementRuns } from './statement-runs.service.ts';

@ApiTags('reports')
@Controller('api/statement-runs')
export class StatementRunController {
  constructor(
    @Inject(StatementRuns) private readonly runs: StatementRuns,
    @Inject(StatementRunViews) private readonly views: StatementRunViews,
  ) {}

  @Get()
  @Needs('see money')
  async list(@Query() query: ListQuery): Promise<Listed<StatementRunView>> {
    return this.views.list(query);
  }

  @Get(':id')
  @Needs('see money')
  async one(@Param('id') id: string): Promise<WholeStatementRunView> {
    return this.views.one(id);
  }

  /** Answers at once; how far the run has come is asked of the run. */
  @Post()
  @Needs('issue statements')
  async start(@Body() form: StartStatementRunDto): Promise<WholeStatementRunView> {
    return this.views.one(await this.runs.start(form));
  }

  @Post(':id/cancel')
  @HttpCode(200)
  @Needs('issue statements')
  async cancel(@Param('id') id: string): Promise<WholeStatementRunView> {
    await this.runs.cancel(id);
    return this.views.one(id);
  }
}
