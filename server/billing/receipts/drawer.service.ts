import { Inject, Injectable } from '@nestjs/common';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { DrawerLineView, DrawerView } from './deposit-slip.dto.ts';

const UNDEPOSITED = `where payment.department_id = $1 and payment.drawer = 'undepositedReceipts' and ($2::uuid is null or payment.seller_id = $2)
    and not exists (select from deposit_slip_line as line where line.department_id = $1 and line.payment_id = payment.id)
    and not exists (select from payment_return where payment_return.department_id = $1 and payment_return.payment_id = payment.id)`;

const LINES = `select payment.id, payment.number, payment.seller_id as "sellerId", seller.name as "sellerName", payer.name as "payerName",
    payment.received_on as "receivedOn", payment.method, payment.reference, payment.amount_cents as "amountCents",
    receipt.id as "receiptId", receipt.number as "receiptNumber", receipt.from_whom as "fromWhom", receipt.taken_by_name as "takenByName",
    receipt.taken_by_person_id as "takenByPersonId"
  from payment
    join seller on seller.department_id = payment.department_id and seller.id = payment.seller_id
    join payer on payer.department_id = payment.department_id and payer.id = payment.payer_id
    left join receipt on receipt.department_id = payment.department_id and receipt.payment_id = payment.id
  ${UNDEPOSITED}
  order by seller.name collate "und-x-icu", payment.received_on, payment.recorded_at, payment.id limit 1000`;

const SUMS = `select count(*) as total, coalesce(sum(payment.amount_cents), 0)::bigint as "totalCents", min(payment.received_on) as "oldestOn" from payment ${UNDEPOSITED}`;

/** What was taken in and is not at the bank yet. */
@Injectable()
export class DrawerService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** By seller of record, the oldest first; the first thousand, and the sum of all. */
  async list(sellerId?: string): Promise<DrawerView> {
    const data = await this.work.sql<DrawerLineView>(LINES, [sellerId ?? null]);
    const [sums] = await this.work.sql<Omit<DrawerView, 'data'>>(SUMS, [sellerId ?? null]);
    return { data, ...sums! };
  }
}
