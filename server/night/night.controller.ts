import { Body, Controller, Get, HttpCode, Inject, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs, OrLink } from '../access/needs.ts';
import { TheVisitor } from '../access/visitor.ts';
import type { Visitor } from '../access/visitor.ts';
import { MovesMoney } from '../platform/http/unit.interceptor.ts';
import { AmendDto, LogBatchDto, LogQuery, SignOffDto } from './log.dto.ts';
import type { AmendView, BatchView, LogAfterView, NightLogView, SignOffView } from './log.dto.ts';
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

  @Post('sign-off')
  @HttpCode(200)
  @MovesMoney()
  @Needs('sign off a night')
  async signOff(@Param('id') id: string, @Body() form: SignOffDto, @TheVisitor() visitor: Visitor): Promise<SignOffView> {
    return this.nights.signOff(id, form, visitor);
  }

  @Post('amend')
  @HttpCode(200)
  @MovesMoney()
  @Needs('amend a night')
  async amend(@Param('id') id: string, @Body() form: AmendDto): Promise<AmendView> {
    return this.nights.amend(id, form);
  }
}
