import { Controller, Get, Inject, Query } from '@nestjs/common';
import type { StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { answerIn } from '../../platform/files/file-answer.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { AccountLedger } from './account-ledger.service.ts';
import { Aging } from './aging.service.ts';
import { accountLedgerTable, agingTable, trialBalanceTable } from './report-tables.ts';
import { AccountLedgerQuery, AgingQuery, AsOfQuery } from './report.dto.ts';
import type { AccountLedgerView, AgingView, TrialBalanceView } from './report.dto.ts';
import { TrialBalance } from './trial-balance.service.ts';

/** What stands in one seller's books on a day. The books are read in a short unit; a file is made after it. */
@ApiTags('reports')
@Controller('api/reports')
@OutsideUnit()
export class MoneyReportController {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(TrialBalance) private readonly trialBalances: TrialBalance,
    @Inject(AccountLedger) private readonly ledgers: AccountLedger,
    @Inject(Aging) private readonly agings: Aging,
  ) {}

  @Get('trial-balance')
  @Needs('see money')
  async trialBalance(@Query() query: AsOfQuery): Promise<TrialBalanceView | StreamableFile> {
    return answerIn(query.format, await this.work.run(() => this.trialBalances.report(query)), trialBalanceTable);
  }

  @Get('account-ledger')
  @Needs('see the journal')
  async accountLedger(@Query() query: AccountLedgerQuery): Promise<AccountLedgerView | StreamableFile> {
    return answerIn(query.format, await this.work.run(() => this.ledgers.report(query)), accountLedgerTable);
  }

  @Get('aging')
  @Needs('see money')
  async aging(@Query() query: AgingQuery): Promise<AgingView | StreamableFile> {
    return answerIn(query.format, await this.work.run(() => this.agings.report(query)), agingTable);
  }
}
