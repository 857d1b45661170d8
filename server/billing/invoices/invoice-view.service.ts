import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { amountSought } from '../../domain/billing/amount-sought.ts';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../../platform/http/lists.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { WAITING_WRITE_OFFS } from '../write-offs/waiting-write-offs.ts';
import type { WaitingWriteOffView } from '../write-offs/write-off.dto.ts';
import type { InvoiceApplicationView, InvoiceDiscountView, InvoiceLineView, InvoiceListQuery, InvoiceView, WholeInvoiceView } from './invoice.dto.ts';

/** `$2` is today; the same order of questions as the rule `invoiceState`. */
const STATE = `case when standing.is_void then 'void'
  when standing.balance_cents = 0 and standing.written_off_cents > 0 then 'writtenOff'
  when standing.balance_cents = 0 then 'paid'
  when invoice.due_on < $2::date then 'overdue'
  when standing.applied_cents > 0 then 'partlyPaid' else 'open' end`;

const BALANCE = 'standing.balance_cents';

const VIEW = `invoice.id, invoice.kind, invoice.number, invoice.fiscal_year as "fiscalYear", invoice.series_number as "seriesNumber",
  invoice.seller_id as "sellerId", seller.name as "sellerName", invoice.payer_id as "payerId", payer.name as "payerName",
  invoice.sponsor_id as "sponsorId", sponsor.name as "sponsorName", invoice.contract_id as "contractId", contract.number as "contractNumber",
  contract.title as "contractTitle", invoice.term_id as "termId", invoice.purchase_order_number as "purchaseOrderNumber",
  invoice.issued_on as "issuedOn", invoice.due_on as "dueOn", invoice.net_cents as "netCents", invoice.tax_basis_points as "taxBasisPoints",
  invoice.tax_cents as "taxCents", invoice.gross_cents as "grossCents", invoice.recorded_at as "recordedAt", ${STATE} as state,
  standing.applied_cents as "appliedCents", standing.discount_cents as "discountCents", standing.written_off_cents as "writtenOffCents",
  ${BALANCE} as "balanceCents", invoice_void.voided_on as "voidedOn", invoice_void.reason as "voidReason"`;

const FROM = `from invoice
  join seller on seller.department_id = invoice.department_id and seller.id = invoice.seller_id
  join payer on payer.department_id = invoice.department_id and payer.id = invoice.payer_id
  left join sponsor on sponsor.department_id = invoice.department_id and sponsor.id = invoice.sponsor_id
  left join contract on contract.department_id = invoice.department_id and contract.id = invoice.contract_id
  left join invoice_void on invoice_void.department_id = invoice.department_id and invoice_void.invoice_id = invoice.id
  join invoice_standing as standing on standing.department_id = invoice.department_id and standing.invoice_id = invoice.id`;

/** The number of a check, or another reference, of a payment that pays it. */
const PAID_BY_REFERENCE = `exists (select from application as used join payment on payment.department_id = used.department_id and payment.id = used.payment_id
  where used.department_id = $1 and used.invoice_id = invoice.id and payment.reference ilike ?)`;

const AMOUNTS = `invoice.gross_cents = ? or invoice.net_cents = ? or ${BALANCE} = ?`;

const SORTS = {
  issuedOn: 'invoice.issued_on',
  number: 'invoice.number',
  dueOn: 'invoice.due_on',
  grossCents: 'invoice.gross_cents',
  balanceCents: BALANCE,
  state: STATE,
  payerName: 'payer.name collate "und-x-icu"',
  sponsorName: 'sponsor.name collate "und-x-icu"',
  sellerName: 'seller.name collate "und-x-icu"',
};

const LINES = `select id, place, description, quantity, unit_cents as "unitCents", amount_cents as "amountCents", tax_cents as "taxCents",
  commitment_id as "commitmentId",
  traced_to as "tracedTo" from invoice_line where department_id = $1 and invoice_id = $2 order by place`;

/** A read's id is that of its first log entry. */
const NIGHTS_OF_READS = `select entry.id as "readId", night.id, night.held_on as "heldOn", night.title
  from log_entry as entry join night on night.department_id = entry.department_id and night.id = entry.night_id
  where entry.department_id = $1 and entry.id = any($2::uuid[]) order by night.held_on, night.id`;

