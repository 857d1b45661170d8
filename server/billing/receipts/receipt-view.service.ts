import { Inject, Injectable } from '@nestjs/common';
import { mayUse } from '../../domain/access/rights.ts';
import type { Role } from '../../domain/access/rights.ts';
import { amountSought } from '../../domain/billing/amount-sought.ts';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../../platform/http/lists.ts';
import type { Listed } from '../../platform/http/lists.ts';
import type { OpenPayerView, ReceiptListQuery, ReceiptPartiesView, ReceiptView } from './receipt.dto.ts';

const STATE = `case when slip.id is not null then 'deposited'
  when exists (select from payment_return where payment_return.department_id = $1 and payment_return.payment_id = payment.id) then 'takenOut' else 'inTheDrawer' end`;

const VIEW = `receipt.id, receipt.number, receipt.seller_id as "sellerId", seller.name as "sellerName", payment.payer_id as "payerId", payer.name as "payerName", sponsor.name as "sponsorName",
  receipt.payment_id as "paymentId", payment.number as "paymentNumber", receipt.from_whom as "fromWhom", receipt.what_for as "whatFor",
  receipt.taken_on as "takenOn", receipt.taken_by_name as "takenByName", payment.method, payment.reference, payment.amount_cents as "amountCents",
  ${STATE} as state, slip.id as "depositSlipId", slip.number as "depositSlipNumber", receipt.recorded_at as "recordedAt"`;

const FROM = `from receipt
  join payment on payment.department_id = receipt.department_id and payment.id = receipt.payment_id
  join seller on seller.department_id = receipt.department_id and seller.id = receipt.seller_id
  join payer on payer.department_id = receipt.department_id and payer.id = payment.payer_id
  left join sponsor on sponsor.department_id = payer.department_id and sponsor.id = payer.sponsor_id
  left join deposit_slip_line as slip_line on slip_line.department_id = receipt.department_id and slip_line.payment_id = receipt.payment_id
  left join deposit_slip as slip on slip.department_id = receipt.department_id and slip.id = slip_line.deposit_slip_id`;

const SORTS = {
  takenOn: 'receipt.taken_on',
  number: 'receipt.number',
  fromWhom: 'receipt.from_whom collate "und-x-icu"',
  sellerName: 'seller.name collate "und-x-icu"',
  amountCents: 'payment.amount_cents',
  takenByName: 'receipt.taken_by_name collate "und-x-icu"',
};

const OPEN_PAYERS = `select payer.id, payer.name, sponsor.name as "sponsorName", count(standing.invoice_id)::integer as "openCount",
    coalesce(sum(standing.balance_cents), 0)::bigint as "openCents"
  from payer left join sponsor on sponsor.department_id = payer.department_id and sponsor.id = payer.sponsor_id
    left join invoice on invoice.department_id = payer.department_id and invoice.payer_id = payer.id and ($2::uuid is null or invoice.seller_id = $2)
    left join invoice_standing as standing on standing.department_id = invoice.department_id and standing.invoice_id = invoice.id and standing.balance_cents > 0
  where payer.department_id = $1 group by payer.department_id, payer.id, sponsor.name order by payer.name collate "und-x-icu", payer.id limit 5000`;

/** Receipts as they are shown. Who may not see money sees those of their own hand. */
@Injectable()
export class ReceiptViews {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: ReceiptListQuery, roles: readonly Role[]): Promise<Listed<ReceiptView>> {
    const on = this.seenBy(roles)
      .add('receipt.id = any(?::uuid[])', query.id)
      .add('receipt.seller_id = ?', query.sellerId)
      .add('payment.payer_id = ?', query.payerId)
      .add(`${STATE} = ?`, query.state)
      .either(
        ['receipt.number ilike ? or payment.reference ilike ? or payer.name ilike ? or sponsor.name ilike ? or receipt.from_whom ilike ?', contains(query.q)],
        ['payment.amount_cents = ?', amountSought(query.q ?? '')],
      );
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total ${FROM} where ${on.where}`, on.parameters);
    const sorted = { ...query, sort: query.sort ?? '-number' };
    const data = await this.work.sql<ReceiptView>(`select ${VIEW} ${FROM} where ${on.where} ${pageOf(sorted, SORTS, 'receipt.id')}`, on.parameters);
    return { data, total: count?.total ?? 0 };
  }

  async one(id: string, roles: readonly Role[]): Promise<ReceiptView> {
    if (!isId(id)) return refuse('not-found');
    const on = this.seenBy(roles).add('receipt.id = ?', id);
    const [row] = await this.work.sql<ReceiptView>(`select ${VIEW} ${FROM} where ${on.where}`, on.parameters);
    return row ?? refuse('not-found');
  }

  /** The names that a receipt is written with, for those who see no contracts. */
  async parties(): Promise<ReceiptPartiesView> {
    const order = 'order by name collate "und-x-icu", id limit 5000';
    const sellers = await this.work.sql<{ id: string; name: string }>(`select id, name from seller where department_id = $1 and keeps_books_here ${order}`);
    const payers = await this.work.sql<{ id: string; name: string }>(`select id, name from payer where department_id = $1 ${order}`);
    return { sellers, payers };
  }

  /** Every payer, with how many of their invoices are open with a seller, or with all, and how much that is. */
  async openPayers(sellerId?: string): Promise<Listed<OpenPayerView>> {
    const data = await this.work.sql<OpenPayerView>(OPEN_PAYERS, [sellerId ?? null]);
    return { data, total: data.length };
  }

  private seenBy(roles: readonly Role[]): Conditions {
    return new Conditions('receipt.department_id').add('receipt.taken_by_person_id = ?', mayUse(roles, 'see money') ? null : this.work.personId);
  }
}
