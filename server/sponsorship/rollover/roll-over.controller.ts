import { Body, Controller, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { MovesMoney, OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { RollOverDto } from './roll-over.dto.ts';
import type { RollOverView } from './roll-over.dto.ts';
import { RollOver } from './roll-over.service.ts';

@ApiTags('season')
@Controller('api/seasons/:id')
export class RollOverController {
  constructor(@Inject(RollOver) private readonly seasons: RollOver) {}

  @Post('roll-over-previews')
  @HttpCode(200)
  @OutsideUnit()
  @Needs('sign contracts')
  async preview(@Param('id') id: string, @Body() form: RollOverDto): Promise<RollOverView> {
    return this.seasons.preview(id, form);
  }

  /** Signs the agreed years that are carried on. */
  @Post('roll-over')
  @MovesMoney()
  @Needs('sign contracts')
  async rollOver(@Param('id') id: string, @Body() form: RollOverDto): Promise<RollOverView> {
    return this.seasons.rollOver(id, form);
  }
}
