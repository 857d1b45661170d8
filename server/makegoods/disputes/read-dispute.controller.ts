import { Body, Controller, Get, HttpCode, Inject, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { MovesMoney } from '../../platform/http/unit.interceptor.ts';
import { IfMatch } from '../../platform/http/version.ts';
import { ReadDisputeViews } from './dispute-views.service.ts';
import { AnswerDisputeDto, ReadDisputeListQuery } from './read-dispute.dto.ts';
import type { ReadDisputeView } from './read-dispute.dto.ts';
import { ReadDisputes } from './read-disputes.service.ts';

@ApiTags('makegoods')
@Controller('api/read-disputes')
export class ReadDisputeController {
  constructor(
    @Inject(ReadDisputes) private readonly disputes: ReadDisputes,
    @Inject(ReadDisputeViews) private readonly views: ReadDisputeViews,
  ) {}

  @Get()
  @Needs('see contracts')
  async list(@Query() query: ReadDisputeListQuery): Promise<Listed<ReadDisputeView>> {
    return this.views.list(query);
  }

  @Get(':id')
  @Needs('see contracts')
  async one(@Param('id') id: string): Promise<ReadDisputeView> {
    return this.views.one(id);
  }

  /** It may take a counted read back, and with it what the read has earned. */
  @Post(':id/answer')
  @HttpCode(200)
  @MovesMoney()
  @Needs('change contracts')
  async answer(@Param('id') id: string, @IfMatch() version: number, @Body() form: AnswerDisputeDto): Promise<ReadDisputeView> {
    return this.disputes.answer(id, version, form);
  }
}
