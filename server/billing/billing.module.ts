import { Module } from '@nestjs/common';
import { LedgerModule } from '../ledger/ledger.module.ts';
import { SponsorshipModule } from '../sponsorship/sponsorship.module.ts';
import { AppliedCredit } from './payments/application.entity.ts';
import { ApplicationService } from './payments/application.service.ts';
import { BilledRead } from './invoices/billed-read.entity.ts';
import { Amending } from './changes/amending.service.ts';
import { BenefitsOverDays } from './changes/benefits-over-days.service.ts';
import { ChangeCourseController } from './changes/change-course.controller.ts';
import { ChangePromiseController } from './changes/change-promise.controller.ts';
import { ChangeSubjects } from './changes/change-subjects.service.ts';
import { ChangeViews } from './changes/change-view.service.ts';
import { ContractChanges } from './changes/contract-changes.service.ts';
import { Ending } from './changes/ending.service.ts';
import { ExplanationController } from './changes/explanation.controller.ts';
import { HandingOn } from './changes/handing-on.service.ts';
import { Holding } from './changes/holding.service.ts';
import { OpenMoney } from './changes/open-money.service.ts';
import { PromiseRows } from './changes/promise-rows.service.ts';
import { ChargeController } from './charges/charge.controller.ts';
import { ChargeIssuing } from './charges/charge.service.ts';
import { ReturnedChecks } from './charges/returned-check.service.ts';
import { ContractBillingController } from './invoices/contract-billing.controller.ts';
import { ContractCreditsController } from './credits/contract-credits.controller.ts';
import { ContractCredits } from './credits/contract-credits.service.ts';
import { CreditMemoController } from './credits/credit-memo.controller.ts';
import { CreditMemoLine } from './credits/credit-memo-line.entity.ts';
import { CreditMemoPrinting } from './credits/credit-memo-printing.service.ts';
import { CreditMemoViews } from './credits/credit-memo-view.service.ts';
import { CreditMemo } from './credits/credit-memo.entity.ts';
import { Credits } from './credits/credit.service.ts';
import { MemoIssue } from './credits/memo-issue.service.ts';
import { MemoUse } from './credits/memo-use.service.ts';
import { DocumentLocks } from './document-locks.ts';
import { DocumentNumbers } from './document-numbers.service.ts';
import { IncomeTeams } from './income/income-teams.service.ts';
import { InvoiceIssuing } from './invoices/invoice-issuing.service.ts';
import { InvoiceLine } from './invoices/invoice-line.entity.ts';
import { GamesToBill } from './invoices/games-to-bill.service.ts';
import { InvoicePlanning } from './invoices/invoice-planning.service.ts';
import { InvoicePrinting } from './invoices/invoice-printing.service.ts';
import { InvoiceStory } from './invoices/invoice-story.service.ts';
import { InvoiceViews } from './invoices/invoice-view.service.ts';
import { InvoiceVoid } from './invoices/invoice-void.entity.ts';
import { InvoiceVoiding } from './invoices/invoice-voiding.service.ts';
import { InvoiceController } from './invoices/invoice.controller.ts';
import { Invoice } from './invoices/invoice.entity.ts';
import { GoodsDelivery } from './goods/goods-delivery.entity.ts';
import { GoodsPromiseRow } from './goods/goods-promise.entity.ts';
import { GoodsShortage } from './goods/goods-shortage.service.ts';
import { GoodsViews } from './goods/goods-view.service.ts';
import { GoodsController } from './goods/goods.controller.ts';
import { GoodsService } from './goods/goods.service.ts';
import { JournalBatchViews } from './journal/journal-batch-views.service.ts';
import { JournalBatches } from './journal/journal-batches.service.ts';
import { JournalComposing } from './journal/journal-composing.service.ts';
import { JournalEntries } from './journal/journal-entries.service.ts';
import { JournalLayoutRow } from './journal/journal-layout.entity.ts';
import { JournalLayouts } from './journal/journal-layouts.service.ts';
import { JournalController } from './journal/journal.controller.ts';
import { OpenItemsController } from './open-items/open-items.controller.ts';
import { OpenItems } from './open-items/open-items.service.ts';
import { OpeningService } from './opening/opening.service.ts';
import { PaymentReturnController } from './payments/payment-return.controller.ts';
import { PaymentReturn } from './payments/payment-return.entity.ts';
import { PaymentReturns } from './payments/payment-return.service.ts';
import { PaymentViews } from './payments/payment-view.service.ts';
import { PaymentController } from './payments/payment.controller.ts';
import { Payment } from './payments/payment.entity.ts';
import { PaymentService } from './payments/payment.service.ts';
import { Reopening } from './payments/reopening.service.ts';
import { TakingBack } from './payments/taking-back.service.ts';
import { Refund } from './payments/refund.entity.ts';
import { Refunds } from './payments/refund.service.ts';
import { Standings } from './standings.service.ts';
import { receiptControllers, receiptEntities, receiptServices } from './receipts/receipt-parts.ts';
import { AccountStatementPrinting } from './statements/account-statement-printing.service.ts';
import { SponsorAccountController } from './statements/sponsor-account.controller.ts';
import { SponsorAccount } from './statements/sponsor-account.service.ts';
import { BillingBatch } from './runs/billing-batch.service.ts';
import { BillingPreview } from './runs/billing-preview.service.ts';
import { BillingRunLine } from './runs/billing-run-line.entity.ts';
import { BillingRunViews } from './runs/billing-run-views.service.ts';
import { BillingRunController } from './runs/billing-run.controller.ts';
import { BillingRun } from './runs/billing-run.entity.ts';
import { BillingRuns } from './runs/billing-runs.service.ts';
import { StatementNames } from './statements/statement-names.service.ts';
import { StatementService } from './statements/statement.service.ts';
import { Discounts } from './write-offs/discount.service.ts';
import { InvoiceDiscount } from './write-offs/invoice-discount.entity.ts';
import { Recoveries } from './write-offs/recovery.service.ts';
import { WriteOffController } from './write-offs/write-off.controller.ts';
import { WriteOff } from './write-offs/write-off.entity.ts';
import { WriteOffs } from './write-offs/write-off.service.ts';

