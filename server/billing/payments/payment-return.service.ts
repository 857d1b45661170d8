import { Inject, Injectable } from '@nestjs/common';
import { checkNotBefore } from '../../domain/billing/not-before.ts';
import { creditUnapplied, paymentReturned } from '../../domain/billing/payment.ts';
import type { Drawer } from '../../domain/billing/payment.ts';
import type { Day } from '../../domain/day.ts';
import { centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import { LedgerService } from '../../ledger/ledger.service.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { DocumentLocks } from '../document-locks.ts';
import { Standings } from '../standings.service.ts';
import { AppliedCredit } from './application.entity.ts';
import type { PaymentHappening } from './payment-happening.ts';
import type { ReturnDto } from './payment-return.dto.ts';
import { PaymentReturn } from './payment-return.entity.ts';
import { Payment } from './payment.entity.ts';
import { Reopening } from './reopening.service.ts';

/** The payment, and the contract it came in on alone. */
export interface Returned {
  payment: Payment;
  contractId: string | null;
}

interface Live {
  id: string;
  eventId: string | null;
  invoiceId: string;
  invoiceNumber: string;
  contractId: string | null;
  amountCents: number;
  appliedOn: Day;
}

const LIVE = `select application.id, application.event_id as "eventId", application.invoice_id as "invoiceId", application.amount_cents as "amountCents", application.applied_on as "appliedOn",
    invoice.number as "invoiceNumber", invoice.contract_id as "contractId"
  from application join invoice on invoice.department_id = $1 and invoice.id = application.invoice_id
  where application.department_id = $1 and application.payment_id = $2 and application.takes_back_application_id is null
    and not exists (select from application as later where later.department_id = $1 and later.takes_back_application_id = application.id)
  order by application.applied_on, application.recorded_at, application.id`;

interface Where {
  inDrawer: boolean | null;
  contractId: string | null;
}

/** Where the money of a payment lies, and which contract it came in on alone. */
const WHERE = `select payment.drawer = 'undepositedReceipts' and not exists (select from deposit_slip_line
      where deposit_slip_line.department_id = $1 and deposit_slip_line.payment_id = payment.id) as "inDrawer", received.contract_id as "contractId"
  from payment left join ledger_event as received on received.department_id = $1 and received.id = payment.event_id
  where payment.department_id = $1 and payment.id = $2`;

const contractsOpened = (numbers: readonly string[]) => (numbers.length > 0 ? { contractsOpened: numbers } : {});

/** A payment that comes back, or that never was one: what it paid is open again, and the money is gone again. */
@Injectable()
export class PaymentReturns {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(LedgerService) private readonly ledger: LedgerService,
    @Inject(DocumentLocks) private readonly locks: DocumentLocks,
    @Inject(Standings) private readonly standings: Standings,
    @Inject(Reopening) private readonly reopening: Reopening,
  ) {}

  /** @throws Refused `not-found`, `before-its-cause`, `opening-stays`, `payment-returned-already`, `fee-of-a-mistake`, `more-than-unapplied` when part of it was refunded */
  async comeBack(paymentId: string, form: ReturnDto): Promise<Returned> {
    const payment = await this.work.one(Payment, paymentId);
    if (payment.method === 'opening') refuse('opening-stays');
    const bankFeeCents = centsOf(form.bankFeeCents ?? 0);
    if (form.kind === 'mistake' && (bankFeeCents > 0 || form.chargeCents)) refuse('fee-of-a-mistake');
    const [where] = await this.work.sql<Where>(WHERE, [paymentId]);
    // A fee that is passed on is billed on the contract that the payment came in on.
    const feeOf = form.chargeCents ? (where?.contractId ?? null) : null;
    const live = await this.lockAll(paymentId, feeOf);
    const { refundedCents, isReturned } = await this.standings.credit(paymentId);
    if (isReturned) refuse('payment-returned-already');
    const uses = live.map((one) => ({ what: `its use on invoice ${one.invoiceNumber}`, on: one.appliedOn }));
    checkNotBefore(form.returnedOn as Day, [...(await this.standings.causes([paymentId])), ...uses]);
    const [now] = await this.work.sql<Where>(WHERE, [paymentId]);
    const outOf: Drawer = now?.inDrawer ? 'undepositedReceipts' : 'cash';
    const amountCents = centsOf(payment.amountCents);
    const postings = paymentReturned({ paymentId, amountCents, refundedCents }, [], bankFeeCents, outOf);
    const because = { cause: 'payment', causeId: paymentId, occurredOn: form.returnedOn as Day };
    const opened = await this.reopening.open([feeOf, ...live.map((one) => one.contractId)], because);
    for (const application of live) await this.undo(payment, application, form.returnedOn as Day, opened);
    const happening: PaymentHappening = { kind: 'paymentReturned', paymentId, number: payment.number, amountCents, bankFeeCents, isMistake: form.kind === 'mistake', reason: form.reason, ...contractsOpened([...opened.values()]) };
    const eventId = await this.ledger.book({
      ...because,
      happening,
      postings,
      contractId: where?.contractId ?? null,
      sellerId: payment.sellerId,
      takesBackEventId: payment.eventId,
    });
    const { kind, returnedOn, reason } = form;
    await this.work.insert(PaymentReturn, { paymentId, kind, returnedOn, bankFeeCents, reason, eventId, recordedByPersonId: this.work.personId });
    return { payment, contractId: where?.contractId ?? null };
  }

  /** What it is applied to changes only under its own lock, so what was read before is read again after. */
  private async lockAll(paymentId: string, feeOf: string | null): Promise<Live[]> {
    const seen = await this.work.sql<Live>(LIVE, [paymentId]);
    await this.reopening.lock([feeOf, ...seen.map((one) => one.contractId)]);
    await this.locks.take([paymentId, ...seen.map((one) => one.invoiceId)]);
    const live = await this.work.sql<Live>(LIVE, [paymentId]);
    await this.reopening.lock(live.map((one) => one.contractId));
    await this.locks.take(live.map((one) => one.invoiceId));
    return live;
  }

  private async undo(payment: Payment, application: Live, returnedOn: Day, opened: ReadonlyMap<string, string>): Promise<void> {
    const { invoiceId, invoiceNumber, contractId } = application;
    const amountCents = centsOf(application.amountCents);
    const own = contractId === null ? undefined : opened.get(contractId);
    const happening: PaymentHappening = { kind: 'creditUnapplied', paymentId: payment.id, number: payment.number, invoiceId, invoiceNumber, amountCents, ...contractsOpened(own ? [own] : []) };
    const eventId = await this.ledger.book({
      cause: 'payment',
      causeId: payment.id,
      occurredOn: returnedOn,
      happening,
      postings: creditUnapplied({ unappliedId: payment.id, invoiceId, amountCents }),
      contractId,
      sellerId: payment.sellerId,
      takesBackEventId: application.eventId,
    });
    await this.work.insert(AppliedCredit, {
      id: newId(), paymentId: payment.id, invoiceId, amountCents: -amountCents, appliedOn: returnedOn, takesBackApplicationId: application.id, eventId, recordedByPersonId: this.work.personId,
    });
  }
}
