import { Inject, Injectable } from '@nestjs/common';
import { checkWithinBalance } from '../../domain/billing/invoice.ts';
import { dayOfStep } from '../../domain/billing/not-before.ts';
import { checkPaysFor, checkSameSeller, creditApplied } from '../../domain/billing/payment.ts';
import type { Day } from '../../domain/day.ts';
import { centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import { LedgerService } from '../../ledger/ledger.service.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Payer } from '../../sponsorship/payer.entity.ts';
import { AppliedCredit } from './application.entity.ts';
import { applicationEventOf, applicationRowOf } from './application-rows.ts';
import { DocumentLocks } from '../document-locks.ts';
import { Invoice } from '../invoices/invoice.entity.ts';
import { Credits } from '../credits/credit.service.ts';
import type { Credit } from '../credits/credit.service.ts';
import { Takers } from '../receipts/takers.service.ts';
import { Standings } from '../standings.service.ts';

interface Wanted {
  invoiceId: string;
  amountCents: number;
}

/** Uses what is left of a credit (a payment's or a credit memo's) on invoices. */
@Injectable()
export class ApplicationService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(LedgerService) private readonly ledger: LedgerService,
    @Inject(DocumentLocks) private readonly locks: DocumentLocks,
    @Inject(Credits) private readonly credits: Credits,
    @Inject(Standings) private readonly standings: Standings,
    @Inject(Takers) private readonly takers: Takers,
  ) {}

  /**
   * On the day asked for, else on the first from `from` on that the credit and the invoice allow.
   *
   * @throws Refused `before-its-cause`, `taker-may-not-post`, `unknown-invoice`, `payment-crosses-sellers`, `payment-of-another-payer`, `invoice-is-void`, `more-than-balance`, `more-than-unapplied`
   */
  async apply(creditId: string, wanted: readonly Wanted[], asked: Day | null, from: Day): Promise<void> {
    const credit = await this.credits.one(creditId);
    await this.locks.take([creditId, ...wanted.map((one) => one.invoiceId)]);
    await this.takers.check([creditId]);
    for (const one of wanted) {
      const appliedOn = dayOfStep(asked, from, await this.standings.causes([creditId, one.invoiceId]));
      await this.applyOne(credit, one, appliedOn);
    }
  }

  private async applyOne(credit: Credit, { invoiceId, amountCents }: Wanted, appliedOn: Day): Promise<void> {
    const invoice = (await this.work.first(Invoice, { id: invoiceId })) ?? refuse('unknown-invoice');
    checkSameSeller(credit.sellerId, invoice.sellerId);
    if (!(await this.creditsIt(credit, invoice))) checkPaysFor({ payerId: credit.payerId, sponsorId: await this.sponsorOf(credit.payerId) }, invoice);
    const standing = await this.standings.invoice(invoiceId);
    checkWithinBalance(standing, amountCents);
    const { leftCents } = await this.standings.credit(credit.id);
    const application = { unappliedId: credit.id, invoiceId, amountCents: centsOf(amountCents) };
    const postings = creditApplied(application, leftCents, standing.balanceCents);
    const eventId = newId();
    await this.ledger.book({ id: eventId, ...applicationEventOf('creditApplied', credit, invoice, application.amountCents), occurredOn: appliedOn, postings });
    await this.work.insert(AppliedCredit, { ...applicationRowOf(credit), invoiceId, amountCents, appliedOn, eventId, recordedByPersonId: this.work.scope.personId });
  }

  private async sponsorOf(payerId: string): Promise<string | null> {
    return (await this.work.first(Payer, { id: payerId }))?.sponsorId ?? null;
  }

  /** A memo credits what its contract billed, whoever it was billed to before the contract was handed on. */
  private async creditsIt(credit: Credit, { contractId }: Invoice): Promise<boolean> {
    if (credit.kind === 'payment' || contractId === null) return false;
    const rows = await this.work.sql('select 1 from credit_memo where department_id = $1 and id = $2 and contract_id = $3', [credit.id, contractId]);
    return rows.length > 0;
  }
}
