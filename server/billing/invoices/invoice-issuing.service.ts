import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { NumberService } from '../../access/number.service.ts';
import { documentNumber } from '../../domain/billing/document-number.ts';
import { dueOn } from '../../domain/billing/invoice.ts';
import { taxByLine } from '../../domain/billing/line-tax.ts';
import type { Day } from '../../domain/day.ts';
import { fiscalYearOf } from '../../domain/day.ts';
import { refuse } from '../../domain/refusals.ts';
import type { BilledLine } from '../../domain/sponsorship/happening.ts';
import { isId, newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Contract } from '../../sponsorship/contract.entity.ts';
import { Term } from '../../sponsorship/term.entity.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import type { InvoiceLine } from './invoice-line.entity.ts';
import { InvoicePlanning } from './invoice-planning.service.ts';
import type { BillingDays, PlannedInvoice } from './invoice-planning.service.ts';
import { snapshotOf, taxNoteOf } from './invoice-snapshot.ts';
import type { Invoice } from './invoice.entity.ts';
import type { DueView, IssueInvoiceDto } from './invoice.dto.ts';

/** An invoice that was issued, and what it was planned as. */
export interface IssuedInvoice {
  invoiceId: string;
  number: string;
  planned: PlannedInvoice;
}

interface Numbered extends IssuedInvoice {
  fiscalYear: number;
  seriesNumber: number;
}

const ROWS_AT_ONCE = 500;

/** Says what is due on contracts, and issues it: one contract or many, by the same path. */
@Injectable()
export class InvoiceIssuing {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(InvoicePlanning) private readonly planning: InvoicePlanning,
    @Inject(TermLedger) private readonly terms: TermLedger,
    @Inject(NumberService) private readonly numbers: NumberService,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async due(contractId: string, through?: string): Promise<DueView> {
    if (!isId(contractId)) refuse('not-found');
    const throughDay = (through ?? (await this.departments.today())) as Day;
    const [planned] = await this.planning.plan([contractId], { through: throughDay, on: throughDay });
    const { lines, amounts, why, refused, deal, taxBasisPoints } = planned ?? refuse('not-found');
    if (refused?.code === 'contract-not-signed') return { lines: [], ...amounts, why: 'Nothing is due before the contract is signed.' };
    const taxes = taxByLine(lines, taxBasisPoints);
    const note = lines.length === 0 ? null : taxNoteOf(deal, throughDay);
    return { lines: lines.map((line, place) => dueLine(line, taxes[place]!)), ...amounts, why: note ? `${why} ${note}` : why };
  }

  /** @throws Refused `contract-not-signed`, `seller-keeps-own-books`, `paid-in-goods`, `nothing-to-bill` */
  async issue({ contractId, throughDay, issuedOn }: IssueInvoiceDto): Promise<string> {
    const on = (issuedOn ?? (await this.departments.today())) as Day;
    const through = (throughDay ?? on) as Day;
    const [planned] = await this.lock([contractId], { through, on });
    if (!planned) return refuse('not-found');
    if (planned.refused) throw planned.refused;
    if (planned.lines.length === 0) refuse('nothing-to-bill', { throughDay: through });
    const [issued] = await this.issueAll([planned], on);
    return issued!.invoiceId;
  }

  /** Locks contracts and their terms until the unit ends, and works out what is due on them. */
  async lock(contractIds: readonly string[], days: BillingDays): Promise<PlannedInvoice[]> {
    await this.work.lock(Contract, contractIds);
    const deals = await this.planning.deals(contractIds);
    await this.work.lock(Term, deals.map(({ termId }) => termId));
    const books = await this.terms.read(deals.map(({ termId }) => termId));
    return this.planning.planned(deals, books, days);
  }

