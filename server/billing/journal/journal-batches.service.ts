import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { NumberService } from '../../access/number.service.ts';
import { documentNumber } from '../../domain/billing/document-number.ts';
import { DELIMITER_SIGNS, journalRows } from '../../domain/billing/journal-cells.ts';
import { fiscalYearOf } from '../../domain/day.ts';
import { refuse } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { recordsOf } from '../../platform/files/csv.ts';
import { Seller } from '../../sponsorship/seller.entity.ts';
import { DocumentLocks } from '../document-locks.ts';
import type { JournalBatchDto } from './journal-batch.dto.ts';
import { JournalComposing } from './journal-composing.service.ts';

/** Makes batches: each entry leaves once, and what has left is kept as it was written. */
@Injectable()
export class JournalBatches {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(JournalComposing) private readonly composing: JournalComposing,
    @Inject(DocumentLocks) private readonly locks: DocumentLocks,
    @Inject(NumberService) private readonly numbers: NumberService,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** @throws Refused `unknown-seller`, `seller-keeps-own-books`, `journal-of-open-month`, `nothing-to-export`, `journal-not-mapped` */
  async make({ sellerId, throughOn, allowsOpenMonth }: JournalBatchDto): Promise<string> {
    const seller = (await this.work.first(Seller, { id: sellerId })) ?? refuse('unknown-seller');
    if (!seller.keepsBooksHere) refuse('seller-keeps-own-books');
    const closedThrough = await this.composing.closedThrough();
    if (!allowsOpenMonth && (closedThrough === null || throughOn > closedThrough)) refuse('journal-of-open-month', { day: closedThrough ?? 'the start' });
    // Whoever exports the same seller waits here, and then finds these entries gone.
    await this.locks.take([sellerId]);
    const { entries, layout, lines, missing, debitCents } = await this.composing.compose(sellerId, throughOn);
    if (entries.length === 0) refuse('nothing-to-export');
    if (missing.length > 0) refuse('journal-not-mapped', { missing: missing.join('; ') });
    const fiscalYear = fiscalYearOf(throughOn, (await this.departments.here()).fiscalYearStartsInMonth);
    const seriesNumber = await this.numbers.next('journalBatch', sellerId, fiscalYear);
    const number = documentNumber(`${seller.numberPrefix}-J`, fiscalYear, seriesNumber);
    const content = Buffer.from(recordsOf(journalRows(lines, layout, number), DELIMITER_SIGNS[layout.delimiter]), 'utf8');
    const id = newId();
    await this.work.sql(
      `insert into journal_batch (department_id, id, number, fiscal_year, series_number, seller_id, through_on, layout, entry_count, debit_cents, content, made_by_person_id)
       values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12)`,
      [id, number, fiscalYear, seriesNumber, sellerId, throughOn, JSON.stringify(layout), entries.length, debitCents, content, this.work.personId],
    );
    for (let from = 0; from < entries.length; from += 500) {
      await this.work.add('journal_batch_entry', entries.slice(from, from + 500).map((entry) => ({ id: newId(), journalBatchId: id, entryId: entry.id })));
    }
    return id;
  }
}
