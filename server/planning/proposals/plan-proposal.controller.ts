import { Body, Controller, Get, HttpCode, Inject, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { IfMatch } from '../../platform/http/version.ts';
import { PlanAcceptance } from './plan-acceptance.service.ts';
import { AcceptPlanDto, AskPlanDto, PlanProposalListQuery } from './plan-proposal.dto.ts';
import type { PlanProposalLine, PlanProposalView } from './plan-proposal.dto.ts';
import { PlanProposals } from './plan-proposals.service.ts';
import { ProposalViews } from './proposal-views.service.ts';

@ApiTags('planning')
@Controller('api/plan-proposals')
export class PlanProposalController {
  constructor(
    @Inject(PlanProposals) private readonly proposals: PlanProposals,
    @Inject(ProposalViews) private readonly views: ProposalViews,
    @Inject(PlanAcceptance) private readonly acceptance: PlanAcceptance,
  ) {}

  @Get()
  @Needs('see contracts')
  async list(@Query() query: PlanProposalListQuery): Promise<Listed<PlanProposalLine>> {
    return this.views.list(query);
  }

  @Get(':id')
  @Needs('see contracts')
  async one(@Param('id') id: string): Promise<PlanProposalView> {
    return this.views.one(id);
  }

  @Post()
  @Needs('plan placements')
  async ask(@Body() form: AskPlanDto): Promise<PlanProposalView> {
    return this.proposals.ask(form);
  }

  @Post(':id/cancel')
  @HttpCode(200)
  @Needs('plan placements')
  async cancel(@Param('id') id: string): Promise<PlanProposalView> {
    return this.proposals.cancel(id);
  }

  @Post(':id/discard')
  @HttpCode(200)
  @Needs('plan placements')
  async discard(@Param('id') id: string): Promise<PlanProposalView> {
    return this.proposals.discard(id);
  }

  /** Somebody else accepted one meanwhile: 412, and nothing is changed. */
  @Post(':id/accept')
  @HttpCode(200)
  @Needs('plan placements')
  async accept(@Param('id') id: string, @IfMatch() version: number, @Body() form: AcceptPlanDto): Promise<PlanProposalView> {
    await this.acceptance.accept(id, version, form.reason ?? null);
    return this.views.one(id);
  }
}
