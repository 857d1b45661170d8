import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { NumberService } from '../../access/number.service.ts';
import { documentNumber } from '../../domain/billing/document-number.ts';
import { dueToBill } from '../../domain/billing/due-to-bill.ts';
import { dueOn, invoiceAmounts } from '../../domain/billing/invoice.ts';
import type { InvoiceAmounts } from '../../domain/billing/invoice.ts';
import type { Day } from '../../domain/day.ts';
import { fiscalYearOf } from '../../domain/day.ts';
import { refuse, sentenceOfRefusal } from '../../domain/refusals.ts';
import type { BilledLine } from '../../domain/sponsorship/happening.ts';
import { isId, newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { ContractRecords } from '../../sponsorship/contract-records.service.ts';
import type { ContractRecord } from '../../sponsorship/contract-records.service.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import { Term } from '../../sponsorship/term.entity.ts';
import { BilledRead } from './billed-read.entity.ts';
import { InvoiceLine } from './invoice-line.entity.ts';
import { PARTIES, snapshotOf, taxOn } from './invoice-snapshot.ts';
import type { Parties } from './invoice-snapshot.ts';
import type { DueView, IssueInvoiceDto } from './invoice.dto.ts';
import { Invoice } from './invoice.entity.ts';

interface Due {
  parties: Parties;
  lines: BilledLine[];
  amounts: InvoiceAmounts;
  taxBasisPoints: number;
  why: string;
}

/** Says what is due on a contract, and issues it. */
@Injectable()
export class InvoiceIssuing {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ContractRecords) private readonly records: ContractRecords,
    @Inject(TermLedger) private readonly terms: TermLedger,
    @Inject(NumberService) private readonly numbers: NumberService,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async due(contractId: string, through?: string): Promise<DueView> {
    const throughDay = (through ?? (await this.departments.today())) as Day;
    const record = await this.records.load(contractId);
    if (record.term.state === 'draft') return nothingDue('Nothing is due before the contract is signed.');
    if (record.contract.isInKind) return nothingDue(sentenceOfRefusal('paid-in-goods'));
    const { lines, amounts, why, parties } = await this.dueOf(record, throughDay, throughDay);
    if (!parties.keepsBooksHere) return nothingDue(sentenceOfRefusal('seller-keeps-own-books'));
    return { lines: lines.map(dueLine), ...amounts, why };
  }

  /** @throws Refused `contract-not-signed`, `seller-keeps-own-books`, `paid-in-goods`, `nothing-to-bill` */
  async issue({ contractId, throughDay, issuedOn }: IssueInvoiceDto): Promise<string> {
    const on = (issuedOn ?? (await this.departments.today())) as Day;
    const through = (throughDay ?? on) as Day;
    const record = await this.records.lock(contractId);
    await this.work.lock(Term, [record.term.id]);
    if (record.term.state === 'draft') refuse('contract-not-signed');
    if (record.contract.isInKind) refuse('paid-in-goods');
    const due = await this.dueOf(record, through, on);
    if (!due.parties.keepsBooksHere) refuse('seller-keeps-own-books');
    if (due.lines.length === 0) refuse('nothing-to-bill', { throughDay: through });
    return this.write(record, due, on);
  }

  private async dueOf({ contract, term }: ContractRecord, through: Day, issuedOn: Day): Promise<Due> {
    const position = (await this.terms.position(term.id)) ?? refuse('contract-not-signed');
    const { lines, why } = dueToBill(term.billingPlan, position, through);
    const [parties] = await this.work.sql<Parties>(PARTIES, [contract.id]);
    const { basisPoints } = taxOn(parties!, issuedOn);
    return { parties: parties!, lines, amounts: invoiceAmounts(lines, basisPoints), taxBasisPoints: basisPoints, why };
  }

  private async write({ contract, term }: ContractRecord, due: Due, issuedOn: Day): Promise<string> {
    const { parties, lines, amounts } = due;
    const invoiceId = newId();
    const fiscalYear = fiscalYearOf(issuedOn, (await this.departments.here()).fiscalYearStartsInMonth);
    const seriesNumber = await this.numbers.next('invoice', parties.sellerId, fiscalYear);
    const number = documentNumber(parties.numberPrefix, fiscalYear, seriesNumber);
    const { eventIds } = await this.terms.happen(term.id, [
      {
        happening: { kind: 'invoiced', invoiceId, number, netCents: amounts.netCents, taxCents: amounts.taxCents, lines },
        because: { cause: 'invoice', causeId: invoiceId, occurredOn: issuedOn },
      },
    ]);
    const fallsDueOn = dueOn(issuedOn, parties.termsDays);
    await this.work.insert(Invoice, {
      id: invoiceId,
      kind: 'invoice',
      number,
      fiscalYear,
      seriesNumber,
      sellerId: parties.sellerId,
      payerId: parties.payerId,
      sponsorId: parties.sponsorId,
      contractId: contract.id,
      termId: term.id,
      purchaseOrderNumber: contract.purchaseOrderNumber,
      issuedOn,
      dueOn: fallsDueOn,
      ...amounts,
      taxBasisPoints: due.taxBasisPoints,
      snapshot: snapshotOf(parties, { number, issuedOn, dueOn: fallsDueOn, lines, amounts, note: null }) as never,
      eventId: eventIds[0]!,
      issuedByPersonId: this.work.personId,
    });
    await this.work.insert(InvoiceLine, lines.map((line, place) => lineRow(line, invoiceId, place)));
    const readIds = lines.flatMap((line) => line.readIds ?? []).filter(isId);
    await this.work.insert(BilledRead, readIds.map((readId) => ({ readId, invoiceId })));
    return invoiceId;
  }
}

export function lineRow(line: BilledLine, invoiceId: string, place: number): Partial<InvoiceLine> {
  const { text, amountCents, quantity, unitCents, lineId, ...tracedTo } = line;
  return {
    invoiceId,
    place: place + 1,
    description: text,
    quantity: quantity ?? 1,
    unitCents: unitCents ?? null,
    amountCents,
    commitmentId: lineId ?? null,
    tracedTo: tracedTo as never,
  };
}

const nothingDue = (why: string): DueView => ({ lines: [], netCents: 0, taxCents: 0, grossCents: 0, why });

function dueLine({ text, quantity, unitCents, amountCents, lineId }: BilledLine): DueView['lines'][number] {
  return { description: text, quantity: quantity ?? 1, unitCents: unitCents ?? null, amountCents, commitmentId: lineId ?? null };
}
