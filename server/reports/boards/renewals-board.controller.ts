import { Controller, Get, Inject, Query } from '@nestjs/common';
import type { StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { answerIn } from '../../platform/files/file-answer.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { RenewalsBoard } from './renewals-board.service.ts';
import { renewalsTable } from './renewals-tables.ts';
import { RenewalsQuery } from './renewals.dto.ts';
import type { RenewalsView } from './renewals.dto.ts';

@ApiTags('boards')
@Controller('api/boards/renewals')
@OutsideUnit()
export class RenewalsBoardController {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(RenewalsBoard) private readonly renewals: RenewalsBoard,
  ) {}

  @Get()
  @Needs('see contracts')
  async board(@Query() query: RenewalsQuery): Promise<RenewalsView | StreamableFile> {
    return answerIn(query.as, await this.work.run(() => this.renewals.report(query)), renewalsTable);
  }
}
