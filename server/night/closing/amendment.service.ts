import { Inject, Injectable } from '@nestjs/common';
import { mayUse } from '../../domain/access/rights.ts';
import type { Role } from '../../domain/access/rights.ts';
import type { Settlement } from '../../domain/night/settle.ts';
import { refuse } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { Notices } from '../../platform/database/notices.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { settlementsOf } from './closing.dto.ts';
import type { AmendDto, AmendView, AmendmentView, BookedView, SettleDto } from './closing.dto.ts';
import { LogBatch } from '../log/log-batch.service.ts';
import type { EntryResult } from '../log/log.dto.ts';
import { NightBooks } from './night-books.service.ts';
import { NightLog } from '../log/night-log.service.ts';
import { Settlements } from './settlement.service.ts';

/** What changes about a night after its sign-off, each time with a reason, and what is settled before it. */
@Injectable()
export class Amendments {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(NightLog) private readonly log: NightLog,
    @Inject(LogBatch) private readonly batch: LogBatch,
    @Inject(NightBooks) private readonly books: NightBooks,
    @Inject(Settlements) private readonly settlements: Settlements,
    @Inject(Notices) private readonly notices: Notices,
  ) {}

  /** Entries after sign-off, and second thoughts about earlier ones; counted at once. */
  async amend(nightId: string, form: AmendDto): Promise<AmendView> {
    const night = await this.log.lock(nightId);
    if (!night.isSignedOff) refuse('night-not-signed-off');
    const results = await this.batch.take(night, form, true);
    const settled = settlementsOf(form.decisions);
    const entries = await this.log.entries(nightId);
    await this.settlements.keep(nightId, settled, entries, form.reason);
    const booked = await this.book(nightId, form.reason, results, settled.length);
    await this.notices.tell('night', nightId);
    return { results, ...booked };
  }

  /** One answer about one entry. Before sign-off it waits there; after it the books follow at once, and that is the director's to do. */
  async settle(nightId: string, form: SettleDto, roles: readonly Role[]): Promise<BookedView> {
    const night = await this.log.lock(nightId);
    const reason = form.reason ?? null;
    if (night.isSignedOff && !mayUse(roles, 'amend a night')) refuse('role-missing');
    if (night.isSignedOff && reason === null) refuse('amendment-without-reason', {}, { reason: 'is missing' });
    const entries = await this.log.entries(nightId);
    const one: Settlement = { entryId: form.entryId.toLowerCase(), answer: form.answer, sameAsEntryId: form.answer === 'sameAs' ? (form.sameAsEntryId?.toLowerCase() ?? null) : null };
    await this.settlements.keep(nightId, [one], entries, reason);
    await this.notices.tell('night', nightId);
    return night.isSignedOff ? this.book(nightId, reason!, [], 1) : { counted: 0, released: 0, earnedCents: 0 };
  }

  async of(nightId: string): Promise<AmendmentView[]> {
    const rows = await this.work.sql<Omit<AmendmentView, 'sentence'>>(
      `select amendment.id, amendment.reason, amendment.recorded_at as at, person.name as "byName", amendment.first_number as "firstNumber",
          amendment.entries, amendment.settled, amendment.counted, amendment.released
         from amendment left join person on person.id = amendment.amended_by_person_id
        where amendment.department_id = $1 and amendment.night_id = $2 order by amendment.recorded_at desc, amendment.id desc`,
      [nightId],
    );
    return rows.map((row) => ({ ...row, sentence: sentenceOf(row) }));
  }

  private async book(nightId: string, reason: string, results: readonly EntryResult[], settled: number): Promise<BookedView> {
    const night = await this.log.night(nightId);
    const fresh = results.filter((result) => result.status === 'stored');
    const booked = await this.books.takeIn(night, await this.log.entries(nightId), new Set(fresh.map((result) => result.id)));
    // What was known already, sent again, amends nothing.
    if (fresh.length > 0 || settled > 0) {
      const firstNumber = fresh.length > 0 ? Math.min(...fresh.map((result) => result.number!)) : null;
      await this.work.add('amendment', [{ id: newId(), nightId, reason, amendedByPersonId: this.work.personId, firstNumber, entries: fresh.length, settled, ...booked }]);
    }
    return booked;
  }
}

const plural = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

function sentenceOf({ entries, firstNumber, settled, counted, released }: Omit<AmendmentView, 'sentence'>): string {
  const numbers = firstNumber === null ? '' : entries === 1 ? `Entry ${firstNumber} added` : `Entries ${firstNumber} to ${firstNumber + entries - 1} added`;
  const answers = settled > 0 ? `${plural(settled, 'question', 'questions')} settled` : '';
  const told = [numbers, answers].filter(Boolean).join(', ') || 'Nothing added';
  const moved = [counted > 0 && `${plural(counted, 'read', 'reads')} counted`, released > 0 && `${plural(released, 'read', 'reads')} taken out of the count`].filter(Boolean).join(', ');
  return `${told.charAt(0).toUpperCase()}${told.slice(1)}: ${moved || 'the count stays as it was'}.`;
}
