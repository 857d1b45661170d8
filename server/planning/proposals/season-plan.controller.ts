import { Controller, Get, Inject, Param } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { SeasonPlanView } from './season-plan.dto.ts';
import { SeasonPlanViews } from './season-plan-view.service.ts';

@ApiTags('planning')
@Controller('api/seasons')
export class SeasonPlanController {
  constructor(@Inject(SeasonPlanViews) private readonly plans: SeasonPlanViews) {}

  @Get(':id/plan')
  @Needs('see contracts')
  async plan(@Param('id') id: string): Promise<SeasonPlanView> {
    return this.plans.of(id);
  }
}
