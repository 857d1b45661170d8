import { Inject, Injectable } from '@nestjs/common';
import { creditRefunded } from '../../domain/billing/payment.ts';
import type { Day } from '../../domain/day.ts';
import { centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import { LedgerService } from '../../ledger/ledger.service.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { DocumentLocks } from '../document-locks.ts';
import { Takers } from '../receipts/takers.service.ts';
import { Standings } from '../standings.service.ts';
import type { PaymentHappening } from './payment-happening.ts';
import type { RefundDto } from './payment-return.dto.ts';
import { Refund } from './refund.entity.ts';

interface Credit {
  number: string;
  sellerId: string;
  contractId: string | null;
  method: string | null;
}

const CREDIT = {
  payment: `select payment.number, payment.seller_id as "sellerId", payment.method, received.contract_id as "contractId" from payment
      left join ledger_event as received on received.department_id = $1 and received.id = payment.event_id
    where payment.department_id = $1 and payment.id = $2`,
  creditMemo: `select credit_memo.number, credit_memo.seller_id as "sellerId", null as method, coalesce(credit_memo.contract_id, issued.contract_id) as "contractId" from credit_memo
      left join ledger_event as issued on issued.department_id = $1 and issued.id = credit_memo.event_id
    where credit_memo.department_id = $1 and credit_memo.id = $2`,
};

/** Pays back what is left of a payment or of a credit memo. */
@Injectable()
export class Refunds {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(LedgerService) private readonly ledger: LedgerService,
    @Inject(DocumentLocks) private readonly locks: DocumentLocks,
    @Inject(Standings) private readonly standings: Standings,
    @Inject(Takers) private readonly takers: Takers,
  ) {}

  /** @throws Refused `not-found`, `opening-stays`, `taker-may-not-post`, `more-than-unapplied` */
  async refund(of: 'payment' | 'creditMemo', creditId: string, form: RefundDto): Promise<string> {
    if (!isId(creditId)) return refuse('not-found');
    const [credit] = await this.work.sql<Credit>(CREDIT[of], [creditId]);
    if (!credit) return refuse('not-found');
    if (credit.method === 'opening') refuse('opening-stays');
    await this.locks.take([creditId]);
    await this.takers.check([creditId]);
    const { leftCents } = await this.standings.credit(creditId);
    const amountCents = centsOf(form.amountCents);
    const happening: PaymentHappening = { kind: 'creditRefunded', creditId, number: credit.number, isMemo: of === 'creditMemo', method: form.method, amountCents };
    const eventId = await this.ledger.book({
      cause: of,
      causeId: creditId,
      occurredOn: form.refundedOn as Day,
      happening,
      postings: creditRefunded(creditId, amountCents, leftCents),
      contractId: credit.contractId,
      sellerId: credit.sellerId,
    });
    const whose = of === 'payment' ? { paymentId: creditId } : { creditMemoId: creditId };
    const { refundedOn, method, reference } = form;
    const [row] = await this.work.insert(Refund, { ...whose, amountCents, refundedOn, method, reference: reference ?? null, eventId, recordedByPersonId: this.work.personId });
    return row!.id;
  }
}