const APPLICATIONS = `select application.id, application.payment_id as "paymentId", payment.number as "paymentNumber",
    application.credit_memo_id as "creditMemoId", credit_memo.number as "creditMemoNumber",
    application.amount_cents as "amountCents", application.applied_on as "appliedOn",
    exists (select 1 from application as later where later.department_id = $1 and later.takes_back_application_id = application.id) as "takenBack",
    exists (select from application as later join payment_return as back on back.department_id = later.department_id and back.payment_id = application.payment_id
      where later.department_id = $1 and later.takes_back_application_id = application.id and back.kind = 'returned' and later.applied_on = back.returned_on) as "cameBack"
  from application left join payment on payment.department_id = application.department_id and payment.id = application.payment_id
    left join credit_memo on credit_memo.department_id = application.department_id and credit_memo.id = application.credit_memo_id
  where application.department_id = $1 and application.invoice_id = $2 and application.takes_back_application_id is null
  order by application.applied_on, application.recorded_at`;

const DISCOUNTS = `select id, amount_cents as "amountCents", tax_cents as "taxCents", taken_on as "takenOn", reason from invoice_discount
  where department_id = $1 and invoice_id = $2 order by taken_on, recorded_at`;

/** Invoices as they are shown, their state worked out on reading. */
@Injectable()
export class InvoiceViews {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async list(query: InvoiceListQuery): Promise<Listed<InvoiceView>> {
    const on = new Conditions('invoice.department_id')
      .add('?::date is not null', await this.departments.today())
      .add('invoice.id = any(?::uuid[])', query.id)
      .add('invoice.seller_id = ?', query.sellerId)
      .add('invoice.payer_id = ?', query.payerId)
      .add('invoice.contract_id = ?', query.contractId)
      .add('invoice.sponsor_id = ?', query.sponsorId)
      .add(`${STATE} = ?`, query.state)
      .when(query.late, `${STATE} = 'overdue'`)
      .when(query.unpaid, `${STATE} in ('open', 'partlyPaid', 'overdue')`)
      .either([`invoice.number ilike ? or payer.name ilike ? or sponsor.name ilike ? or ${PAID_BY_REFERENCE}`, contains(query.q)], [AMOUNTS, amountSought(query.q ?? '')]);
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total ${FROM} where ${on.where}`, on.parameters);
    const sorted = { ...query, sort: query.sort ?? '-issuedOn' };
    const data = await this.work.sql<InvoiceView>(`select ${VIEW} ${FROM} where ${on.where} ${pageOf(sorted, SORTS, 'invoice.id')}`, on.parameters);
    return { data, total: count?.total ?? 0 };
  }

  async one(id: string): Promise<WholeInvoiceView> {
    if (!isId(id)) return refuse('not-found');
    const today = await this.departments.today();
    const [row] = await this.work.sql<InvoiceView>(`select ${VIEW} ${FROM} where invoice.department_id = $1 and $2::date is not null and invoice.id = $3`, [today, id]);
    if (!row) return refuse('not-found');
    const lines = await this.traced(await this.work.sql<LineRow>(LINES, [id]));
    const applications = await this.work.sql<InvoiceApplicationView>(APPLICATIONS, [id]);
    const discounts = await this.work.sql<InvoiceDiscountView>(DISCOUNTS, [id]);
    const [waitingWriteOff = null] = await this.work.sql<WaitingWriteOffView>(`${WAITING_WRITE_OFFS} and asked.invoice_id = $2`, [id]);
    return { ...row, lines, applications, discounts, waitingWriteOff };
  }
  /** Each line with the nights of the reads it bills. */
  private async traced(lines: readonly LineRow[]): Promise<InvoiceLineView[]> {
    const readIds = lines.flatMap(readsOf);
    const nights = readIds.length === 0 ? [] : await this.work.sql<NightOfRead>(NIGHTS_OF_READS, [readIds]);
    return lines.map((line) => {
      const own = new Set(readsOf(line));
      const byNight = new Map<string, InvoiceLineView['nights'][number]>();
      for (const { readId, id, heldOn, title } of nights) {
        if (own.has(readId)) byNight.set(id, { id, heldOn, title, reads: (byNight.get(id)?.reads ?? 0) + 1 });
      }
      return { ...line, nights: [...byNight.values()] };
    });
  }
}

type LineRow = Omit<InvoiceLineView, 'nights'>;

interface NightOfRead {
  readId: string;
  id: string;
  heldOn: string;
  title: string | null;
}

const readsOf = ({ tracedTo }: LineRow): string[] => ((tracedTo['readIds'] ?? []) as string[]).filter(isId);
