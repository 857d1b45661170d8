import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { NumberService } from '../../access/number.service.ts';
import { documentNumber } from '../../domain/billing/document-number.ts';
import { memoLines, memoReason } from '../../domain/billing/memo-lines.ts';
import type { MemoLine } from '../../domain/billing/memo-lines.ts';
import { checkNotBefore } from '../../domain/billing/not-before.ts';
import { fiscalYearOf } from '../../domain/day.ts';
import type { Day } from '../../domain/day.ts';
import { refuse } from '../../domain/refusals.ts';
import { applyHappening } from '../../domain/sponsorship/apply-happening.ts';
import type { Happening } from '../../domain/sponsorship/happening.ts';
import type { MemoPosition } from '../../domain/sponsorship/position.ts';
import { toldNow } from '../../domain/sponsorship/told-now.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { Booked } from '../../sponsorship/term-ledger.service.ts';
import { PARTIES } from '../invoices/invoice-snapshot.ts';
import type { Parties } from '../invoices/invoice-snapshot.ts';
import { CreditMemoLine } from './credit-memo-line.entity.ts';
import { CreditMemo } from './credit-memo.entity.ts';
import { MemoUse } from './memo-use.service.ts';
import { memoSnapshot } from './memo-snapshot.ts';
import type { CreditedInvoice } from './memo-snapshot.ts';

/** What was booked on one contract, and may have credited what was billed. */
export interface MayHaveCredited {
  contractId: string;
  happenings: readonly Happening[];
  booked: Booked;
  issuedOn: Day;
  reason?: string | null;
  /** the day was chosen by somebody; what the calendar causes lies where it lies */
  isDated?: boolean;
}

/** A memo that the books made and the paper is still to be written for. */
interface Made {
  contractId: string;
  termId: string | null;
  sellerId: string;
  memo: MemoPosition;
  lines: MemoLine[];
  reason: string;
  eventId: string | null;
  issuedOn: Day;
  isDated: boolean;
}

const CREDITED = `select invoice.id, invoice.number, invoice.issued_on as "issuedOn", invoice.tax_basis_points as "taxBasisPoints",
    payer.id as "payerId", payer.name as "payerName", payer.address as "payerAddress", payer.email as "payerEmail"
  from invoice join payer on payer.department_id = $1 and payer.id = invoice.payer_id
  where invoice.department_id = $1 and invoice.id = any($2::uuid[])`;

/** The paper of what the books credited: where something billed is credited, a numbered memo stands for it. */
@Injectable()
export class MemoIssue {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(NumberService) private readonly numbers: NumberService,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(MemoUse) private readonly use: MemoUse,
  ) {}

  /** Writes a memo for each one that these happenings made, in the same unit, and uses it on its own invoices. Answers their ids. */
  async issue(contractId: string, happenings: readonly Happening[], booked: Booked, issuedOn: Day, reason?: string | null): Promise<string[]> {
    return this.issueAll([{ contractId, happenings, booked, issuedOn, reason, isDated: true }]);
  }

  /** The same for several contracts: every document is locked before the first number is drawn, and the series of the sellers go in one order. */
  async issueAll(all: readonly MayHaveCredited[]): Promise<string[]> {
    const made: Made[] = [];
    for (const one of all) made.push(...(await this.madeBy(one)));
    await this.use.lock(made.map((one) => one.memo));
    for (const one of made.toSorted((a, b) => (a.sellerId < b.sellerId ? -1 : Number(a.sellerId > b.sellerId)))) {
      await this.write(one);
      await this.use.onOwnInvoices(one.memo, one.issuedOn);
    }
    return made.map((one) => one.memo.memoId);
  }

  private async madeBy({ contractId, happenings, booked, issuedOn, reason, isDated = false }: MayHaveCredited): Promise<Made[]> {
    const made: Omit<Made, 'termId' | 'sellerId'>[] = [];
    let before = booked.before;
    for (const [place, happening] of happenings.entries()) {
      const after = applyHappening(before, toldNow(before, happening));
      const eventId = booked.eventIds[place] ?? null;
      for (const memo of before ? after.memos.slice(before.memos.length) : []) {
        const lines = memoLines(happening, memo, before!, after);
        made.push({ contractId, memo, lines, reason: reason ?? memoReason(happening), eventId, issuedOn, isDated });
      }
      before = after;
    }
    if (made.length === 0) return [];
    const [event] = await this.work.sql<Pick<Made, 'termId' | 'sellerId'>>('select term_id as "termId", seller_id as "sellerId" from ledger_event where department_id = $1 and id = $2', [booked.eventIds[0]]);
    return made.map((one) => ({ ...one, ...(event ?? refuse('not-found')) }));
  }

  private async write({ contractId, termId, memo, lines, reason, eventId, issuedOn, isDated }: Made): Promise<void> {
    const [parties] = await this.work.sql<Parties>(PARTIES, [contractId]);
    const { sellerId, numberPrefix } = parties ?? refuse('not-found');
    const invoices = await this.invoicesOf(memo);
    if (isDated) checkNotBefore(issuedOn, invoices.map((invoice) => ({ what: `invoice ${invoice.number}`, on: invoice.issuedOn })));
    const payer = payerOf(invoices) ?? parties!;
    const fiscalYear = fiscalYearOf(issuedOn, (await this.departments.here()).fiscalYearStartsInMonth);
    const seriesNumber = await this.numbers.next('creditMemo', sellerId, fiscalYear);
    const number = documentNumber(`${numberPrefix}-CM`, fiscalYear, seriesNumber);
    const { memoId: id, netCents, taxCents } = memo;
    const isInvoice = new Set(invoices.map((invoice) => invoice.id));
    const snapshot = memoSnapshot({ ...parties!, ...payer }, { number, issuedOn, reason, netCents, taxCents, lines, invoices });
    const amounts = { netCents, taxCents, grossCents: netCents + taxCents };
    await this.work.insert(CreditMemo, {
      ...amounts, id, number, fiscalYear, seriesNumber, sellerId, payerId: payer.payerId, contractId, termId, reason, issuedOn, eventId,
      invoiceId: invoices[0]?.id ?? null,
      snapshot: snapshot as never,
      issuedByPersonId: this.work.scope.personId,
    });
    // What came over from the term before stands on no invoice of this one.
    const rows = lines.map(({ lineId, invoiceId, ...line }, place) => ({
      ...line, creditMemoId: id, place: place + 1, commitmentId: lineId, invoiceId: invoiceId && isInvoice.has(invoiceId) ? invoiceId : null,
    }));
    await this.work.insert(CreditMemoLine, rows);
  }

  private async invoicesOf({ parts }: MemoPosition): Promise<CreditedInvoice[]> {
    const ids = parts.flatMap((part) => part.invoiceId ?? []);
    const rows = await this.work.sql<CreditedInvoice>(
      CREDITED,
      [ids],
    );
    return rows.toSorted((one, other) => ids.indexOf(one.id) - ids.indexOf(other.id));
  }
}

/** Who was billed what a memo credits, whoever the contract was handed on to since; nobody where it credits no invoice here. */
function payerOf(invoices: readonly CreditedInvoice[]): Pick<Parties, 'payerId' | 'payerName' | 'payerAddress' | 'payerEmail'> | null {
  const [first] = invoices;
  if (!first) return null;
  const { payerId, payerName, payerAddress, payerEmail } = first;
  if (invoices.some((invoice) => invoice.payerId !== payerId)) refuse('memo-of-two-payers', { invoices: invoices.map((invoice) => invoice.number).join(', ') });
  return { payerId, payerName, payerAddress, payerEmail };
}
