import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { AGING_BUCKETS, ageInDays, agingOf } from '../../domain/billing/aging.ts';
import type { AgingBasis, OpenDocument } from '../../domain/billing/aging.ts';
import type { Day } from '../../domain/day.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { ReportScope } from './report-scope.service.ts';
import type { AgingLine, AgingQuery, AgingView } from './report.dto.ts';

interface Owing {
  sponsorId: string | null;
  sponsorName: string | null;
  payerId: string;
  payerName: string;
}

interface OpenInvoice extends Owing, OpenDocument {
  number: string;
}

interface OpenCredit extends Owing {
  cents: number;
}

/** What an account comes to by one of its keys, at the end of `$3`; what is settled is left out. */
const balances = (account: string, key: string) => `
  select ${key} as key, sum(case when to_account = '${account}' then amount else -amount end) as cents from posting
   where department_id = $1 and seller_id = $2 and journal = 'money' and effective_on <= $3 and (to_account = '${account}' or from_account = '${account}')
   group by ${key} having sum(case when to_account = '${account}' then amount else -amount end) <> 0`;

const OWING = `sponsor.id as "sponsorId", sponsor.name as "sponsorName", payer.id as "payerId", payer.name as "payerName"`;

const INVOICES = `select invoice.number, invoice.issued_on as "issuedOn", invoice.due_on as "dueOn", open.cents as "balanceCents", ${OWING}
  from (${balances('1100', 'invoice_id')}) as open
    join invoice on invoice.department_id = $1 and invoice.id = open.key
    join payer on payer.department_id = $1 and payer.id = invoice.payer_id
    left join sponsor on sponsor.department_id = $1 and sponsor.id = coalesce(invoice.sponsor_id, payer.sponsor_id)
  order by invoice.due_on, invoice.number`;

const CREDITS = `select -open.cents as cents, ${OWING}
  from (${balances('2150', 'unapplied_id')}) as open
    left join payment on payment.department_id = $1 and payment.id = open.key
    left join credit_memo as memo on memo.department_id = $1 and memo.id = open.key
    left join invoice on invoice.department_id = $1 and invoice.id = memo.invoice_id
    join payer on payer.department_id = $1 and payer.id = coalesce(payment.payer_id, memo.payer_id)
    left join sponsor on sponsor.department_id = $1 and sponsor.id = coalesce(invoice.sponsor_id, payer.sponsor_id)`;

/** What is open at the end of any day, by sponsor and payer and by age; it ties to the trial balance of that day. */
@Injectable()
export class Aging {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ReportScope) private readonly scope: ReportScope,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** @throws Refused `unknown-seller` */
  async report(query: AgingQuery): Promise<AgingView> {
    const seller = await this.scope.seller(query.sellerId);
    const on = await this.scope.day(query.on);
    const by = query.by ?? (await this.departments.here()).settings.agingBy;
    const invoices = seller ? await this.work.sql<OpenInvoice>(INVOICES, [seller.id, on]) : [];
    const credits = seller ? await this.work.sql<OpenCredit>(CREDITS, [seller.id, on]) : [];
    const { bucketCents, totalCents } = agingOf(invoices, on, by);
    return {
      sellerId: seller?.id ?? null,
      sellerName: seller?.name ?? null,
      on,
      by,
      buckets: AGING_BUCKETS[by].map((bucket) => bucket.name),
      lines: linesOf(invoices, credits, on, by),
      bucketCents,
      totalCents,
      unappliedCents: sumOf(credits),
    };
  }
}

const sumOf = (credits: readonly OpenCredit[]) => credits.reduce((sum, credit) => sum + credit.cents, 0);

const keyOf = ({ sponsorId, payerId }: Owing) => `${sponsorId} ${payerId}`;

function linesOf(invoices: readonly OpenInvoice[], credits: readonly OpenCredit[], on: Day, by: AgingBasis): AgingLine[] {
  const own = new Map<string, (OpenInvoice | OpenCredit)[]>();
  for (const row of [...invoices, ...credits]) {
    const rows = own.get(keyOf(row));
    if (rows) rows.push(row);
    else own.set(keyOf(row), [row]);
  }
  return [...own.values()]
    .map((rows): AgingLine => {
      const { sponsorId, sponsorName, payerId, payerName } = rows[0]!;
      const open = rows.filter((row): row is OpenInvoice => 'number' in row);
      const oldest = oldestOf(open, by);
      return {
        sponsorId,
        sponsorName,
        payerId,
        payerName,
        ...agingOf(open, on, by),
        unappliedCents: sumOf(rows.filter((row): row is OpenCredit => 'cents' in row)),
        oldestNumber: oldest?.number ?? null,
        oldestDays: oldest ? ageInDays(oldest, on, by) : null,
      };
    })
    .sort((one, other) => nameOf(one).localeCompare(nameOf(other), 'en') || one.payerName.localeCompare(other.payerName, 'en'));
}

function oldestOf(open: readonly OpenInvoice[], by: AgingBasis): OpenInvoice | undefined {
  const day = (invoice: OpenInvoice) => (by === 'dueDay' ? invoice.dueOn : invoice.issuedOn);
  return open.reduce<OpenInvoice | undefined>((oldest, one) => (oldest === undefined || day(one) < day(oldest) ? one : oldest), undefined);
}

const nameOf = (line: Owing): string => line.sponsorName ?? line.payerName;
