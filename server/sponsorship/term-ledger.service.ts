import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../domain/day.ts';
import { refuse } from '../domain/refusals.ts';
import { bookHappening, positionOf } from '../domain/sponsorship/apply-happening.ts';
import type { Happening } from '../domain/sponsorship/happening.ts';
import type { Position } from '../domain/sponsorship/position.ts';
import type { EventToBook } from '../ledger/ledger.service.ts';
import { LedgerService } from '../ledger/ledger.service.ts';
import { newId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Term } from './term.entity.ts';

/** What stands behind a happening: the kind of record and its id, and the day on which it was. */
export interface Because {
  cause: string;
  causeId: string | null;
  occurredOn: Day;
  takesBackEventId?: string | null;
}

export interface Told {
  happening: Happening;
  because: Because;
}

export interface Booked {
  eventIds: string[];
  before: Position | null;
  position: Position;
}

interface TermRow {
  contract_id: string;
  seller_id: string;
  keeps_books_here: boolean;
}

/** Both ledgers of a term: its position is what its happenings add up to, and each new one posts the difference. */
@Injectable()
export class TermLedger {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(LedgerService) private readonly ledger: LedgerService,
  ) {}

  /** The position without a lock, for reading; null before signing. */
  async position(termId: string): Promise<Position | null> {
    return positionOf(await this.happenings(termId));
  }

  /** The positions of several terms in one statement, for lists and boards. */
  async positions(termIds: readonly string[]): Promise<Map<string, Position>> {
    const rows = await this.work.sql<{ term_id: string; happening: Happening }>(
      'select term_id, happening from ledger_event where department_id = $1 and term_id = any($2::uuid[]) and place is not null order by term_id, place',
      [termIds],
    );
    const byTerm = new Map<string, Happening[]>();
    for (const row of rows) byTerm.set(row.term_id, [...(byTerm.get(row.term_id) ?? []), row.happening]);
    const positions = new Map<string, Position>();
    for (const [termId, happenings] of byTerm) {
      const position = positionOf(happenings);
      if (position) positions.set(termId, position);
    }
    return positions;
  }

  /**
   * Locks the term, applies what happened in its order and books each with its postings. All or nothing.
   *
   * @throws Refused with the code of the rule that says no
   */
  async happen(termId: string, told: readonly Told[]): Promise<Booked> {
    await this.work.lock(Term, [termId]);
    const [term] = await this.work.sql<TermRow>(
      `select term.contract_id, contract.seller_id, seller.keeps_books_here from term
         join contract on contract.department_id = term.department_id and contract.id = term.contract_id
         join seller on seller.department_id = contract.department_id and seller.id = contract.seller_id
        where term.department_id = $1 and term.id = $2`,
      [termId],
    );
    if (!term) return refuse('not-found');
    const happenings = await this.happenings(termId);
    const before = positionOf(happenings);
    let position = before;
    const events: EventToBook[] = [];
    for (const { happening, because } of told) {
      const booked = bookHappening(position, happening);
      position = booked.position;
      events.push({
        id: newId(),
        ...because,
        happening,
        postings: term.keeps_books_here ? booked.postings : booked.postings.filter((posting) => posting.journal === 'reads'),
        contractId: term.contract_id,
        termId,
        sellerId: term.seller_id,
        place: happenings.length + events.length + 1,
      });
    }
    if (!position) return refuse('contract-not-signed');
    return { eventIds: await this.ledger.bookAll(events), before, position };
  }

  private async happenings(termId: string): Promise<Happening[]> {
    const rows = await this.work.sql<{ happening: Happening }>(
      'select happening from ledger_event where department_id = $1 and term_id = $2 and place is not null order by place',
      [termId],
    );
    return rows.map((row) => row.happening);
  }
}
