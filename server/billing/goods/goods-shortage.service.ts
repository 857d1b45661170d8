import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { mayUse } from '../../domain/access/rights.ts';
import type { Role } from '../../domain/access/rights.ts';
import { openOf } from '../../domain/billing/goods.ts';
import { invoiceAmounts } from '../../domain/billing/invoice.ts';
import { withTaxable } from '../../domain/billing/line-tax.ts';
import type { Day } from '../../domain/day.ts';
import type { Cents } from '../../domain/money.ts';
import { centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import type { Happening } from '../../domain/sponsorship/happening.ts';
import { openCentsOf, sumOf } from '../../domain/sponsorship/line-values.ts';
import type { Position } from '../../domain/sponsorship/position.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import { Term } from '../../sponsorship/term.entity.ts';
import { InvoiceIssuing } from '../invoices/invoice-issuing.service.ts';
import type { PlannedInvoice } from '../invoices/invoice-planning.service.ts';
import type { GoodsShortageDto } from './goods.dto.ts';

/** What was promised in goods and did not come: billed, or let go. */
@Injectable()
export class GoodsShortage {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(InvoiceIssuing) private readonly issuing: InvoiceIssuing,
    @Inject(TermLedger) private readonly terms: TermLedger,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /**
   * Letting go lowers the price of a signed contract, so it takes who may sign one.
   *
   * @throws Refused `role-missing`, `not-found`, `not-in-kind`, `contract-not-signed`, `nothing-short`, `seller-keeps-own-books`
   */
  async settle(contractId: string, { settles, settledOn }: GoodsShortageDto, roles: readonly Role[]): Promise<void> {
    if (settles === 'allowed' && !mayUse(roles, 'sign contracts')) refuse('role-missing');
    const on = settledOn ?? (await this.departments.today());
    if (!isId(contractId)) refuse('not-found');
    const [planned] = await this.issuing.lock([contractId], { through: on, on });
    if (!planned) return refuse('not-found');
    if (!planned.deal.isInKind) refuse('not-in-kind');
    const { position } = planned.books;
    if (!position) return refuse('contract-not-signed');
    const amountCents = openOf(position);
    if (amountCents === 0) refuse('nothing-short');
    await (settles === 'billed' ? this.bill(planned, position, amountCents, on) : this.allow(planned, position, amountCents, on));
  }

  private async bill(planned: PlannedInvoice, position: Position, amountCents: Cents, on: Day): Promise<void> {
    if (!planned.deal.keepsBooksHere) refuse('seller-keeps-own-books');
    const lines = withTaxable(position, [{ text: 'Goods promised and not received', amountCents }]);
    await this.issuing.issueAll([{ ...planned, lines, amounts: invoiceAmounts(lines, planned.taxBasisPoints), refused: null }], on);
  }

  /** The part no read has earned yet lowers the price from now on; the rest is an allowance on what was earned. */
  private async allow({ deal }: PlannedInvoice, position: Position, amountCents: Cents, on: Day): Promise<void> {
    const byCents = centsOf(Math.min(amountCents, sumOf(position.lines.map((line) => Math.max(0, openCentsOf(line))))));
    const happenings = [...lowered(byCents), ...allowed(centsOf(amountCents - byCents))];
    await this.terms.happen(deal.termId, happenings.map((happening) => ({ happening, because: { cause: 'contract', causeId: deal.contractId, occurredOn: on } })));
    if (byCents === 0) return;
    const { priceCents } = await this.work.one(Term, deal.termId);
    await this.work.update(Term, deal.termId, null, { priceCents: centsOf(Math.max(0, priceCents - byCents)) });
  }
}

const lowered = (byCents: Cents): Happening[] => (byCents > 0 ? [{ kind: 'priceLowered', byCents }] : []);
const allowed = (amountCents: Cents): Happening[] => (amountCents > 0 ? [{ kind: 'allowanceGiven', amountCents }] : []);
