import { Inject, Injectable } from '@nestjs/common';
import { checkWithinBalance, earlyPayment } from '../../domain/billing/invoice.ts';
import { checkNotBefore } from '../../domain/billing/not-before.ts';
import type { Day } from '../../domain/day.ts';
import { centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import { DocumentLocks } from '../document-locks.ts';
import { Invoice } from '../invoices/invoice.entity.ts';
import { Standings } from '../standings.service.ts';
import { InvoiceDiscount } from './invoice-discount.entity.ts';
import type { DiscountDto } from './write-off.dto.ts';

/** A discount for paying early: less to pay on the invoice, an allowance in the books; the tax stays unless it is named. */
@Injectable()
export class Discounts {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(TermLedger) private readonly terms: TermLedger,
    @Inject(DocumentLocks) private readonly locks: DocumentLocks,
    @Inject(Standings) private readonly standings: Standings,
  ) {}

  /** @throws Refused `not-found`, `before-its-cause`, `discount-by-one-way`, `discount-of-a-charge`, `opening-stays`, `invoice-is-void`, `more-than-balance` */
  async take(invoiceId: string, form: DiscountDto): Promise<void> {
    const invoice = await this.work.one(Invoice, invoiceId);
    if (invoice.kind === 'opening') refuse('opening-stays');
    if (invoice.termId === null) return refuse('discount-of-a-charge');
    await this.locks.takeWithContract(invoice);
    checkNotBefore(form.takenOn as Day, await this.standings.causes([invoiceId]));
    const amountCents = amountOf(invoice, form);
    const taxCents = centsOf(form.taxCents ?? 0);
    checkWithinBalance(await this.standings.invoice(invoiceId), amountCents + taxCents);
    const { eventIds } = await this.terms.happen(invoice.termId, [
      {
        happening: { kind: 'discountTaken', invoiceId, amountCents, ...(taxCents > 0 ? { taxCents } : {}) },
        because: { cause: 'invoice', causeId: invoiceId, occurredOn: form.takenOn as Day },
      },
    ]);
    const { takenOn, reason } = form;
    await this.work.insert(InvoiceDiscount, { invoiceId, amountCents, taxCents, takenOn, reason, eventId: eventIds[0]!, recordedByPersonId: this.work.personId });
  }
}

function amountOf({ netCents, taxCents }: Invoice, { basisPoints, amountCents }: DiscountDto) {
  if ((basisPoints == null) === (amountCents == null)) return refuse('discount-by-one-way');
  return amountCents == null ? earlyPayment(centsOf(netCents), centsOf(taxCents), basisPoints!).discountCents : centsOf(amountCents);
}
