import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { AGING_BUCKETS, agingOf } from '../../domain/billing/aging.ts';
import type { AgingBasis, OpenDocument } from '../../domain/billing/aging.ts';
import { firstOfFiscalYear } from '../../domain/day.ts';
import type { Day } from '../../domain/day.ts';
import { refuse } from '../../domain/refusals.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Sponsor } from '../../sponsorship/sponsor.entity.ts';
import { CREDITS, MOVED, OPEN } from './sponsor-account.sql.ts';
import type { SellerAccount, SponsorAccountView, StatementSpanQuery } from './sponsor-account.dto.ts';
import { StatementNames } from './statement-names.service.ts';
import type { EventRow, Told } from './statement-names.service.ts';

interface MovedRow extends EventRow {
  sellerId: string;
  sellerName: string;
  cents: number;
  memoNumber: string | null;
}

interface OpenRow extends OpenDocument {
  sellerId: string;
}

interface CreditRow {
  sellerId: string;
  cents: number;
}

/** A sponsor's dealings over all its contracts, each seller of record apart, by the day they happened. */
@Injectable()
export class SponsorAccount {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(StatementNames) private readonly names: StatementNames,
  ) {}

  /** @throws Refused `not-found`, `ends-before-it-starts` */
  async statement(sponsorId: string, query: StatementSpanQuery): Promise<SponsorAccountView> {
    const sponsor = await this.work.one(Sponsor, sponsorId);
    const department = await this.departments.here();
    const to = (query.to ?? (await this.departments.today())) as Day;
    const from = (query.from as Day | undefined) ?? firstOfFiscalYear(to, department.fiscalYearStartsInMonth);
    if (to < from) refuse('ends-before-it-starts');
    const by = department.settings.agingBy;
    const moved = await this.work.sql<MovedRow>(MOVED, [sponsor.id, to]);
    const open = await this.work.sql<OpenRow>(OPEN, [sponsor.id, to]);
    const credits = await this.work.sql<CreditRow>(CREDITS, [sponsor.id, to]);
    const shown = moved.filter((row) => row.occurredOn >= from);
    const told = await this.names.tell(null, shown, undefined, true);
    const sellers = [...new Set(moved.map((row) => row.sellerId))].map((sellerId) => {
      const own = <Row extends { sellerId: string }>(rows: readonly Row[]) => rows.filter((row) => row.sellerId === sellerId);
      const unappliedCents = own(credits).reduce((sum, row) => sum + row.cents, 0);
      return { ...accountOf(own(moved), from, told), ...openOf(own(open), to, by), unappliedCents };
    });
    const isShown = (account: SellerAccount) => account.lines.length > 0 || account.openingCents !== 0 || account.openCents !== 0;
    return { sponsorId: sponsor.id, sponsorName: sponsor.name, from, to, by, buckets: AGING_BUCKETS[by].map((bucket) => bucket.name), sellers: sellers.filter(isShown) };
  }
}

function accountOf(rows: readonly MovedRow[], from: Day, told: ReadonlyMap<string, Told>) {
  const openingCents = rows.filter((row) => row.occurredOn < from).reduce((sum, row) => sum + row.cents, 0);
  let balanceCents = openingCents;
  const lines = rows
    .filter((row) => row.occurredOn >= from)
    .map(({ eventId, occurredOn, cents, memoNumber }) => {
      balanceCents += cents;
      const { sentence, cause } = told.get(eventId)!;
      return {
        id: eventId,
        on: occurredOn,
        sentence: memoNumber === null ? sentence : `Credit memo ${memoNumber}: ${sentence}`,
        document: cause,
        chargeCents: Math.max(0, cents),
        creditCents: Math.max(0, -cents),
        balanceCents,
      };
    });
  return { sellerId: rows[0]!.sellerId, sellerName: rows[0]!.sellerName, openingCents, lines, closingCents: balanceCents };
}

function openOf(documents: readonly OpenDocument[], on: Day, by: AgingBasis) {
  const { bucketCents, totalCents } = agingOf(documents, on, by);
  return { bucketCents, openCents: totalCents };
}