  /**
   * Issues what `lock` planned in this unit: numbers in a row for each seller, a handful of statements for all.
   *
   * @throws Refused as the rule of `invoiced` does
   */
  async issueAll(planned: readonly PlannedInvoice[], issuedOn: Day): Promise<IssuedInvoice[]> {
    const numbered = await this.numbered(planned, issuedOn);
    const booked = await this.terms.book(
      numbered.map(({ planned: { books, lines, amounts }, invoiceId, number }) => ({
        books,
        told: [
          {
            happening: { kind: 'invoiced', invoiceId, number, netCents: amounts.netCents, taxCents: amounts.taxCents, lines },
            because: { cause: 'invoice', causeId: invoiceId, occurredOn: issuedOn },
          },
        ],
      })),
    );
    await this.write('invoice', numbered.map((one, place) => this.invoiceRow(one, issuedOn, booked[place]!.eventIds[0]!)));
    await this.write('invoice_line', numbered.flatMap(({ invoiceId, planned: { lines, taxBasisPoints } }) => lineRows(lines, invoiceId, taxBasisPoints)));
    const reads = numbered.flatMap(({ invoiceId, planned: { lines } }) => lines.flatMap((line) => line.readIds ?? []).filter(isId).map((readId) => ({ id: newId(), readId, invoiceId })));
    await this.write('billed_read', reads);
    return numbered;
  }

  /** In the order of the contracts; the counters of the sellers are the last rows that are locked, in the order of their ids. */
  private async numbered(planned: readonly PlannedInvoice[], issuedOn: Day): Promise<Numbered[]> {
    const fiscalYear = fiscalYearOf(issuedOn, (await this.departments.here()).fiscalYearStartsInMonth);
    const numbers = new Map<string, number[]>();
    for (const sellerId of [...new Set(planned.map(({ deal }) => deal.sellerId))].sort()) {
      const count = planned.filter(({ deal }) => deal.sellerId === sellerId).length;
      numbers.set(sellerId, await this.numbers.nextMany('invoice', sellerId, fiscalYear, count));
    }
    return planned.map((one) => {
      const seriesNumber = numbers.get(one.deal.sellerId)!.shift()!;
      return { invoiceId: newId(), number: documentNumber(one.deal.numberPrefix, fiscalYear, seriesNumber), fiscalYear, seriesNumber, planned: one };
    });
  }

  private invoiceRow({ planned, invoiceId, number, fiscalYear, seriesNumber }: Numbered, issuedOn: Day, eventId: string): Partial<Invoice> & { id: string } {
    const { deal, lines, amounts, taxBasisPoints } = planned;
    const fallsDueOn = dueOn(issuedOn, deal.termsDays);
    const { sellerId, payerId, sponsorId, contractId, termId, purchaseOrderNumber } = deal;
    const note = taxNoteOf(deal, issuedOn);
    return {
      id: invoiceId,
      kind: 'invoice',
      number,
      fiscalYear,
      seriesNumber,
      sellerId,
      payerId,
      sponsorId,
      contractId,
      termId,
      purchaseOrderNumber,
      issuedOn,
      dueOn: fallsDueOn,
      ...amounts,
      taxBasisPoints,
      snapshot: snapshotOf(deal, { number, issuedOn, dueOn: fallsDueOn, lines, amounts, note }),
      eventId,
      issuedByPersonId: this.work.scope.personId,
    };
  }

  private async write(table: string, rows: readonly { id: string }[]): Promise<void> {
    for (let from = 0; from < rows.length; from += ROWS_AT_ONCE) await this.work.add(table, rows.slice(from, from + ROWS_AT_ONCE) as ({ id: string } & Record<string, unknown>)[]);
  }
}

/** The lines of an invoice as rows, each with its part of the tax. */
export function lineRows(lines: readonly BilledLine[], invoiceId: string, taxBasisPoints: number): (Partial<InvoiceLine> & { id: string })[] {
  const taxes = taxByLine(lines, taxBasisPoints);
  return lines.map(({ text, amountCents, quantity, unitCents, lineId, ...tracedTo }, place) => ({
    id: newId(),
    invoiceId,
    place: place + 1,
    description: text,
    quantity: quantity ?? 1,
    unitCents: unitCents ?? null,
    amountCents,
    taxCents: taxes[place]!,
    commitmentId: lineId ?? null,
    tracedTo,
  }));
}

export function dueLine({ text, quantity, unitCents, amountCents, lineId }: BilledLine, taxCents: number): DueView['lines'][number] {
  return { description: text, quantity: quantity ?? 1, unitCents: unitCents ?? null, amountCents, taxCents, commitmentId: lineId ?? null };
}
