import { Inject, Injectable } from '@nestjs/common';
import { amountInSentence, centsOf } from '../../domain/money.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { StatementNames } from '../statements/statement-names.service.ts';
import type { EventRow } from '../statements/statement-names.service.ts';
import type { InvoiceStoryView } from './invoice.dto.ts';
import { Invoice } from './invoice.entity.ts';

type Told = EventRow & { who: string | null; recordedAt: string };

const EVENTS = `select event.id as "eventId", event.happening, event.cause, event.cause_id as "causeId", event.occurred_on as "occurredOn", event.booked_on as "bookedOn",
    event.recorded_at as "recordedAt", person.name as who
  from ledger_event as event left join person on person.id = event.recorded_by_person_id
  where event.department_id = $1 and event.id in (
    select posting.event_id from posting where posting.department_id = $1 and posting.invoice_id = $2
    union select issued.id from ledger_event as issued where issued.department_id = $1 and issued.cause_id = $2)
  order by event.occurred_on, event.recorded_at, event.id limit 500`;

const STEPS = `select write_off.id, write_off.step, write_off.amount_cents as "amountCents", write_off.happened_on as "on", write_off.reason,
    write_off.recorded_at as "recordedAt", person.name as who
  from write_off left join person on person.id = write_off.recorded_by_person_id
  where write_off.department_id = $1 and write_off.invoice_id = $2 and write_off.step in ('asked', 'declined')`;

interface Step {
  id: string;
  step: 'asked' | 'declined';
  amountCents: number;
  on: string;
  reason: string;
  recordedAt: string;
  who: string | null;
}

/** Everything that happened to an invoice, in plain words, day by day. */
@Injectable()
export class InvoiceStory {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(StatementNames) private readonly names: StatementNames,
  ) {}

  /** @throws Refused `not-found` */
  async tell(invoiceId: string): Promise<InvoiceStoryView> {
    const invoice = await this.work.one(Invoice, invoiceId);
    const events = await this.work.sql<Told>(EVENTS, [invoiceId]);
    const told = await this.names.tell(invoice.contractId, events);
    const steps = await this.work.sql<Step>(STEPS, [invoiceId]);
    const lines = [
      ...events.map(({ eventId: id, occurredOn: on, bookedOn, who, recordedAt }) => ({ id, on, bookedOn, who, recordedAt, sentence: told.get(id)!.sentence })),
      ...steps.map(({ id, on, who, recordedAt, ...step }) => ({ id, on, bookedOn: null, who, recordedAt, sentence: stepSentence(step) })),
    ];
    return { lines: lines.sort((one, other) => one.on.localeCompare(other.on) || one.recordedAt.localeCompare(other.recordedAt)).map(({ recordedAt: _, ...line }) => line) };
  }
}

function stepSentence({ step, amountCents, reason }: Pick<Step, 'step' | 'amountCents' | 'reason'>): string {
  const amount = amountInSentence(centsOf(amountCents));
  const why = reason.trim().replace(/\.+$/, '');
  return step === 'asked' ? `It was asked to write off ${amount}: ${why}.` : `Writing off ${amount} was declined: ${why}.`;
}
