import { Inject, Injectable } from '@nestjs/common';
import { amountSought } from '../../domain/billing/amount-sought.ts';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../../platform/http/lists.ts';
import type { Listed } from '../../platform/http/lists.ts';
import type { PaymentListQuery, PaymentView } from './payment.dto.ts';

/** The fee for a check that came back, passed on to its payer. */
const CHARGE = (column: 'id' | 'number'): string => `(select invoice.${column} from invoice join invoice_line as line on line.department_id = $1 and line.invoice_id = invoice.id
    where invoice.department_id = $1 and invoice.kind = 'charge' and invoice.payer_id = payment.payer_id and payment_return.id is not null
      and line.traced_to->>'returnedPaymentId' = payment.id::text limit 1)`;

const VIEW = `payment.id, payment.number, payment.seller_id as "sellerId", seller.name as "sellerName", payment.payer_id as "payerId",
  payer.name as "payerName", sponsor.name as "sponsorName", payment.received_on as "receivedOn", payment.method, payment.reference, payment.amount_cents as "amountCents",
  payment.note, payment.recorded_at as "recordedAt", receipt.id as "receiptId", receipt.number as "receiptNumber", receipt.taken_by_person_id as "takenByPersonId",
  coalesce(payment.drawer = 'undepositedReceipts', false) and slip.id is null and payment_return.id is null as "isInDrawer",
  slip.id as "depositSlipId", slip.number as "depositSlipNumber", standing.applied_cents as "appliedCents", standing.refunded_cents as "refundedCents",
  standing.left_cents as "unappliedCents", payment_return.kind as "returnKind", payment_return.returned_on as "returnedOn", payment_return.reason as "returnReason",
  payment_return.bank_fee_cents as "bankFeeCents", ${CHARGE('id')} as "chargeInvoiceId", ${CHARGE('number')} as "chargeInvoiceNumber",
  (select coalesce(jsonb_agg(jsonb_build_object('id', refund.id, 'amountCents', refund.amount_cents, 'refundedOn', refund.refunded_on, 'method', refund.method,
      'reference', refund.reference) order by refund.refunded_on, refund.recorded_at), '[]')
     from refund where refund.department_id = $1 and refund.payment_id = payment.id) as refunds,
  (select coalesce(jsonb_agg(jsonb_build_object('id', application.id, 'invoiceId', application.invoice_id, 'invoiceNumber', invoice.number,
      'amountCents', application.amount_cents, 'appliedOn', application.applied_on,
      'closedContract', (select coalesce(contract.number, contract.title) from contract join term on term.department_id = $1 and term.contract_id = contract.id
        where contract.department_id = $1 and contract.id = invoice.contract_id and term.closed_on is not null),
      'takenBack', exists (select 1 from application as later where later.department_id = $1 and later.takes_back_application_id = application.id))
      order by application.applied_on, application.recorded_at), '[]')
     from application join invoice on invoice.department_id = application.department_id and invoice.id = application.invoice_id
    where application.department_id = $1 and application.payment_id = payment.id and application.takes_back_application_id is null) as applications`;

const FROM = `from payment
  join seller on seller.department_id = payment.department_id and seller.id = payment.seller_id
  join payer on payer.department_id = payment.department_id and payer.id = payment.payer_id
  join credit_standing as standing on standing.department_id = payment.department_id and standing.credit_id = payment.id
  left join payment_return on payment_return.department_id = payment.department_id and payment_return.payment_id = payment.id
  left join sponsor on sponsor.department_id = payer.department_id and sponsor.id = payer.sponsor_id
  left join receipt on receipt.department_id = payment.department_id and receipt.payment_id = payment.id
  left join deposit_slip_line as slip_line on slip_line.department_id = payment.department_id and slip_line.payment_id = payment.id
  left join deposit_slip as slip on slip.department_id = payment.department_id and slip.id = slip_line.deposit_slip_id`;

const SORTS = {
  receivedOn: 'payment.received_on',
  number: 'payment.number',
  payerName: 'payer.name collate "und-x-icu"',
  sellerName: 'seller.name collate "und-x-icu"',
  amountCents: 'payment.amount_cents',
  unappliedCents: 'standing.left_cents',
  method: 'payment.method',
};

/** Payments as they are shown, with what is left of each. */
@Injectable()
export class PaymentViews {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: PaymentListQuery): Promise<Listed<PaymentView>> {
    const on = new Conditions('payment.department_id')
      .add('payment.id = any(?::uuid[])', query.id)
      .add('payment.seller_id = ?', query.sellerId)
      .add('payment.payer_id = ?', query.payerId)
      .add('payment.method = ?', query.method)
      .add('exists (select 1 from application where application.department_id = $1 and application.payment_id = payment.id and application.invoice_id = ?)', query.invoiceId)
      .either(
        ['payment.number ilike ? or payment.reference ilike ? or payer.name ilike ? or sponsor.name ilike ?', contains(query.q)],
        ['payment.amount_cents = ?', amountSought(query.q ?? '')],
      );
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total ${FROM} where ${on.where}`, on.parameters);
    const sorted = { ...query, sort: query.sort ?? '-receivedOn' };
    const data = await this.work.sql<PaymentView>(`select ${VIEW} ${FROM} where ${on.where} ${pageOf(sorted, SORTS, 'payment.id')}`, on.parameters);
    return { data, total: count?.total ?? 0 };
  }

  async one(id: string): Promise<PaymentView> {
    if (!isId(id)) return refuse('not-found');
    const [row] = await this.work.sql<PaymentView>(`select ${VIEW} ${FROM} where payment.department_id = $1 and payment.id = $2`, [id]);
    return row ?? refuse('not-found');
  }
}
