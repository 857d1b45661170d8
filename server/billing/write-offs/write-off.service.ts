import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { Role } from '../../domain/access/rights.ts';
import { checkWithinBalance } from '../../domain/billing/invoice.ts';
import { checkNotBefore, dayOfStep } from '../../domain/billing/not-before.ts';
import type { Cause } from '../../domain/billing/not-before.ts';
import { checkApprover, invoiceWrittenOff, writeOffReversed } from '../../domain/billing/write-off.ts';
import type { Day } from '../../domain/day.ts';
import { centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import { amountsOf } from '../../domain/sponsorship/contract-amounts.ts';
import { LedgerService } from '../../ledger/ledger.service.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import { DocumentLocks } from '../document-locks.ts';
import { Invoice } from '../invoices/invoice.entity.ts';
import type { PaymentHappening } from '../payments/payment-happening.ts';
import { Standings } from '../standings.service.ts';
import type { ApproveWriteOffDto, AskWriteOffDto, DeclineWriteOffDto } from './write-off.dto.ts';
import { WriteOff } from './write-off.entity.ts';

const WRITTEN_OFF = `select 'its write-off' as what, happened_on as "on" from write_off where department_id = $1 and invoice_id = $2 and step = 'writtenOff'`;

/** Giving an invoice up: one asks, a director answers, and what comes in after all is opened again. */
@Injectable()
export class WriteOffs {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(LedgerService) private readonly ledger: LedgerService,
    @Inject(TermLedger) private readonly terms: TermLedger,
    @Inject(DocumentLocks) private readonly locks: DocumentLocks,
    @Inject(Standings) private readonly standings: Standings,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** @throws Refused `not-found`, `invoice-is-void`, `more-than-balance`, `write-off-before-ending`, `write-off-waits` */
  async ask(invoiceId: string, { amountCents, reason }: AskWriteOffDto): Promise<void> {
    const invoice = await this.lock(invoiceId);
    await this.postingsOf(invoice, amountCents);
    const waiting = await this.work.sql(
      `select 1 from write_off where department_id = $1 and invoice_id = $2 and step = 'asked'
         and not exists (select from write_off as answer where answer.department_id = $1 and answer.answers_write_off_id = write_off.id)`,
      [invoiceId],
    );
    if (waiting.length > 0) refuse('write-off-waits');
    await this.work.insert(WriteOff, { invoiceId, step: 'asked', amountCents, happenedOn: await this.departments.today(), reason, recordedByPersonId: this.work.personId });
  }

  /**
   * Answers the invoice's id.
   *
   * @throws Refused `not-found`, `before-its-cause`, `write-off-needs-another`, `write-off-answered-already`, and as asking does
   */
  async approve(requestId: string, form: ApproveWriteOffDto, roles: readonly Role[]): Promise<string> {
    const request = await this.requestOf(requestId);
    const bySamePerson = request.recordedByPersonId === this.work.personId;
    checkApprover(bySamePerson, roles);
    const invoice = await this.lock(request.invoiceId);
    await this.checkOpen(requestId);
    const { amountCents, invoiceId } = request;
    const reason = form.reason ?? request.reason;
    const on = dayOfStep(form.on as Day | null, await this.departments.today(), await this.standings.causes([invoiceId]));
    const postings = await this.postingsOf(invoice, amountCents);
    const happening: PaymentHappening = { kind: 'writtenOff', invoiceId, invoiceNumber: invoice.number, amountCents: centsOf(amountCents), reason, bySamePerson };
    const eventId = await this.ledger.book({ ...becauseOf(invoice), occurredOn: on, happening, postings });
    await this.work.insert(WriteOff, { invoiceId, step: 'writtenOff', answersWriteOffId: requestId, amountCents, happenedOn: on, reason, eventId, recordedByPersonId: this.work.personId });
    return invoiceId;
  }

  /** Answers the invoice's id. @throws Refused `not-found`, `write-off-answered-already` */
  async decline(requestId: string, { on, reason }: DeclineWriteOffDto): Promise<string> {
    const { invoiceId, amountCents } = await this.requestOf(requestId);
    await this.lock(invoiceId);
    await this.checkOpen(requestId);
    const happenedOn = on ?? (await this.departments.today());
    await this.work.insert(WriteOff, { invoiceId, step: 'declined', answersWriteOffId: requestId, amountCents, happenedOn, reason, recordedByPersonId: this.work.personId });
    return invoiceId;
  }

  /**
   * Opens again what was written off, because money comes after all or because a memo credits it.
   *
   * @throws Refused `not-found`, `before-its-cause`, `nothing-written-off`, `more-than-balance`
   */
  async reverse(invoiceId: string, amountCents: number, recoveredOn: Day, reason: string): Promise<Invoice> {
    const invoice = await this.lock(invoiceId);
    const { writtenOffCents } = await this.standings.invoice(invoiceId);
    const amount = centsOf(amountCents);
    const happening: PaymentHappening = { kind: 'recovered', invoiceId, invoiceNumber: invoice.number, amountCents: amount, reason };
    const postings = writeOffReversed(invoiceId, amount, writtenOffCents);
    checkNotBefore(recoveredOn, await this.work.sql<Cause>(WRITTEN_OFF, [invoiceId]));
    const eventId = await this.ledger.book({ ...becauseOf(invoice), occurredOn: recoveredOn, happening, postings });
    await this.work.insert(WriteOff, { invoiceId, step: 'recovered', amountCents, happenedOn: recoveredOn, reason, eventId, recordedByPersonId: this.work.personId });
    return invoice;
  }

  private async lock(invoiceId: string): Promise<Invoice> {
    const invoice = await this.work.one(Invoice, invoiceId);
    await this.locks.takeWithContract(invoice);
    return invoice;
  }

  /** What writing this much off would book now; refuses where it cannot be. */
  private async postingsOf({ id, termId }: Invoice, amountCents: number) {
    const standing = await this.standings.invoice(id);
    checkWithinBalance(standing, amountCents);
    const position = termId === null ? null : await this.terms.position(termId);
    return invoiceWrittenOff(id, centsOf(amountCents), standing.balanceCents, position ? amountsOf(position).contractBalanceCents : 0);
  }

  private async requestOf(id: string): Promise<WriteOff> {
    const request = await this.work.one(WriteOff, id);
    return request.step === 'asked' ? request : refuse('not-found');
  }

  private async checkOpen(requestId: string): Promise<void> {
    if (await this.work.first(WriteOff, { answersWriteOffId: requestId })) refuse('write-off-answered-already');
  }
}

function becauseOf({ id, contractId, sellerId }: Invoice) {
  return { cause: 'invoice', causeId: id, contractId, sellerId };
}
