import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { daysBetween } from '../../domain/day.ts';
import type { Day } from '../../domain/day.ts';
import { isMailAddress } from '../../domain/billing/letters/letter.ts';
import { reminderDue, whyNoReminder } from '../../domain/billing/letters/reminders.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { DocumentLocks } from '../document-locks.ts';
import type { InvoiceListQuery, InvoiceView } from '../invoices/invoice.dto.ts';
import { InvoiceViews } from '../invoices/invoice-view.service.ts';
import { InvoiceDrafts } from './invoice-drafts.service.ts';
import type { ReminderView } from './message.dto.ts';
import { MessageService } from './message.service.ts';

const AT_ONCE = 500;

const HELD = `select contract_id as "contractId" from contract_hold where department_id = $1 and lifts_hold_id is null
  and not exists (select 1 from contract_hold as later where later.department_id = $1 and later.lifts_hold_id = contract_hold.id)`;

/** Which reminders are due today, and writing them: each once, however often somebody looks. */
@Injectable()
export class ReminderRound {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(InvoiceViews) private readonly invoices: InvoiceViews,
    @Inject(InvoiceDrafts) private readonly drafts: InvoiceDrafts,
    @Inject(MessageService) private readonly messages: MessageService,
    @Inject(DocumentLocks) private readonly locks: DocumentLocks,
  ) {}

  /** What would go out today, and what would not and why. */
  async due(): Promise<ReminderView[]> {
    const { settings } = await this.departments.here();
    if (settings.reminderDays.length === 0) return [];
    const today = await this.departments.today();
    const unpaid = (await this.unpaid()).filter((invoice) => invoice.dueOn < today && invoice.balanceCents > 0);
    const written = await this.written(unpaid.map((invoice) => invoice.id));
    const facts = await this.facts(unpaid);
    return unpaid.flatMap((invoice) => {
      const daysPastDue = daysBetween(invoice.dueOn as Day, today);
      const days = reminderDue(daysPastDue, settings.reminderDays, written.get(invoice.id) ?? []);
      if (days === null) return [];
      const { address, isHeld } = facts(invoice);
      const { id, number, payerId, payerName, sponsorName, dueOn, balanceCents } = invoice;
      const why = whyNoReminder({ address, isHeld, isTakenOver: invoice.kind === 'opening' });
      return [{ id, number, payerId, payerName, sponsorName, dueOn, daysPastDue, days, balanceCents, toAddress: address, why }];
    });
  }

  /** Writes today's reminders; answers how many. Two who look at once do it one after the other. */
  async write(): Promise<number> {
    await this.locks.take([this.work.departmentId]);
    const due = (await this.due()).filter((reminder) => reminder.why === null);
    for (const { id, days } of due) await this.messages.write(await this.drafts.reminder(id, days));
    return due.length;
  }

  private async unpaid(): Promise<InvoiceView[]> {
    const found: InvoiceView[] = [];
    for (let page = 1; ; page += 1) {
      const { data } = await this.invoices.list({ unpaid: true, perPage: AT_ONCE, page, sort: 'dueOn' } as InvoiceListQuery);
      found.push(...data);
      if (data.length < AT_ONCE) return found;
    }
  }

  private async written(invoiceIds: readonly string[]): Promise<Map<string, number[]>> {
    const rows = await this.work.sql<{ invoiceId: string; days: number[] }>(
      `select about_id as "invoiceId", array_agg(split_part(once_key, ':', 3)::int) as days from message
       where department_id = $1 and kind = 'reminder' and about_id = any($2::uuid[]) and split_part(once_key, ':', 3) ~ '^[0-9]+$' group by about_id`,
      [invoiceIds],
    );
    return new Map(rows.map((row) => [row.invoiceId, row.days]));
  }

  private async facts(invoices: readonly InvoiceView[]): Promise<(invoice: InvoiceView) => { address: string | null; isHeld: boolean }> {
    const held = new Set((await this.work.sql<{ contractId: string }>(HELD)).map((row) => row.contractId));
    const payers = await this.work.sql<{ id: string; email: string | null }>('select id, email from payer where department_id = $1 and id = any($2::uuid[])', [[...new Set(invoices.map((one) => one.payerId))]]);
    const addresses = new Map(payers.map(({ id, email }) => [id, email !== null && isMailAddress(email) ? email : null]));
    return (invoice) => ({ address: addresses.get(invoice.payerId) ?? null, isHeld: invoice.contractId !== null && held.has(invoice.contractId) });
  }
}
