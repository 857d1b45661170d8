import { Body, Controller, Get, HttpCode, Inject, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { MovesMoney } from '../../platform/http/unit.interceptor.ts';
import { BillingPreview } from './billing-preview.service.ts';
import { BillingRunViews } from './billing-run-views.service.ts';
import { BillingRunListQuery, PreviewQuery, StartBillingRunDto } from './billing-run.dto.ts';
import type { BillingRunView, PreviewView, WholeBillingRunView } from './billing-run.dto.ts';
import { BillingRuns } from './billing-runs.service.ts';

@ApiTags('billing')
@Controller('api/billing-runs')
export class BillingRunController {
  constructor(
    @Inject(BillingRunViews) private readonly views: BillingRunViews,
    @Inject(BillingRuns) private readonly runs: BillingRuns,
    @Inject(BillingPreview) private readonly previews: BillingPreview,
  ) {}

  @Get('preview')
  @Needs('see money')
  async preview(@Query() query: PreviewQuery): Promise<PreviewView> {
    return this.previews.preview(query);
  }

  @Get()
  @Needs('see money')
  async list(@Query() query: BillingRunListQuery): Promise<Listed<BillingRunView>> {
    return this.views.list(query);
  }

  @Get(':id')
  @Needs('see money')
  async one(@Param('id') id: string): Promise<WholeBillingRunView> {
    return this.views.one(id);
  }

  /** Answers at once; how far the run has come is asked of the run. */
  @Post()
  @MovesMoney()
  @Needs('bill')
  async start(@Body() form: StartBillingRunDto): Promise<WholeBillingRunView> {
    const id = await this.runs.start(form);
    await this.runs.driveAfterwards(id);
    return this.views.one(id);
  }

  @Post(':id/continue')
  @HttpCode(200)
  @MovesMoney()
  @Needs('bill')
  async goOn(@Param('id') id: string): Promise<WholeBillingRunView> {
    await this.runs.driveAfterwards(id);
    return this.views.one(id);
  }
}