export const billingEntities = [
  Invoice, InvoiceLine, InvoiceVoid, BilledRead, Payment, AppliedCredit, CreditMemo, CreditMemoLine, PaymentReturn, Refund, WriteOff, InvoiceDiscount,
  JournalLayoutRow, GoodsPromiseRow, GoodsDelivery, BillingRun, BillingRunLine,
  ...receiptEntities,
];

const credits = [ContractCredits, MemoIssue, MemoUse, Credits, CreditMemoViews, CreditMemoPrinting];

const journal = [JournalLayouts, JournalEntries, JournalComposing, JournalBatches, JournalBatchViews];

const goods = [GoodsViews, GoodsService, GoodsShortage];

/** What becomes of documents after they were issued. */
const aftermath = [Reopening, TakingBack, PaymentReturns, Refunds, ChargeIssuing, ReturnedChecks, WriteOffs, Recoveries, Discounts, OpenItems];

const runs = [BillingPreview, BillingBatch, BillingRuns, BillingRunViews];

const services = [
  InvoiceViews, InvoiceStory, InvoiceIssuing, InvoiceVoiding, InvoicePrinting, PaymentViews, PaymentService, ApplicationService, OpeningService,
  StatementNames, StatementService, SponsorAccount, AccountStatementPrinting, DocumentLocks, DocumentNumbers, Standings, IncomeTeams, InvoicePlanning, GamesToBill,
  ...credits, ...runs, ...receiptServices, ...journal, ...goods, ...aftermath,
];

const changes = [ContractChanges, ChangeSubjects, ChangeViews, OpenMoney, PromiseRows, Amending, Ending, HandingOn, Holding, BenefitsOverDays];

@Module({
  imports: [LedgerModule, SponsorshipModule],
  controllers: [
    InvoiceController, BillingRunController, PaymentController, PaymentReturnController, ChargeController, WriteOffController, OpenItemsController, ContractBillingController, SponsorAccountController, CreditMemoController,
    ContractCreditsController,
    ChangePromiseController, ChangeCourseController, ExplanationController, JournalController, GoodsController,
    ...receiptControllers,
  ],
  providers: [...services, ...changes],
  exports: [...services, ...changes],
})
export class BillingModule {}
