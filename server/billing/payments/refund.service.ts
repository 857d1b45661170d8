import { Inject, Injectable } from '@nestjs/common';
import { checkNotBefore } from '../../domain/billing/not-before.ts';
import { checkNotOfGoods, creditRefunded } from '../../domain/billing/payment.ts';
import type { Day } from '../../domain/day.ts';
import { amountText, centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import type { MemoPart } from '../../domain/sponsorship/position.ts';
import { LedgerService } from '../../ledger/ledger.service.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
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
  termId: string | null;
  method: string | null;
}

const CREDIT = {
  payment: `select payment.number, payment.seller_id as "sellerId", payment.method, received.contract_id as "contractId", null as "termId" from payment
      left join ledger_event as received on received.department_id = $1 and received.id = payment.event_id
    where payment.department_id = $1 and payment.id = $2`,
  creditMemo: `select credit_memo.number, credit_memo.seller_id as "sellerId", null as method, coalesce(credit_memo.contract_id, issued.contract_id) as "contractId", coalesce(credit_memo.term_id, issued.term_id) as "termId" from credit_memo
      left join ledger_event as issued on issued.department_id = $1 and issued.id = credit_memo.event_id
    where credit_memo.department_id = $1 and credit_memo.id = $2`,
};

interface Credited {
  id: string;
  number: string;
  balanceCents: number;
  writtenOffCents: number;
}

/** What a memo credits, and what of it nobody paid. */
const CREDITED = `select invoice.id, invoice.number, standing.balance_cents as "balanceCents", standing.written_off_cents as "writtenOffCents"
  from invoice join invoice_standing as standing on standing.department_id = $1 and standing.invoice_id = invoice.id
  where invoice.department_id = $1 and invoice.id in (
    select invoice_id from credit_memo_line where department_id = $1 and credit_memo_id = $2
    union all select invoice_id from credit_memo where department_id = $1 and id = $2)
  order by invoice.number`;

/** Pays back what is left of a payment or of a credit memo. */
@Injectable()
export class Refunds {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(LedgerService) private readonly ledger: LedgerService,
    @Inject(DocumentLocks) private readonly locks: DocumentLocks,
    @Inject(Standings) private readonly standings: Standings,
    @Inject(Takers) private readonly takers: Takers,
    @Inject(TermLedger) private readonly terms: TermLedger,
  ) {}

  /** @throws Refused `not-found`, `before-its-cause`, `memo-of-unpaid-invoice`, `opening-stays`, `taker-may-not-post`, `credit-of-goods`, `more-than-unapplied` */
  async refund(of: 'payment' | 'creditMemo', creditId: string, form: RefundDto): Promise<string> {
    if (!isId(creditId)) return refuse('not-found');
    const [credit] = await this.work.sql<Credit>(CREDIT[of], [creditId]);
    if (!credit) return refuse('not-found');
    if (credit.method === 'opening') refuse('opening-stays');
    const credited = await this.work.sql<Credited>(CREDITED, [creditId]);
    await this.locks.take([creditId, ...credited.map((invoice) => invoice.id)]);
    checkPaid(await this.work.sql<Credited>(CREDITED, [creditId]));
    checkNotBefore(form.refundedOn as Day, await this.standings.causes([creditId]));
    await this.takers.check([creditId]);
    const { leftCents, appliedCents, refundedCents } = await this.standings.credit(creditId);
    const amountCents = centsOf(form.amountCents);
    checkNotOfGoods(await this.partsOf(creditId, credit.termId), appliedCents + refundedCents, amountCents);
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

  /** What a memo credited, as the books have it: they never change it afterwards. */
  private async partsOf(memoId: string, termId: string | null): Promise<readonly MemoPart[]> {
    if (termId === null) return [];
    const position = await this.terms.position(termId);
    return position?.memos.find((memo) => memo.memoId === memoId)?.parts ?? [];
  }
}

/** A memo stands for money only where the invoice it credits was paid: what nobody paid is not given back. */
function checkPaid(credited: readonly Credited[]): void {
  const unpaid = credited.filter((invoice) => invoice.balanceCents > 0 || invoice.writtenOffCents > 0);
  if (unpaid.length === 0) return;
  refuse('memo-of-unpaid-invoice', { invoices: unpaid.map(({ number, balanceCents, writtenOffCents }) => `${number} (${amountText(centsOf(balanceCents + writtenOffCents))})`).join(', ') });
}
