import { Module } from '@nestjs/common';
import { BillingModule } from '../../billing/billing.module.ts';
import { FulfillmentModule } from '../fulfillment/fulfillment.module.ts';
import { ContractStatementsController } from './contract-statements.controller.ts';
import { OwnStatementsController } from './own-statements.controller.ts';
import { PerformanceStatementController } from './performance-statement.controller.ts';
import { StatementCheck } from './statement-check.service.ts';
import { StatementContents } from './statement-contents.service.ts';
import { StatementIssuing } from './statement-issuing.service.ts';
import { StatementPrinting } from './statement-printing.service.ts';
import { StatementRunViews } from './statement-run-views.service.ts';
import { StatementRunController } from './statement-run.controller.ts';
import { StatementRun } from './statement-run.entity.ts';
import { StatementRuns } from './statement-runs.service.ts';
import { StatementViews } from './statement-views.service.ts';
import { StatementsOfSeason } from './statements-of-season.service.ts';

export const performanceEntities = [StatementRun];

/** Statements of performance: issued, printed, checked against the books, and all sponsors' at once. */
@Module({
  imports: [BillingModule, FulfillmentModule],
  controllers: [ContractStatementsController, PerformanceStatementController, StatementRunController, OwnStatementsController],
  providers: [StatementContents, StatementIssuing, StatementViews, StatementPrinting, StatementCheck, StatementRuns, StatementRunViews, StatementsOfSeason],
  exports: [StatementViews, StatementPrinting],
})
export class PerformanceModule {}
