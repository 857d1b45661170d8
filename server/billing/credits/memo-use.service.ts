import { Inject, Injectable } from '@nestjs/common';
import { writeOffUndoneByMemo } from '../../domain/billing/write-off.ts';
import type { Day } from '../../domain/day.ts';
import type { MemoPosition } from '../../domain/sponsorship/position.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { DocumentLocks } from '../document-locks.ts';
import { WriteOffs } from '../write-offs/write-off.service.ts';
import { ApplicationService } from '../payments/application.service.ts';

interface OwnInvoice {
  balanceCents: number;
  writtenOffCents: number;
}

/** A memo pays off the invoices it credits, as far as they are open; the rest stays a credit of the payer. */
@Injectable()
export class MemoUse {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DocumentLocks) private readonly locks: DocumentLocks,
    @Inject(ApplicationService) private readonly applications: ApplicationService,
    @Inject(WriteOffs) private readonly writeOffs: WriteOffs,
  ) {}

  async lock(memos: readonly MemoPosition[]): Promise<void> {
    await this.locks.take(memos.flatMap((memo) => [memo.memoId, ...memo.parts.flatMap((part) => part.invoiceId ?? [])]));
  }

  async onOwnInvoices(memo: MemoPosition, on: Day): Promise<void> {
    for (const { invoiceId, netCents, taxCents } of memo.parts) {
      if (invoiceId === undefined) continue;
      const standing = (await this.standingsOf([invoiceId])).get(invoiceId) ?? { balanceCents: 0, writtenOffCents: 0 };
      const undoneCents = writeOffUndoneByMemo(netCents + taxCents, standing.balanceCents, standing.writtenOffCents);
      if (undoneCents > 0) await this.writeOffs.reverse(invoiceId, undoneCents, on, 'A credit memo takes its place');
      const amountCents = Math.min(standing.balanceCents + undoneCents, netCents + taxCents);
      if (amountCents > 0) await this.applications.apply(memo.memoId, [{ invoiceId, amountCents }], null, on);
    }
  }

  /** What is open and what is written off on invoices, in cents; what came over from the term before stands on none here and is left out. */
  async standingsOf(invoiceIds: readonly string[]): Promise<Map<string, OwnInvoice>> {
    if (invoiceIds.length === 0) return new Map();
    const rows = await this.work.sql<OwnInvoice & { id: string }>(
      `select invoice_id as id, balance_cents as "balanceCents", written_off_cents as "writtenOffCents" from invoice_standing where department_id = $1 and invoice_id = any($2::uuid[])`,
      [invoiceIds],
    );
    return new Map(rows.map((row) => [row.id, row]));
  }
}
