import { Module } from '@nestjs/common';
import { BillingModule } from '../../billing/billing.module.ts';
import { LedgerModule } from '../../ledger/ledger.module.ts';
import { AccountLedger } from './account-ledger.service.ts';
import { Aging } from './aging.service.ts';
import { IncomeByTeam } from './income-split.service.ts';
import { MoneyReportController } from './money-report.controller.ts';
import { ReportScope } from './report-scope.service.ts';
import { RevenueReportController } from './revenue-report.controller.ts';
import { UnearnedRollForward } from './roll-forward.service.ts';
import { TrialBalance } from './trial-balance.service.ts';

@Module({
  imports: [LedgerModule, BillingModule],
  controllers: [MoneyReportController, RevenueReportController],
  providers: [ReportScope, TrialBalance, AccountLedger, Aging, UnearnedRollForward, IncomeByTeam],
})
export class MoneyReportsModule {}
