import { Body, Controller, Get, HttpCode, Inject, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs, OrLink } from '../../access/needs.ts';
import { LogBatchDto, LogQuery } from './log.dto.ts';
import type { BatchView, LogAfterView, NightLogView } from './log.dto.ts';
import { LogReading } from './log-reading.service.ts';
import { NightTableService } from './night.service.ts';

@ApiTags('night')
@Controller('api/nights/:id')
export class NightTableController {
  constructor(
    @Inject(NightTableService) private readonly nights: NightTableService,
    @Inject(LogReading) private readonly reading: LogReading,
  ) {}

  @Get('log')
  @Needs('log a night')
  @OrLink('work the table')
  async log(@Param('id') id: string, @Query() { after, limit }: LogQuery): Promise<NightLogView | LogAfterView> {
    return after === undefined ? this.nights.show(id) : this.reading.after(id, after, limit);
  }

  @Post('log')
  @HttpCode(200)
  @Needs('log a night')
  @OrLink('work the table')
  async take(@Param('id') id: string, @Body() form: LogBatchDto): Promise<BatchView> {
    return this.nights.take(id, form);
  }
}
