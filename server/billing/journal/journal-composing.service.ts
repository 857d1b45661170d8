import { Inject, Injectable } from '@nestjs/common';
import type { JournalLayout } from '../../domain/billing/journal-layout.ts';
import { debitsOf, journalLines } from '../../domain/billing/journal-lines.ts';
import type { JournalEntry, JournalLine } from '../../domain/billing/journal-lines.ts';
import type { Day } from '../../domain/day.ts';
import { lastOfMonth } from '../../domain/day.ts';
import type { Cents } from '../../domain/money.ts';
import { LedgerService } from '../../ledger/ledger.service.ts';
import { JournalEntries } from './journal-entries.service.ts';
import { JournalLayouts } from './journal-layouts.service.ts';

export interface Composed {
  entries: JournalEntry[];
  layout: JournalLayout;
  lines: JournalLine[];
  missing: string[];
  debitCents: Cents;
}

/** What a batch of a seller would hold: for looking at it and for making it. */
@Injectable()
export class JournalComposing {
  constructor(
    @Inject(JournalEntries) private readonly entries: JournalEntries,
    @Inject(JournalLayouts) private readonly layouts: JournalLayouts,
    @Inject(LedgerService) private readonly ledger: LedgerService,
  ) {}

  /** The last day nothing more can be booked on; null while every month is open. */
  async closedThrough(): Promise<Day | null> {
    const last = (await this.ledger.closedMonths()).toSorted().at(-1);
    return last ? lastOfMonth(last) : null;
  }

  /** @throws Refused as `JournalLayouts.one` */
  async compose(sellerId: string, throughOn: Day): Promise<Composed> {
    const { id: _, sellerId: __, sellerName: ___, version: ____, ...layout } = await this.layouts.one(sellerId);
    const entries = await this.entries.waiting(sellerId, throughOn);
    const { lines, missing } = journalLines(entries, layout, await this.entries.names(entries));
    return { entries, layout, lines, missing, debitCents: debitsOf(lines) };
  }
}
