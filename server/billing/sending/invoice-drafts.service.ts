import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { daysBetween } from '../../domain/day.ts';
import type { Day } from '../../domain/day.ts';
import { invoiceLetter, reminderLetter } from '../../domain/billing/letters/document-letters.ts';
import type { InvoiceToTell } from '../../domain/billing/letters/document-letters.ts';
import type { Signature, Writing } from '../../domain/billing/letters/letter.ts';
import { refuse } from '../../domain/refusals.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { amountText, dayText } from '../../platform/typesetting/amount-text.ts';
import { Payer } from '../../sponsorship/payer.entity.ts';
import { Seller } from '../../sponsorship/seller.entity.ts';
import type { WholeInvoiceView } from '../invoices/invoice.dto.ts';
import { InvoiceViews } from '../invoices/invoice-view.service.ts';
import { paperName } from './draft.ts';
import type { Draft } from './draft.ts';

/** The letters about an invoice: the invoice itself, and a reminder of it. */
@Injectable()
export class InvoiceDrafts {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(InvoiceViews) private readonly invoices: InvoiceViews,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** @throws Refused `not-found`, `invoice-is-void`, `no-copy-to-send` */
  async invoice(id: string): Promise<Draft> {
    const { invoice, seller, payer, write } = await this.parties(id);
    if (invoice.kind === 'opening') refuse('no-copy-to-send');
    const letter = invoiceLetter(toTell(invoice), seller, write);
    return { ...letter, ...draftOf(invoice, seller, payer), kind: 'invoice', which: [] };
  }

  /**
   * @param days which of the department's reminders; null: one that somebody writes by hand
   * @throws Refused `not-found`, `invoice-is-void`, `nothing-to-remind`, `not-due-yet`
   */
  async reminder(id: string, days: number | null): Promise<Draft> {
    const { invoice, seller, payer, write } = await this.parties(id);
    if (invoice.balanceCents <= 0) refuse('nothing-to-remind');
    const daysPastDue = daysBetween(invoice.dueOn as Day, await this.departments.today());
    if (daysPastDue < 1) refuse('not-due-yet', { dueOn: write.day(invoice.dueOn) });
    const letter = reminderLetter(toTell(invoice), daysPastDue, seller, write);
    return { ...letter, ...draftOf(invoice, seller, payer), kind: 'reminder', which: [days ?? 'by hand'] };
  }

  private async parties(id: string): Promise<{ invoice: WholeInvoiceView; seller: Seller; payer: Payer; write: Writing }> {
    const invoice = await this.invoices.one(id);
    if (invoice.state === 'void') refuse('invoice-is-void');
    const [seller, payer] = [await this.work.one(Seller, invoice.sellerId), await this.work.one(Payer, invoice.payerId)];
    return { invoice, seller, payer, write: writingOf(await this.departments.here()) };
  }
}

export function writingOf({ locale, currency }: { locale: string; currency: string }): Writing {
  return { amount: (cents) => amountText(cents, locale, currency), day: (day) => dayText(day, locale) };
}

function toTell(invoice: WholeInvoiceView): InvoiceToTell {
  const { number, payerName, contractTitle, purchaseOrderNumber, dueOn, grossCents, balanceCents } = invoice;
  return { number, payerName, what: contractTitle, purchaseOrderNumber, dueOn, grossCents, balanceCents, hasCopy: invoice.kind !== 'opening' };
}

function draftOf(invoice: WholeInvoiceView, seller: Signature, payer: Payer) {
  const copy = { kind: 'invoice' as const, aboutId: invoice.id, name: paperName(invoice.number) };
  return {
    aboutId: invoice.id,
    sponsorId: invoice.sponsorId,
    payerId: payer.id,
    toName: payer.name,
    toAddress: payer.email,
    fromName: seller.name,
    replyTo: seller.contactEmail ?? null,
    attachments: invoice.kind === 'opening' ? [] : [copy],
  };
}
