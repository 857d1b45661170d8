import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { checkVoidable } from '../../domain/billing/invoice.ts';
import { chargeInvoiced } from '../../domain/billing/charge.ts';
import { dayOfStep } from '../../domain/billing/not-before.ts';
import type { Day } from '../../domain/day.ts';
import { centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import { LedgerService } from '../../ledger/ledger.service.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import { BilledRead } from './billed-read.entity.ts';
import { DocumentLocks } from '../document-locks.ts';
import { Standings } from '../standings.service.ts';
import { InvoiceVoid } from './invoice-void.entity.ts';
import type { VoidInvoiceDto } from './invoice.dto.ts';
import { Invoice } from './invoice.entity.ts';

@Injectable()
export class InvoiceVoiding {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(TermLedger) private readonly terms: TermLedger,
    @Inject(LedgerService) private readonly ledger: LedgerService,
    @Inject(DocumentLocks) private readonly locks: DocumentLocks,
    @Inject(Standings) private readonly standings: Standings,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /**
   * Voids an invoice nothing was done about; its number stays taken, its reads may be billed again.
   *
   * @throws Refused `before-its-cause`, `opening-stays`, `invoice-already-void`, `void-after-payment`, `void-after-credit`, `void-after-write-off`, `void-after-carry-over`
   */
  async voidInvoice(id: string, { reason, voidedOn }: VoidInvoiceDto): Promise<void> {
    const invoice = await this.work.one(Invoice, id);
    if (invoice.kind === 'opening') refuse('opening-stays');
    await this.locks.takeWithContract(invoice);
    checkVoidable({ ...(await this.standings.invoice(id)), ...(await this.inContract(invoice)) });
    const on = dayOfStep(voidedOn as Day | null, await this.departments.today(), await this.standings.causes([id]));
    const eventId = await this.book(invoice, on);
    await this.work.insert(InvoiceVoid, { invoiceId: id, voidedOn: on, reason, eventId, voidedByPersonId: this.work.personId });
    await this.work.remove(BilledRead, { invoiceId: id });
  }

  /** What the contract itself has done about an invoice since. */
  private async inContract({ id, termId }: Invoice): Promise<{ creditedCents?: number; carriedCents?: number }> {
    const position = termId === null ? null : await this.terms.position(termId);
    return position?.documents.find((document) => document.invoiceId === id) ?? {};
  }

  private async book(invoice: Invoice, occurredOn: Day): Promise<string> {
    const because = { cause: 'invoice', causeId: invoice.id, occurredOn, takesBackEventId: invoice.eventId };
    const happening = { kind: 'invoiceVoided', invoiceId: invoice.id, number: invoice.number } as const;
    if (invoice.termId) {
      const { eventIds } = await this.terms.happen(invoice.termId, [{ happening, because }]);
      return eventIds[0]!;
    }
    const postings = chargeInvoiced(invoice.id, centsOf(invoice.grossCents)).map((posting) => ({ ...posting, from: posting.to, to: posting.from }));
    return this.ledger.book({ ...because, happening, postings, contractId: invoice.contractId, sellerId: invoice.sellerId });
  }
}
