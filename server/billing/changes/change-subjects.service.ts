import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { refuse } from '../../domain/refusals.ts';
import { applyHappening } from '../../domain/sponsorship/apply-happening.ts';
import { daysEarned } from '../../domain/sponsorship/days-earned.ts';
import type { Happening } from '../../domain/sponsorship/happening.ts';
import type { Position } from '../../domain/sponsorship/position.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { ContractRecords } from '../../sponsorship/contract-records.service.ts';
import type { ContractRecord } from '../../sponsorship/contract-records.service.ts';
import { Contract } from '../../sponsorship/contract.entity.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import { Term } from '../../sponsorship/term.entity.ts';
import { DocumentLocks } from '../document-locks.ts';
import type { OpenDocument } from './open-money.service.ts';
import { OpenMoney } from './open-money.service.ts';

/** A signed contract as a change finds it. */
export interface Subject extends ContractRecord {
  /** as the books have it */
  booked: Position;
  /** as the change finds it: what earns over days has earned through its day */
  position: Position;
  /** what takes the one to the other */
  earnedFirst: Happening[];
  documents: OpenDocument[];
}

/** Finds the contracts that a change is about, and locks them where it is done. */
@Injectable()
export class ChangeSubjects {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ContractRecords) private readonly records: ContractRecords,
    @Inject(TermLedger) private readonly terms: TermLedger,
    @Inject(DocumentLocks) private readonly locks: DocumentLocks,
    @Inject(OpenMoney) private readonly money: OpenMoney,
  ) {}

  /** @throws Refused `not-found`, also for another department's contract */
  async isThere(contractId: string): Promise<void> {
    await this.work.one(Contract, contractId);
  }

  /** @throws Refused `contract-not-signed` */
  async one(contractId: string, on: Day): Promise<Subject> {
    const record = await this.records.load(contractId);
    const booked = (await this.terms.position(record.term.id)) ?? refuse('contract-not-signed');
    const earnedFirst = daysEarned(booked, on);
    const position = earnedFirst.reduce<Position>(applyHappening, booked);
    return { ...record, booked, position, earnedFirst, documents: await this.money.of(contractId, booked.memos.map((memo) => memo.memoId)) };
  }

  /** The other contract, as a form names it. @throws Refused `unknown-contract`, `contract-not-signed` */
  async other(contractId: string, on: Day): Promise<Subject> {
    const isThere = isId(contractId) && (await this.work.first(Contract, { id: contractId })) !== null;
    return isThere ? this.one(contractId, on) : refuse('unknown-contract');
  }

  /** Contracts, then terms, then documents, each in the order of their ids. */
  async lock(contractIds: readonly string[]): Promise<void> {
    await this.work.lock(Contract, contractIds);
    const terms: Term[] = [];
    for (const id of contractIds) if (await this.work.first(Contract, { id })) terms.push((await this.records.load(id)).term);
    await this.work.lock(Term, terms.map((term) => term.id));
    const documents: OpenDocument[] = [];
    for (const { id, contractId } of terms) {
      const position = await this.terms.position(id);
      documents.push(...(await this.money.of(contractId, position?.memos.map((memo) => memo.memoId) ?? [])));
    }
    await this.locks.take(documents.map((one) => one.id));
  }
}
