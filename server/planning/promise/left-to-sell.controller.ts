import { Controller, Get, Inject, Param, Query, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { Needs } from '../../access/needs.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { untilGone } from './client-gone.ts';
import { LeftInWindowsQuery } from './left-to-sell.dto.ts';
import type { LeftOfWindow, LeftToSellView } from './left-to-sell.dto.ts';
import { LeftToSell } from './left-to-sell.service.ts';

@ApiTags('planning')
@Controller('api/seasons/:id/left-to-sell')
@OutsideUnit()
export class LeftToSellController {
  constructor(@Inject(LeftToSell) private readonly left: LeftToSell) {}

  @Get()
  @Needs('see contracts')
  async ofSeason(@Param('id') id: string, @Res({ passthrough: true }) reply: FastifyReply): Promise<LeftToSellView> {
    return this.left.ofSeason(id, untilGone(reply));
  }

  @Get('windows')
  @Needs('see contracts')
  async inWindows(@Param('id') id: string, @Query() query: LeftInWindowsQuery, @Res({ passthrough: true }) reply: FastifyReply): Promise<LeftOfWindow[]> {
    return this.left.inWindows(id, query, untilGone(reply));
  }
}
