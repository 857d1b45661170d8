import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { taxByLine } from '../../domain/billing/line-tax.ts';
import type { Day } from '../../domain/day.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { dueLine } from '../invoices/invoice-issuing.service.ts';
import { InvoicePlanning } from '../invoices/invoice-planning.service.ts';
import type { PlannedInvoice } from '../invoices/invoice-planning.service.ts';
import type { PreviewLineView, PreviewQuery, PreviewView, SellerTotal } from './billing-run.dto.ts';
import { whySkipped } from './why-skipped.ts';

const AT_ONCE = 200;

const CANDIDATES = `select contract.id from contract
    join term on term.department_id = contract.department_id and term.contract_id = contract.id
      and term.number = (select max(latest.number) from term as latest where latest.department_id = $1 and latest.contract_id = contract.id)
  where contract.department_id = $1 and term.state in ('signed', 'ended') and ($2::uuid is null or contract.seller_id = $2)
  order by contract.id`;

/** What a run would bill; changes nothing. */
@Injectable()
export class BillingPreview {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(InvoicePlanning) private readonly planning: InvoicePlanning,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** The contracts a run deals with, in the order in which it does: signed or ended, of one seller or of all. */
  async candidates(sellerId: string | null): Promise<string[]> {
    return (await this.work.sql<{ id: string }>(CANDIDATES, [sellerId])).map(({ id }) => id);
  }

  async preview({ through, issuedOn, sellerId }: PreviewQuery): Promise<PreviewView> {
    const today = await this.departments.today();
    const days = { through: (through ?? today) as Day, on: (issuedOn ?? today) as Day };
    const ids = await this.candidates(sellerId ?? null);
    const contracts: PreviewLineView[] = [];
    for (let from = 0; from < ids.length; from += AT_ONCE) {
      contracts.push(...(await this.planning.plan(ids.slice(from, from + AT_ONCE), days)).map(previewLine));
    }
    contracts.sort((a, b) => a.sponsorName.localeCompare(b.sponsorName, 'en') || a.contractTitle.localeCompare(b.contractTitle, 'en'));
    return { throughDay: days.through, issuedOn: days.on, contracts, totals: totalsOf(contracts.filter((one) => !one.isSkipped)) };
  }
}

function previewLine(planned: PlannedInvoice): PreviewLineView {
  const { deal, lines, amounts, why, taxBasisPoints } = planned;
  const { contractId, contractNumber, contractTitle, sponsorName, payerName, sellerId, sellerName } = deal;
  const skipped = whySkipped(planned);
  const taxes = taxByLine(lines, taxBasisPoints);
  const shown = skipped === null ? { lines: lines.map((line, place) => dueLine(line, taxes[place]!)), ...amounts } : { lines: [], netCents: 0, taxCents: 0, grossCents: 0 };
  return { contractId, contractNumber, contractTitle, sponsorName, payerName, sellerId, sellerName, isSkipped: skipped !== null, why: skipped ?? why, ...shown };
}

/** The invoices of each seller together, in the order of their names. */
export function totalsOf(invoices: readonly { sellerId: string; sellerName: string; netCents: number; grossCents: number }[]): SellerTotal[] {
  const totals = new Map<string, SellerTotal>();
  for (const { sellerId, sellerName, netCents, grossCents } of invoices) {
    const sum = totals.get(sellerId) ?? { sellerId, sellerName, invoices: 0, netCents: 0, grossCents: 0 };
    totals.set(sellerId, { ...sum, invoices: sum.invoices + 1, netCents: sum.netCents + netCents, grossCents: sum.grossCents + grossCents });
  }
  return [...totals.values()].sort((a, b) => a.sellerName.localeCompare(b.sellerName, 'en'));
}
