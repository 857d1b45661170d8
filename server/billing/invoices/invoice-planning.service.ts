import { Inject, Injectable } from '@nestjs/common';
import { dueToBill } from '../../domain/billing/due-to-bill.ts';
import type { DueFacts, DueToBill } from '../../domain/billing/due-to-bill.ts';
import { invoiceAmounts } from '../../domain/billing/invoice.ts';
import type { InvoiceAmounts } from '../../domain/billing/invoice.ts';
import { daysOf } from '../../domain/billing/without-later.ts';
import type { Day } from '../../domain/day.ts';
import { Refused } from '../../domain/refusals.ts';
import type { BilledLine } from '../../domain/sponsorship/happening.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import type { TermBooks } from '../../sponsorship/term-ledger.service.ts';
import { DEALS } from './deal.ts';
import type { Deal } from './deal.ts';
import { GamesToBill } from './games-to-bill.service.ts';
import { taxOn } from './invoice-snapshot.ts';

/** What is billed through which day, on an invoice of which day. */
export interface BillingDays {
  through: Day;
  on: Day;
}

/** What an invoice of one contract would hold; or why there is none. */
export interface PlannedInvoice {
  deal: Deal;
  books: TermBooks;
  lines: BilledLine[];
  amounts: InvoiceAmounts;
  taxBasisPoints: number;
  /** why nothing is due, or through which day this is */
  why: string;
  /** set where the contract is of a kind that gets no invoice at all */
  refused: Refused | null;
}

const NOTHING: DueToBill = { lines: [], netCents: 0 as DueToBill['netCents'], why: '' };

/** Works out what is due on contracts: a handful of statements, however many contracts. */
@Injectable()
export class InvoicePlanning {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(TermLedger) private readonly terms: TermLedger,
    @Inject(GamesToBill) private readonly games: GamesToBill,
  ) {}

  async deals(contractIds: readonly string[]): Promise<Deal[]> {
    return this.work.sql<Deal>(DEALS, [contractIds]);
  }

  /** Without a lock, for a preview. */
  async plan(contractIds: readonly string[], days: BillingDays): Promise<PlannedInvoice[]> {
    const deals = await this.deals(contractIds);
    return this.planned(deals, await this.terms.read(deals.map(({ termId }) => termId)), days);
  }

  /** What is due by these books, which the caller may have locked. */
  async planned(deals: readonly Deal[], books: readonly TermBooks[], days: BillingDays): Promise<PlannedInvoice[]> {
    const games = await this.games.of(deals);
    const booksOf = new Map(books.map((one) => [one.termId, one]));
    return deals.flatMap((deal) => {
      const own = booksOf.get(deal.termId);
      return own ? [plannedOrWhyNot(deal, own, games.get(deal.termId) ?? [], days)] : [];
    });
  }
}

/** Amounts that go beyond the exact whole numbers refuse their own contract and leave the others alone. */
function plannedOrWhyNot(...of: Parameters<typeof plannedFor>): PlannedInvoice {
  try {
    return plannedFor(...of);
  } catch (failure) {
    if (!(failure instanceof RangeError)) throw failure;
    const [deal, books] = of;
    const refused = new Refused('contract-does-not-add-up');
    return { deal, books, lines: [], amounts: invoiceAmounts([], 0), taxBasisPoints: 0, why: refused.message, refused };
  }
}

function plannedFor(deal: Deal, books: TermBooks, games: NonNullable<DueFacts['games']>, { through, on }: BillingDays): PlannedInvoice {
  const refused = whyNoInvoice(deal, books);
  const due = refused || !books.position ? NOTHING : dueToBill(deal.billingPlan, books.position, through, { games, days: daysOf(books.happened) });
  const { basisPoints } = taxOn(deal, on);
  return { deal, books, lines: due.lines, amounts: invoiceAmounts(due.lines, basisPoints), taxBasisPoints: basisPoints, why: refused?.message ?? due.why, refused };
}

function whyNoInvoice(deal: Deal, { position }: TermBooks): Refused | null {
  if (deal.termState === 'draft' || !position) return new Refused('contract-not-signed');
  if (deal.isInKind) return new Refused('paid-in-goods');
  return deal.keepsBooksHere ? null : new Refused('seller-keeps-own-books');
}
