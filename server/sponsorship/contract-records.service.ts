import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Contract } from './contract.entity.ts';
import { Term } from './term.entity.ts';

export interface ContractRecord {
  contract: Contract;
  term: Term;
}

/** A contract with its present term, as rows. */
@Injectable()
export class ContractRecords {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** @throws Refused `not-found` */
  async load(contractId: string): Promise<ContractRecord> {
    const contract = await this.work.one(Contract, contractId);
    const [term] = await this.work.find(Term, { contractId }, { order: { number: 'DESC' }, take: 1 });
    return term ? { contract, term } : refuse('not-found');
  }

  /** The same, locked until the unit ends. */
  async lock(contractId: string): Promise<ContractRecord> {
    const { id } = await this.work.one(Contract, contractId);
    await this.work.lock(Contract, [id]);
    return this.load(id);
  }

  /** @throws Refused `not-found`, `contract-not-a-draft` */
  async lockDraft(contractId: string): Promise<ContractRecord> {
    const record = await this.lock(contractId);
    if (record.term.state !== 'draft') refuse('contract-not-a-draft');
    return record;
  }
}
