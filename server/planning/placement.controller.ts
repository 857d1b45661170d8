import { Body, Controller, Delete, Get, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { OutsideUnit } from '../platform/http/unit.interceptor.ts';
import { PlacementDto, SpreadDto } from './placement.dto.ts';
import type { PlacementView, SpreadView } from './placement.dto.ts';
import { PlacementService } from './placement.service.ts';
import { SpreadService } from './spread.service.ts';

@ApiTags('planning')
@Controller('api')
export class PlacementController {
  constructor(
    @Inject(PlacementService) private readonly placements: PlacementService,
    @Inject(SpreadService) private readonly spreads: SpreadService,
  ) {}

  @Get('nights/:id/placements')
  @Needs('see packets')
  async ofNight(@Param('id') id: string): Promise<Listed<PlacementView>> {
    return this.placements.ofNight(id);
  }

  @Post('plan/spread')
  @HttpCode(200)
  @OutsideUnit()
  @Needs('plan placements')
  async spread(@Body() form: SpreadDto): Promise<SpreadView> {
    return this.spreads.spread(form.seasonId);
  }

  @Post('placements')
  @Needs('plan placements')
  async add(@Body() form: PlacementDto): Promise<PlacementView> {
    return this.placements.add(form);
  }

  @Delete('placements/:id')
  @HttpCode(204)
  @Needs('plan placements')
  async remove(@Param('id') id: string): Promise<void> {
    return this.placements.remove(id);
  }
}
