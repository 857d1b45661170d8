import { Body, Controller, Get, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs, OrLink } from '../access/needs.ts';
import { TheVisitor } from '../access/visitor.ts';
import type { Visitor } from '../access/visitor.ts';
import { MovesMoney } from '../platform/http/unit.interceptor.ts';
import { AmendDto, LogBatchDto, SignOffDto } from './log.dto.ts';
import type { AmendView, BatchView, NightLogView, SignOffView } from './log.dto.ts';
import { NightTableService } from './night.service.ts';

@ApiTags('night')
@Controller('api/nights/:id')
export class NightTableController {
  constructor(@Inject(NightTableService) private readonly nights: NightTableService) {}

  @Get('log')
  @Needs('log a night')
  @OrLink('work the table')
  async log(@Param('id') id: string): Promise<NightLogView> {
    return this.nights.show(id);
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
