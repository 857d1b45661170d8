import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { journalRows } from '../../domain/billing/journal-cells.ts';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../../platform/http/lists.ts';
import type { Listed } from '../../platform/http/lists.ts';
import type { JournalBatchListQuery, JournalBatchView, JournalPreviewQuery, JournalPreviewView } from './journal-batch.dto.ts';
import { JournalComposing } from './journal-composing.service.ts';
import { JournalLayouts } from './journal-layouts.service.ts';

const LINES_SHOWN = 25;

const VIEW = `batch.id, batch.number, batch.seller_id as "sellerId", seller.name as "sellerName", batch.through_on as "throughOn", batch.entry_count as "entryCount",
  batch.debit_cents as "debitCents", person.name as "madeByName", batch.recorded_at as "recordedAt", encode(sha256(batch.content), 'hex') as sha256`;
const FROM = `journal_batch as batch join seller on seller.department_id = batch.department_id and seller.id = batch.seller_id
  left join person on person.id = batch.made_by_person_id`;
const SORTS = { recordedAt: 'batch.recorded_at', number: 'batch.number', throughOn: 'batch.through_on' };

/** Batches that were made, and what the next one would hold. */
@Injectable()
export class JournalBatchViews {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(JournalComposing) private readonly composing: JournalComposing,
    @Inject(JournalLayouts) private readonly layouts: JournalLayouts,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async list(query: JournalBatchListQuery): Promise<Listed<JournalBatchView>> {
    const on = new Conditions('batch.department_id').add('batch.id = any(?::uuid[])', query.id).add('batch.seller_id = ?', query.sellerId).add('batch.number ilike ?', contains(query.q));
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from ${FROM} where ${on.where}`, on.parameters);
    const data = await this.work.sql<JournalBatchView>(`select ${VIEW} from ${FROM} where ${on.where} ${pageOf(query, SORTS, 'batch.id')}`, on.parameters);
    return { data, total: count?.total ?? 0 };
  }

  async one(id: string): Promise<JournalBatchView> {
    const rows = isId(id) ? await this.work.sql<JournalBatchView>(`select ${VIEW} from ${FROM} where batch.department_id = $1 and batch.id = $2`, [id]) : [];
    return rows[0] ?? refuse('not-found');
  }

  /** The bytes as they were written, whatever the layout is by now. */
  async content(id: string): Promise<{ bytes: Buffer; name: string }> {
    const rows = isId(id) ? await this.work.sql<{ number: string; content: Buffer }>('select number, content from journal_batch where department_id = $1 and id = $2', [id]) : [];
    const [row] = rows;
    return row ? { bytes: row.content, name: `${row.number}.csv` } : refuse('not-found');
  }

  /** Of the seller asked for, or the first by name; through the last closed day where none is named, or today. */
  async preview(query: JournalPreviewQuery): Promise<JournalPreviewView> {
    const layouts = await this.layouts.list();
    const found = query.sellerId ? (layouts.find((layout) => layout.sellerId === query.sellerId) ?? refuse('unknown-seller')) : layouts[0];
    const closedThrough = await this.composing.closedThrough();
    const throughOn = query.throughOn ?? closedThrough ?? (await this.departments.today());
    const reach = { throughOn, closedThrough, reachesOpenMonth: closedThrough === null || throughOn > closedThrough };
    if (!found) return { sellerId: null, sellerName: null, ...reach, entryCount: 0, lineCount: 0, debitCents: 0, missing: [], headings: [], rows: [] };
    const { entries, lines, missing, debitCents } = await this.composing.compose(found.sellerId, throughOn);
    const rows = journalRows(lines.slice(0, LINES_SHOWN), { ...found, hasHeadings: false }, 'next');
    return {
      sellerId: found.sellerId, sellerName: found.sellerName, ...reach, entryCount: entries.length, lineCount: lines.length, debitCents, missing,
      headings: found.columns.map((column) => column.heading), rows,
    };
  }
}
