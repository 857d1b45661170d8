import { Inject, Injectable } from '@nestjs/common';
import { amountSought } from '../../domain/billing/amount-sought.ts';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../../platform/http/lists.ts';
import type { Listed } from '../../platform/http/lists.ts';
import type { DepositSlipLineView, DepositSlipListQuery, DepositSlipView, WholeDepositSlipView } from './deposit-slip.dto.ts';

const VIEW = `slip.id, slip.number, slip.seller_id as "sellerId", seller.name as "sellerName", slip.deposited_on as "depositedOn", slip.expected_cents as "expectedCents",
  slip.counted_cents as "countedCents", slip.counted_cents - slip.expected_cents as "differenceCents", slip.note, person.name as "depositedByName",
  parts."checkCount", parts."checkCents", parts."cashCents", slip.recorded_at as "recordedAt"`;

const FROM = `from deposit_slip as slip
  join seller on seller.department_id = slip.department_id and seller.id = slip.seller_id
  left join person on person.id = slip.deposited_by_person_id
  cross join lateral (select count(*) filter (where payment.method = 'check')::integer as "checkCount",
      coalesce(sum(line.amount_cents) filter (where payment.method = 'check'), 0)::bigint as "checkCents",
      coalesce(sum(line.amount_cents) filter (where payment.method <> 'check'), 0)::bigint as "cashCents"
    from deposit_slip_line as line join payment on payment.department_id = line.department_id and payment.id = line.payment_id
    where line.department_id = $1 and line.deposit_slip_id = slip.id) as parts`;

const SORTS = {
  depositedOn: 'slip.deposited_on',
  number: 'slip.number',
  sellerName: 'seller.name collate "und-x-icu"',
  countedCents: 'slip.counted_cents',
  differenceCents: 'slip.counted_cents - slip.expected_cents',
};

const LINES = `select line.payment_id as "paymentId", payment.number as "paymentNumber", receipt.id as "receiptId", receipt.number as "receiptNumber",
    payer.name as "payerName", payment.received_on as "receivedOn", payment.method, payment.reference, line.amount_cents as "amountCents", receipt.taken_by_name as "takenByName"
  from deposit_slip_line as line
    join payment on payment.department_id = line.department_id and payment.id = line.payment_id
    join payer on payer.department_id = line.department_id and payer.id = payment.payer_id
    left join receipt on receipt.department_id = line.department_id and receipt.payment_id = line.payment_id
  where line.department_id = $1 and line.deposit_slip_id = $2 order by payment.method desc, payment.received_on, payment.recorded_at, payment.id`;

/** A check on one of the slip's lines. */
const HOLDS_CHECK = `exists (select from deposit_slip_line as line join payment on payment.department_id = line.department_id and payment.id = line.payment_id
  where line.department_id = $1 and line.deposit_slip_id = slip.id and payment.reference ilike ?)`;

/** Deposit slips as they are shown. */
@Injectable()
export class DepositSlipViews {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: DepositSlipListQuery): Promise<Listed<DepositSlipView>> {
    const on = new Conditions('slip.department_id')
      .add('slip.id = any(?::uuid[])', query.id)
      .add('slip.seller_id = ?', query.sellerId)
      .either([`slip.number ilike ? or seller.name ilike ? or ${HOLDS_CHECK}`, contains(query.q)], ['slip.counted_cents = ? or slip.expected_cents = ?', amountSought(query.q ?? '')]);
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total ${FROM} where ${on.where}`, on.parameters);
    const sorted = { ...query, sort: query.sort ?? '-number' };
    const data = await this.work.sql<DepositSlipView>(`select ${VIEW} ${FROM} where ${on.where} ${pageOf(sorted, SORTS, 'slip.id')}`, on.parameters);
    return { data, total: count?.total ?? 0 };
  }

  async one(id: string): Promise<WholeDepositSlipView> {
    if (!isId(id)) return refuse('not-found');
    const [row] = await this.work.sql<DepositSlipView>(`select ${VIEW} ${FROM} where slip.department_id = $1 and slip.id = $2`, [id]);
    if (!row) return refuse('not-found');
    return { ...row, lines: await this.work.sql<DepositSlipLineView>(LINES, [id]) };
  }
}
