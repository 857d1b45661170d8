import { Inject, Injectable } from '@nestjs/common';
import { checkDeposit, overOrShort, receiptsDeposited } from '../../domain/billing/deposit.ts';
import type { Day } from '../../domain/day.ts';
import type { Cents } from '../../domain/money.ts';
import { addCents, centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import { LedgerService } from '../../ledger/ledger.service.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Seller } from '../../sponsorship/seller.entity.ts';
import { DocumentLocks } from '../document-locks.ts';
import { DocumentNumbers } from '../document-numbers.service.ts';
import { DepositSlipLine } from './deposit-slip-line.entity.ts';
import type { DepositSlipDto } from './deposit-slip.dto.ts';
import { DepositSlip } from './deposit-slip.entity.ts';
import { Takers } from './takers.service.ts';

interface ToDeposit {
  id: string;
  number: string;
  sellerId: string;
  amountCents: Cents;
  receivedOn: Day;
  isDeposited: boolean;
  isInDrawer: boolean;
}

const TO_DEPOSIT = `select payment.id, payment.number, payment.seller_id as "sellerId", payment.amount_cents as "amountCents", payment.received_on as "receivedOn",
    exists (select from deposit_slip_line as line where line.department_id = $1 and line.payment_id = payment.id) as "isDeposited",
    coalesce(payment.drawer = 'undepositedReceipts', false) and not exists (select from payment_return
      where payment_return.department_id = $1 and payment_return.payment_id = payment.id) as "isInDrawer"
  from payment where payment.department_id = $1 and payment.id = any($2::uuid[]) order by payment.received_on, payment.recorded_at, payment.id`;

/** Takes what lies in the drawer of one seller of record to the bank. A deposit is final; there is no way back but another event. */
@Injectable()
export class DepositSlipService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(LedgerService) private readonly ledger: LedgerService,
    @Inject(DocumentLocks) private readonly locks: DocumentLocks,
    @Inject(DocumentNumbers) private readonly numbers: DocumentNumbers,
    @Inject(Takers) private readonly takers: Takers,
  ) {}

  /**
   * @throws Refused `unknown-seller`, `seller-keeps-own-books`, `nothing-to-deposit`, `unknown-payment`, `deposit-crosses-sellers`,
   *   `payment-deposited-already`, `payment-not-in-drawer`, `taker-may-not-post`, `over-or-short-without-note`, `deposited-before-received`
   */
  async deposit(form: DepositSlipDto): Promise<string> {
    const seller = (await this.work.first(Seller, { id: form.sellerId })) ?? refuse('unknown-seller');
    if (!seller.keepsBooksHere) refuse('seller-keeps-own-books');
    const payments = await this.taken(form.paymentIds, seller.id);
    const expectedCents = addCents(...payments.map((payment) => payment.amountCents));
    const countedCents = centsOf(form.countedCents);
    const depositedOn = form.depositedOn as Day;
    checkDeposit({ depositedOn, expectedCents, countedCents, note: form.note ?? null, receivedOn: payments.map((payment) => payment.receivedOn) });
    const id = form.id ?? newId();
    const numbered = await this.numbers.next('depositSlip', seller, depositedOn);
    const eventId = await this.ledger.book({
      cause: 'depositSlip',
      causeId: id,
      occurredOn: depositedOn,
      happening: { kind: 'receiptsDeposited', depositSlipId: id, number: numbered.number, expectedCents, countedCents, differenceCents: overOrShort(expectedCents, countedCents) },
      postings: receiptsDeposited(expectedCents, countedCents),
      sellerId: seller.id,
    });
    const note = form.note ?? null;
    await this.work.insert(DepositSlip, { ...numbered, id, sellerId: seller.id, depositedOn, expectedCents, countedCents, note, eventId, depositedByPersonId: this.work.personId });
    await this.work.insert(DepositSlipLine, payments.map(({ id: paymentId, amountCents }) => ({ depositSlipId: id, paymentId, amountCents })));
    return id;
  }

  /** The payments, locked and then looked at: all of this seller, all in the drawer, none taken by who deposits. */
  private async taken(paymentIds: readonly string[], sellerId: string): Promise<ToDeposit[]> {
    const ids = [...new Set(paymentIds)];
    if (ids.length === 0) refuse('nothing-to-deposit');
    await this.locks.take(ids);
    const payments = await this.work.sql<ToDeposit>(TO_DEPOSIT, [ids]);
    if (payments.length < ids.length) refuse('unknown-payment');
    for (const { number, sellerId: ofSeller, isDeposited, isInDrawer } of payments) {
      if (ofSeller !== sellerId) refuse('deposit-crosses-sellers', { number });
      if (isDeposited) refuse('payment-deposited-already');
      if (!isInDrawer) refuse('payment-not-in-drawer', { number });
    }
    await this.takers.check(ids);
    return payments;
  }
}
