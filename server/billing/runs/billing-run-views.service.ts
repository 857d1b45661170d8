import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Conditions, pageOf } from '../../platform/http/lists.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { totalsOf } from './billing-preview.service.ts';
import type { BillingRunListQuery, BillingRunView, RunLineView, WholeBillingRunView } from './billing-run.dto.ts';
import { BillingRuns } from './billing-runs.service.ts';

const VIEW = `billing_run.id, billing_run.through_day as "throughDay", billing_run.issued_on as "issuedOn", billing_run.seller_id as "sellerId",
  seller.name as "sellerName", billing_run.recorded_at as "startedAt", person.name as "startedByName", cardinality(billing_run.contract_ids) as contracts,
  line.done, line.issued, line.done - line.issued as skipped, line.net_cents as "netCents", line.gross_cents as "grossCents",
  line.done = cardinality(billing_run.contract_ids) as "isFinished"`;

const FROM = `from billing_run
  left join seller on seller.department_id = billing_run.department_id and seller.id = billing_run.seller_id
  left join person on person.id = billing_run.started_by_person_id
  cross join lateral (select count(*) as done, count(*) filter (where outcome = 'issued') as issued,
      coalesce(sum(net_cents), 0) as net_cents, coalesce(sum(gross_cents), 0) as gross_cents
    from billing_run_line where billing_run_line.department_id = $1 and billing_run_line.billing_run_id = billing_run.id) as line`;

const SORTS = { startedAt: 'billing_run.recorded_at', throughDay: 'billing_run.through_day', issuedOn: 'billing_run.issued_on', grossCents: 'line.gross_cents' };

const LINES = `select line.id, line.contract_id as "contractId", contract.number as "contractNumber", contract.title as "contractTitle", sponsor.name as "sponsorName",
    contract.seller_id as "sellerId", seller.name as "sellerName", line.outcome, line.invoice_id as "invoiceId", invoice.number as "invoiceNumber",
    line.net_cents as "netCents", line.gross_cents as "grossCents", line.why
  from billing_run_line as line
    join contract on contract.department_id = line.department_id and contract.id = line.contract_id
    join sponsor on sponsor.department_id = contract.department_id and sponsor.id = contract.sponsor_id
    join seller on seller.department_id = contract.department_id and seller.id = contract.seller_id
    left join invoice on invoice.department_id = line.department_id and invoice.id = line.invoice_id
  where line.department_id = $1 and line.billing_run_id = $2
  order by line.outcome, invoice.series_number, sponsor.name collate "und-x-icu", line.contract_id`;

/** Billing runs as they are shown: how far they have come is counted on reading. */
@Injectable()
export class BillingRunViews {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(BillingRuns) private readonly runs: BillingRuns,
  ) {}

  async list(query: BillingRunListQuery): Promise<Listed<BillingRunView>> {
    const on = new Conditions('billing_run.department_id').add('billing_run.id = any(?::uuid[])', query.id).add('billing_run.seller_id = ?', query.sellerId);
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from billing_run where ${on.where}`, on.parameters);
    const sorted = { ...query, sort: query.sort ?? '-startedAt' };
    const driven = this.runs.drivenNow();
    const rows = await this.work.sql<BillingRunView>(`select ${VIEW} ${FROM} where ${on.where} ${pageOf(sorted, SORTS, 'billing_run.id')}`, on.parameters);
    return { data: rows.map((row) => seen(row, driven)), total: count?.total ?? 0 };
  }

  async one(id: string): Promise<WholeBillingRunView> {
    if (!isId(id)) return refuse('not-found');
    const driven = this.runs.drivenNow();
    const [row] = await this.work.sql<BillingRunView>(`select ${VIEW} ${FROM} where billing_run.department_id = $1 and billing_run.id = $2`, [id]);
    if (!row) return refuse('not-found');
    const lines = await this.work.sql<RunLineView & { sellerId: string }>(LINES, [id]);
    return { ...seen(row, driven), lines, totals: totalsOf(lines.filter((line) => line.outcome === 'issued')) };
  }
}

/** @param driven taken before the row was read: a run that ends in between was running when it was read */
function seen(row: BillingRunView, driven: ReadonlySet<string>): BillingRunView {
  return { ...row, isRunning: !row.isFinished && driven.has(row.id) };
}
