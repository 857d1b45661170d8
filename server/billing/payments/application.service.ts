import { Inject, Injectable } from '@nestjs/common';
import { checkWithinBalance } from '../../domain/billing/invoice.ts';
import { checkSameSeller, creditApplied, creditUnapplied } from '../../domain/billing/payment.ts';
import type { Day } from '../../domain/day.ts';
import { centsOf } from '../../domain/money.ts';
import type { Cents } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import { LedgerService } from '../../ledger/ledger.service.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { AppliedCredit } from './application.entity.ts';
import { DocumentLocks } from '../document-locks.ts';
import { InvoiceVoid } from '../invoices/invoice-void.entity.ts';
import { Invoice } from '../invoices/invoice.entity.ts';
import type { PaymentHappening } from './payment-happening.ts';
import { Payment } from './payment.entity.ts';

interface Wanted {
  invoiceId: string;
  amountCents: number;
}

/** Uses what is left of a payment on invoices, and takes such a use back. */
@Injectable()
export class ApplicationService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(LedgerService) private readonly ledger: LedgerService,
    @Inject(DocumentLocks) private readonly locks: DocumentLocks,
  ) {}

  /** @throws Refused `unknown-invoice`, `payment-crosses-sellers`, `invoice-is-void`, `more-than-balance`, `more-than-unapplied` */
  async apply(paymentId: string, wanted: readonly Wanted[], appliedOn: Day): Promise<void> {
    const payment = await this.work.one(Payment, paymentId);
    await this.locks.take([paymentId, ...wanted.map((one) => one.invoiceId)]);
    for (const one of wanted) await this.applyOne(payment, one, appliedOn);
  }

  private async applyOne(payment: Payment, { invoiceId, amountCents }: Wanted, appliedOn: Day): Promise<void> {
    const invoice = (await this.work.first(Invoice, { id: invoiceId })) ?? refuse('unknown-invoice');
    checkSameSeller(payment.sellerId, invoice.sellerId);
    const appliedCents = await this.appliedTo('invoice_id', invoiceId);
    const isVoid = (await this.work.count(InvoiceVoid, { invoiceId })) > 0;
    checkWithinBalance({ grossCents: invoice.grossCents, appliedCents, isVoid }, amountCents);
    const leftCents = payment.amountCents - (await this.appliedTo('payment_id', payment.id));
    const application = { unappliedId: payment.id, invoiceId, amountCents: centsOf(amountCents) };
    const postings = creditApplied(application, leftCents, invoice.grossCents - appliedCents);
    const eventId = newId();
    await this.ledger.book({ id: eventId, ...eventOf('creditApplied', payment, invoice, application.amountCents), occurredOn: appliedOn, postings });
    await this.work.insert(AppliedCredit, { paymentId: payment.id, invoiceId, amountCents, appliedOn, eventId, recordedByPersonId: this.work.personId });
  }

  /**
   * The invoice is open again and the credit is there again. Answers the payment's id.
   *
   * @throws Refused `application-taken-back-already`, `taking-back-is-final`, `opening-stays`
   */
  async takeBack(applicationId: string, takenBackOn: Day): Promise<string> {
    const application = await this.work.one(AppliedCredit, applicationId);
    if (application.takesBackApplicationId !== null) refuse('taking-back-is-final');
    const { paymentId, invoiceId } = application;
    if (paymentId === null) return refuse('not-found');
    await this.locks.take([paymentId, invoiceId]);
    if (await this.work.first(AppliedCredit, { takesBackApplicationId: applicationId })) refuse('application-taken-back-already');
    const payment = await this.work.one(Payment, paymentId);
    if (payment.method === 'opening') refuse('opening-stays');
    const invoice = await this.work.one(Invoice, invoiceId);
    const amountCents = centsOf(application.amountCents);
    const eventId = newId();
    await this.ledger.book({
      id: eventId,
      ...eventOf('creditUnapplied', payment, invoice, amountCents),
      occurredOn: takenBackOn,
      postings: creditUnapplied({ unappliedId: paymentId, invoiceId, amountCents }),
      takesBackEventId: application.eventId,
    });
    const row = { paymentId, invoiceId, amountCents: -amountCents, appliedOn: takenBackOn, takesBackApplicationId: applicationId, eventId };
    await this.work.insert(AppliedCredit, { ...row, recordedByPersonId: this.work.personId });
    return paymentId;
  }

  private async appliedTo(column: 'invoice_id' | 'payment_id', id: string): Promise<number> {
    const [row] = await this.work.sql<{ cents: number }>(
      `select coalesce(sum(amount_cents), 0) as cents from application where department_id = $1 and ${column} = $2`,
      [id],
    );
    return row!.cents;
  }
}

function eventOf(kind: 'creditApplied' | 'creditUnapplied', payment: Payment, invoice: Invoice, amountCents: Cents) {
  const happening: PaymentHappening = { kind, paymentId: payment.id, number: payment.number, invoiceId: invoice.id, invoiceNumber: invoice.number, amountCents };
  return { cause: 'payment', causeId: payment.id, happening, contractId: invoice.contractId, sellerId: payment.sellerId };
}
