import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { InvoiceSheet } from '../../platform/typesetting/invoice-sheet.ts';
import { Typesetter } from '../../platform/typesetting/typesetter.ts';
import type { InvoiceSnapshot } from './invoice-snapshot.ts';

interface PrintedRow {
  snapshot: InvoiceSnapshot;
  isVoid: boolean;
  paidCents: number;
  balanceCents: number;
  paper: 'letter' | 'a4' | null;
}

/** What the paper says besides its snapshot: one statement, because a page is set in some ten milliseconds. */
const PRINTED = `select invoice.snapshot, standing.is_void as "isVoid", standing.applied_cents as "paidCents", standing.balance_cents as "balanceCents",
    department.settings->>'paper' as paper
  from invoice join invoice_standing as standing on standing.department_id = invoice.department_id and standing.invoice_id = invoice.id
    join department on department.id = invoice.department_id
  where invoice.department_id = $1 and invoice.id = $2`;

/** Reads in a short unit, closes it, and only then sets the page. */
@Injectable()
export class InvoicePrinting {
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
    if (!isId(id)) return refuse('not-found');
    const [row] = await this.work.sql<PrintedRow>(PRINTED, [id]);
    const { snapshot, isVoid, paidCents, balanceCents, paper } = row ?? refuse('not-found');
    return { ...snapshot, mark: isVoid ? 'VOID' : null, paidCents, balanceCents, ...(paper ? { paper } : {}) };
  }
}
