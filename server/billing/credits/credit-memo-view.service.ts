import { Inject, Injectable } from '@nestjs/common';
import { amountSought } from '../../domain/billing/amount-sought.ts';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../../platform/http/lists.ts';
import type { Listed } from '../../platform/http/lists.ts';
import type { ApplicationView } from '../payments/payment.dto.ts';
import type { CreditMemoLineView, CreditMemoListQuery, CreditMemoView, WholeCreditMemoView } from './credit-memo.dto.ts';

const LEFT = 'credit_memo.gross_cents - applied.cents - refunded.cents';
const STATE = `case when ${LEFT} > 0 then 'open' else 'used' end`;

const VIEW = `credit_memo.id, credit_memo.number, credit_memo.seller_id as "sellerId", seller.name as "sellerName", credit_memo.payer_id as "payerId",
  payer.name as "payerName", sponsor.id as "sponsorId", sponsor.name as "sponsorName", contract.id as "contractId", contract.number as "contractNumber",
  contract.title as "contractTitle", credit_memo.issued_on as "issuedOn", credit_memo.reason, credit_memo.net_cents as "netCents",
  credit_memo.tax_cents as "taxCents", credit_memo.gross_cents as "grossCents", applied.cents as "appliedCents", refunded.cents as "refundedCents",
  ${LEFT} as "unappliedCents", ${STATE} as state, credit_memo.recorded_at as "recordedAt"`;

const FROM = `from credit_memo
  join seller on seller.department_id = credit_memo.department_id and seller.id = credit_memo.seller_id
  join payer on payer.department_id = credit_memo.department_id and payer.id = credit_memo.payer_id
  left join invoice on invoice.department_id = credit_memo.department_id and invoice.id = credit_memo.invoice_id
  left join contract on contract.department_id = credit_memo.department_id and contract.id = coalesce(credit_memo.contract_id, invoice.contract_id)
  left join sponsor on sponsor.department_id = contract.department_id and sponsor.id = contract.sponsor_id
  cross join lateral (select coalesce(sum(application.amount_cents), 0) as cents from application
    where application.department_id = $1 and application.credit_memo_id = credit_memo.id) as applied
  cross join lateral (select coalesce(sum(refund.amount_cents), 0) as cents from refund
    where refund.department_id = $1 and refund.credit_memo_id = credit_memo.id) as refunded`;

const SORTS = {
  issuedOn: 'credit_memo.issued_on',
  number: 'credit_memo.number',
  payerName: 'payer.name collate "und-x-icu"',
  sponsorName: 'sponsor.name collate "und-x-icu"',
  sellerName: 'seller.name collate "und-x-icu"',
  grossCents: 'credit_memo.gross_cents',
  unappliedCents: LEFT,
};

const TOUCHES_INVOICE = `(credit_memo.invoice_id = ?
  or exists (select from credit_memo_line where credit_memo_line.department_id = $1 and credit_memo_line.credit_memo_id = credit_memo.id and credit_memo_line.invoice_id = ?)
  or exists (select from application where application.department_id = $1 and application.credit_memo_id = credit_memo.id and application.invoice_id = ?))`;

const LINES = `select line.id, line.place, line.description, line.quantity, line.unit_cents as "unitCents", line.amount_cents as "amountCents",
    line.tax_cents as "taxCents", line.invoice_id as "invoiceId", invoice.number as "invoiceNumber"
  from credit_memo_line as line left join invoice on invoice.department_id = line.department_id and invoice.id = line.invoice_id
  where line.department_id = $1 and line.credit_memo_id = $2 order by line.place`;

const APPLICATIONS = `select application.id, application.invoice_id as "invoiceId", invoice.number as "invoiceNumber", application.amount_cents as "amountCents",
    application.applied_on as "appliedOn",
    (select coalesce(contract.number, contract.title) from contract join term on term.department_id = $1 and term.contract_id = contract.id
      where contract.department_id = $1 and contract.id = invoice.contract_id and term.closed_on is not null) as "closedContract",
    exists (select 1 from application as later where later.department_id = $1 and later.takes_back_application_id = application.id) as "takenBack"
  from application join invoice on invoice.department_id = application.department_id and invoice.id = application.invoice_id
  where application.department_id = $1 and application.credit_memo_id = $2 and application.takes_back_application_id is null
  order by application.applied_on, application.recorded_at`;

/** Credit memos as they are shown, with what is left of each. */
@Injectable()
export class CreditMemoViews {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: CreditMemoListQuery): Promise<Listed<CreditMemoView>> {
    const on = new Conditions('credit_memo.department_id')
      .add('credit_memo.id = any(?::uuid[])', query.id)
      .add('credit_memo.seller_id = ?', query.sellerId)
      .add('credit_memo.payer_id = ?', query.payerId)
      .add('contract.sponsor_id = ?', query.sponsorId)
      .add('contract.id = ?', query.contractId)
      .add(TOUCHES_INVOICE, query.invoiceId)
      .add(`${STATE} = ?`, query.state)
      .either(
        ['credit_memo.number ilike ? or payer.name ilike ? or sponsor.name ilike ?', contains(query.q)],
        ['credit_memo.gross_cents = ? or credit_memo.net_cents = ?', amountSought(query.q ?? '')],
      );
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total ${FROM} where ${on.where}`, on.parameters);
    const sorted = { ...query, sort: query.sort ?? '-issuedOn' };
    const data = await this.work.sql<CreditMemoView>(`select ${VIEW} ${FROM} where ${on.where} ${pageOf(sorted, SORTS, 'credit_memo.id')}`, on.parameters);
    return { data, total: count?.total ?? 0 };
  }

  async one(id: string): Promise<WholeCreditMemoView> {
    const [row] = isId(id) ? await this.work.sql<CreditMemoView>(`select ${VIEW} ${FROM} where credit_memo.department_id = $1 and credit_memo.id = $2`, [id]) : [];
    if (!row) return refuse('not-found');
    const lines = await this.work.sql<CreditMemoLineView>(LINES, [id]);
    const applications = await this.work.sql<ApplicationView>(APPLICATIONS, [id]);
    return { ...row, lines, applications };
  }
}
