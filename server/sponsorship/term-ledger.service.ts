import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../domain/day.ts';
import { refuse } from '../domain/refusals.ts';
import { bookHappening, positionOf } from '../domain/sponsorship/apply-happening.ts';
import type { HappenedOn } from '../domain/billing/without-later.ts';
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

/** What happened to one of several terms that are booked together. */
export interface ToldOfTerm {
  books: TermBooks;
  told: readonly Told[];
}

/** A term as its ledgers have it. */
export interface TermBooks {
  termId: string;
  contractId: string;
  sellerId: string;
  keepsBooksHere: boolean;
  happened: HappenedOn[];
  position: Position | null;
}

const TERMS = `select term.id as "termId", term.contract_id as "contractId", contract.seller_id as "sellerId", seller.keeps_books_here as "keepsBooksHere"
  from term join contract on contract.department_id = term.department_id and contract.id = term.contract_id
    join seller on seller.department_id = contract.department_id and seller.id = contract.seller_id
  where term.department_id = $1 and term.id = any($2::uuid[]) order by term.id`;

const HAPPENED = `select term_id as "termId", happening, occurred_on as "occurredOn" from ledger_event
  where department_id = $1 and term_id = any($2::uuid[]) and place is not null order by term_id, place`;

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
    for (const { term_id: termId, happening } of rows) {
      const happenings = byTerm.get(termId);
      if (happenings) happenings.push(happening);
      else byTerm.set(termId, [happening]);
    }
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
    const [books] = await this.open([termId]);
    const [booked] = await this.book([{ books: books ?? refuse('not-found'), told }]);
    return booked!;
  }

  /** Locks terms and reads their books: three statements, however many. In the order of their ids. */
  async open(termIds: readonly string[]): Promise<TermBooks[]> {
    await this.work.lock(Term, termIds);
    return this.read(termIds);
  }

  /** The books of terms without a lock, for a preview. */
  async read(termIds: readonly string[]): Promise<TermBooks[]> {
    const terms = await this.work.sql<Omit<TermBooks, 'happened' | 'position'>>(TERMS, [termIds]);
    const rows = await this.work.sql<HappenedOn & { termId: string }>(HAPPENED, [termIds]);
    const byTerm = new Map<string, HappenedOn[]>(terms.map(({ termId }) => [termId, []]));
    for (const { termId, happening, occurredOn } of rows) byTerm.get(termId)?.push({ happening, occurredOn });
    return terms.map((term) => {
      const happened = byTerm.get(term.termId) ?? [];
      return { ...term, happened, position: positionOf(happened.map(({ happening }) => happening)) };
    });
  }

  /**
   * Books what happened to terms that `open` locked in this unit: three statements and their postings for all of them.
   * All or nothing.
   *
   * @throws Refused with the code of the rule that says no
   */
  async book(told: readonly ToldOfTerm[]): Promise<Booked[]> {
    const ready = told.map(({ books, told: some }) => bookedOf(books, some));
    await this.ledger.bookAll(ready.flatMap(({ events }) => events));
    return ready.map(({ events, ...booked }) => ({ ...booked, eventIds: events.map((event) => event.id!) }));
  }

  private async happenings(termId: string): Promise<Happening[]> {
    const rows = await this.work.sql<{ happening: Happening }>(
      'select happening from ledger_event where department_id = $1 and term_id = $2 and place is not null order by place',
      [termId],
    );
    return rows.map((row) => row.happening);
  }
}

/** The events of a term's happenings, each with what it posts; nothing is written yet. */
function bookedOf(books: TermBooks, told: readonly Told[]): { events: EventToBook[]; before: Position | null; position: Position } {
  let position = books.position;
  const events = told.map(({ happening, because }, place): EventToBook => {
    const booked = bookHappening(position, happening);
    position = booked.position;
    return {
      id: newId(),
      ...because,
      happening: booked.happening,
      postings: books.keepsBooksHere ? booked.postings : booked.postings.filter((posting) => posting.journal === 'reads'),
      contractId: books.contractId,
      termId: books.termId,
      sellerId: books.sellerId,
      place: books.happened.length + place + 1,
    };
  });
  return { events, before: books.position, position: position ?? refuse('contract-not-signed') };
}
