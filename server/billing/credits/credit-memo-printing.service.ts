import { Inject, Injectable } from '@nestjs/common';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { InvoiceSheet } from '../../platform/typesetting/invoice-sheet.ts';
import { Typesetter } from '../../platform/typesetting/typesetter.ts';
import type { InvoiceSnapshot } from '../invoices/invoice-snapshot.ts';
import { CreditMemo } from './credit-memo.entity.ts';

/** A memo is printed as it was issued, whatever became of its credit. */
@Injectable()
export class CreditMemoPrinting {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(Typesetter) private readonly typesetter: Typesetter,
  ) {}

  async pdf(id: string): Promise<{ bytes: Buffer; name: string }> {
    const sheet = await this.work.run(() => this.sheetOf(id));
    const bytes = await this.typesetter.pdf('invoice', sheet);
    return { bytes, name: `${sheet.number.replace(/[^A-Za-z0-9-]/g, '-')}.pdf` };
  }

  private async sheetOf(id: string): Promise<InvoiceSheet> {
    const memo = await this.work.one(CreditMemo, id);
    return { ...(memo.snapshot as InvoiceSnapshot), mark: null, paidCents: 0, balanceCents: 0 };
  }
}
