import { Inject, Injectable } from '@nestjs/common';
import { dayOfStep } from '../../domain/billing/not-before.ts';
import { creditUnapplied } from '../../domain/billing/payment.ts';
import type { Day } from '../../domain/day.ts';
import { centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import { LedgerService } from '../../ledger/ledger.service.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Credits } from '../credits/credit.service.ts';
import type { Credit } from '../credits/credit.service.ts';
import { DocumentLocks } from '../document-locks.ts';
import { Invoice } from '../invoices/invoice.entity.ts';
import { Takers } from '../receipts/takers.service.ts';
import { AppliedCredit } from './application.entity.ts';
import { applicationEventOf, applicationRowOf } from './application-rows.ts';
import { Reopening } from './reopening.service.ts';

/** The use of a credit on an invoice is taken back: the invoice is open again and the credit is there again. */
@Injectable()
export class TakingBack {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(LedgerService) private readonly ledger: LedgerService,
    @Inject(DocumentLocks) private readonly locks: DocumentLocks,
    @Inject(Credits) private readonly credits: Credits,
    @Inject(Reopening) private readonly reopening: Reopening,
    @Inject(Takers) private readonly takers: Takers,
  ) {}

  /**
   * A contract that was closed is open again with its invoice, or with its memo. Answers which credit it is.
   *
   * @throws Refused `before-its-cause`, `taker-may-not-post`, `application-taken-back-already`, `taking-back-is-final`, `opening-stays`
   */
  async takeBack(applicationId: string, asked: Day | null, today: Day): Promise<Credit> {
    const application = await this.work.one(AppliedCredit, applicationId);
    if (application.takesBackApplicationId !== null) refuse('taking-back-is-final');
    const { paymentId, creditMemoId, invoiceId } = application;
    const credit = await this.credits.one((paymentId ?? creditMemoId)!);
    const invoice = await this.work.one(Invoice, invoiceId);
    const contractIds = [invoice.contractId, credit.contractId];
    await this.reopening.lock(contractIds);
    await this.locks.take([credit.id, invoiceId]);
    if (await this.work.first(AppliedCredit, { takesBackApplicationId: applicationId })) refuse('application-taken-back-already');
    if (credit.isOpening) refuse('opening-stays');
    await this.takers.check([credit.id]);
    const takenBackOn = dayOfStep(asked, today, [{ what: `its use on invoice ${invoice.number}`, on: application.appliedOn as Day }]);
    const opened = await this.reopening.open(contractIds, { cause: credit.kind, causeId: credit.id, occurredOn: takenBackOn });
    const amountCents = centsOf(application.amountCents);
    const eventId = await this.ledger.book({
      ...applicationEventOf('creditUnapplied', credit, invoice, amountCents, [...opened.values()]),
      occurredOn: takenBackOn,
      postings: creditUnapplied({ unappliedId: credit.id, invoiceId, amountCents }),
      takesBackEventId: application.eventId,
    });
    const row = { ...applicationRowOf(credit), invoiceId, amountCents: -amountCents, appliedOn: takenBackOn, takesBackApplicationId: applicationId, eventId };
    await this.work.insert(AppliedCredit, { ...row, recordedByPersonId: this.work.personId });
    return credit;
  }
}
