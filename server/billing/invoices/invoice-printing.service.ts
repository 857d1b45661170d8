import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { InvoiceSheet } from '../../platform/typesetting/invoice-sheet.ts';
import { Typesetter } from '../../platform/typesetting/typesetter.ts';
import type { InvoiceSnapshot } from './invoice-snapshot.ts';
import { InvoiceViews } from './invoice-view.service.ts';
import { Invoice } from './invoice.entity.ts';

/** Reads in a short unit, closes it, and only then sets the page. */
@Injectable()
export class InvoicePrinting {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(InvoiceViews) private readonly views: InvoiceViews,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(Typesetter) private readonly typesetter: Typesetter,
  ) {}

  async pdf(id: string): Promise<{ bytes: Buffer; name: string }> {
    const sheet = await this.work.run(() => this.sheetOf(id));
    const bytes = await this.typesetter.pdf('invoice', sheet);
    return { bytes, name: `${sheet.number.replace(/[^A-Za-z0-9-]/g, '-')}.pdf` };
  }

  private async sheetOf(id: string): Promise<InvoiceSheet> {
    const invoice = await this.work.one(Invoice, id);
    const { state, appliedCents, balanceCents } = await this.views.one(id);
    const { paper } = (await this.departments.here()).settings;
    return { ...(invoice.snapshot as InvoiceSnapshot), mark: state === 'void' ? 'VOID' : null, paidCents: appliedCents, balanceCents, paper };
  }
}
