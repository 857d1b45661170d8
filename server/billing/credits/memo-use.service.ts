import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import type { MemoPosition } from '../../domain/sponsorship/position.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { DocumentLocks } from '../document-locks.ts';
import { ApplicationService } from '../payments/application.service.ts';

/** A memo pays off the invoices it credits, as far as they are open; the rest stays a credit of the payer. */
@Injectable()
export class MemoUse {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DocumentLocks) private readonly locks: DocumentLocks,
    @Inject(ApplicationService) private readonly applications: ApplicationService,
  ) {}

  async lock(memos: readonly MemoPosition[]): Promise<void> {
    await this.locks.take(memos.flatMap((memo) => [memo.memoId, ...memo.parts.flatMap((part) => part.invoiceId ?? [])]));
  }

  async onOwnInvoices(memo: MemoPosition, on: Day): Promise<void> {
    for (const { invoiceId, netCents, taxCents } of memo.parts) {
      if (invoiceId === undefined) continue;
      const openCents = await this.openOn(invoiceId);
      const amountCents = Math.min(openCents, netCents + taxCents);
      if (amountCents > 0) await this.applications.apply(memo.memoId, [{ invoiceId, amountCents }], on);
    }
  }

  /** Zero for what came over from the term before: it stands on no invoice here. */
  private async openOn(invoiceId: string): Promise<number> {
    const [row] = await this.work.sql<{ cents: number }>(
      `select gross_cents - (select coalesce(sum(amount_cents), 0) from application where application.department_id = $1 and application.invoice_id = invoice.id) as cents
         from invoice where department_id = $1 and id = $2`,
      [invoiceId],
    );
    return Number(row?.cents ?? 0);
  }
}
