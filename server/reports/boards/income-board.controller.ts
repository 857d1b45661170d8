import { Controller, Get, Inject, Query } from '@nestjs/common';
import type { StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { answerIn } from '../../platform/files/file-answer.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { IncomeBoard } from './income-board.service.ts';
import { incomeTable } from './income-tables.ts';
import { IncomeBoardQuery } from './income.dto.ts';
import type { IncomeBoardView } from './income.dto.ts';

@ApiTags('boards')
@Controller('api/boards/income')
@OutsideUnit()
export class IncomeBoardController {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(IncomeBoard) private readonly income: IncomeBoard,
  ) {}

  @Get()
  @Needs('see money')
  async board(@Query() query: IncomeBoardQuery): Promise<IncomeBoardView | StreamableFile> {
    return answerIn(query.as, await this.work.run(() => this.income.report(query)), (view) => incomeTable(view, query.table ?? 'months'));
  }
}
