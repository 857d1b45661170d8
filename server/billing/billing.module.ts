import { Module } from '@nestjs/common';
import { LedgerModule } from '../ledger/ledger.module.ts';
import { SponsorshipModule } from '../sponsorship/sponsorship.module.ts';
import { AppliedCredit } from './application.entity.ts';
import { ApplicationService } from './application.service.ts';
import { BilledRead } from './billed-read.entity.ts';
import { ContractBillingController } from './contract-billing.controller.ts';
import { DocumentLocks } from './document-locks.ts';
import { InvoiceIssuing } from './invoice-issuing.service.ts';
import { InvoiceLine } from './invoice-line.entity.ts';
import { InvoicePrinting } from './invoice-printing.service.ts';
import { InvoiceViews } from './invoice-view.service.ts';
import { InvoiceVoid } from './invoice-void.entity.ts';
import { InvoiceVoiding } from './invoice-voiding.service.ts';
import { InvoiceController } from './invoice.controller.ts';
import { Invoice } from './invoice.entity.ts';
import { OpeningService } from './opening.service.ts';
import { PaymentViews } from './payment-view.service.ts';
import { PaymentController } from './payment.controller.ts';
import { Payment } from './payment.entity.ts';
import { PaymentService } from './payment.service.ts';
import { StatementNames } from './statement-names.service.ts';
import { StatementService } from './statement.service.ts';

export const billingEntities = [Invoice, InvoiceLine, InvoiceVoid, BilledRead, Payment, AppliedCredit];

const services = [
  InvoiceViews, InvoiceIssuing, InvoiceVoiding, InvoicePrinting, PaymentViews, PaymentService, ApplicationService, OpeningService,
  StatementNames, StatementService, DocumentLocks,
];

@Module({
  imports: [LedgerModule, SponsorshipModule],
  controllers: [InvoiceController, PaymentController, ContractBillingController],
  providers: services,
  exports: services,
})
export class BillingModule {}
