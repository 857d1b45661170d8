import { Inject, Injectable } from '@nestjs/common';
import { refuse, sentenceOfRefusal } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { newId } from '../platform/database/ids.ts';
import { Benefit } from './benefit.entity.ts';
import { planOf } from './billing-plan.dto.ts';
import { Commitment } from './commitment.entity.ts';
import { ContractRecords } from './contract-records.service.ts';
import { ContractViews } from './contract-view.service.ts';
import type { ContractView } from './contract-view.ts';
import type { ChangeContractDto, ChangeTermDto, ContractDto, TermDto } from './contract.dto.ts';
import type { BenefitDto, CommitmentDto } from './contract-line.dto.ts';
import { DealExclusivities } from './company/deal-exclusivities.service.ts';
import { Contract } from './contract.entity.ts';
import { Term } from './term.entity.ts';

/** Writes drafts; what is signed changes only by what happens to it. */
@Injectable()
export class ContractService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ContractRecords) private readonly records: ContractRecords,
    @Inject(ContractViews) private readonly views: ContractViews,
    @Inject(DealExclusivities) private readonly exclusivities: DealExclusivities,
  ) {}

  /** @throws Refused `already-there`, `ends-before-it-starts`, `unknown-…` for what the form names in vain */
  async add(form: ContractDto): Promise<ContractView> {
    const { term, commitments = [], benefits = [], exclusivities = [], ...contract } = form;
    const [row] = await this.work.insert(Contract, contract);
    const [termRow] = await this.work.insert(Term, { ...termOf(term), contractId: row!.id, number: 1 });
    await this.writeCommitments(row!.id, termRow!.id, commitments);
    await this.writeBenefits(row!.id, termRow!.id, benefits);
    await this.exclusivities.write({ contractId: row!.id }, exclusivities);
    return this.views.one(row!.id);
  }

  /** @throws Refused `contract-not-a-draft`, `stale-version` */
  async change(id: string, version: number, form: ChangeContractDto): Promise<ContractView> {
    const { term: before } = await this.records.lockDraft(id);
    const { term, commitments, benefits, exclusivities, ...contract } = form;
    await this.work.update(Contract, id, version, contract);
    if (term) await this.work.update(Term, before.id, null, termOf(term));
    if (commitments) {
      await this.work.remove(Commitment, { termId: before.id });
      await this.writeCommitments(id, before.id, commitments);
    }
    if (benefits) {
      await this.work.remove(Benefit, { termId: before.id });
      await this.writeBenefits(id, before.id, benefits);
    }
    if (exclusivities) await this.exclusivities.write({ contractId: id }, exclusivities);
    return this.views.one(id);
  }

  /** @throws Refused `contract-not-a-draft`, `still-in-use` */
  async remove(id: string): Promise<void> {
    const { contract, term } = await this.records.lockDraft(id);
    // An offer that the draft was made of is open again, with what it promised of others.
    await this.work.sql('update offer set contract_id = null, version = version + 1 where department_id = $1 and contract_id = $2', [contract.id]);
    await this.work.sql('delete from exclusivity where department_id = $1 and contract_id = $2', [contract.id]);
    await this.work.remove(Commitment, { contractId: contract.id });
    await this.work.remove(Benefit, { contractId: contract.id });
    await this.exclusivities.write({ contractId: contract.id }, []);
    await this.work.remove(Term, { id: term.id });
    await this.work.remove(Contract, { id: contract.id });
  }

  private async writeCommitments(contractId: string, termId: string, commitments: readonly CommitmentDto[]): Promise<void> {
    checkCommitments(commitments);
    const rows = commitments.map((form, place) => ({ ...form, id: form.id ?? newId(), contractId, termId, place: place + 1 }));
    await this.work.insert(Commitment, rows as Partial<Commitment>[]);
  }

  private async writeBenefits(contractId: string, termId: string, benefits: readonly BenefitDto[]): Promise<void> {
    const rows = benefits.map((form, place) => ({ ...form, id: form.id ?? newId(), contractId, termId, place: place + 1 }));
    await this.work.insert(Benefit, rows as Partial<Benefit>[]);
  }
}

/** @throws Refused `ends-before-it-starts`, at the field of the form */
function termOf(form: TermDto | ChangeTermDto): Partial<Term> {
  if (form.startsOn !== undefined && form.endsOn !== undefined && form.endsOn < form.startsOn) {
    refuse('ends-before-it-starts', {}, { term: { endsOn: sentenceOfRefusal('ends-before-it-starts') } });
  }
  const { billingPlan, ...term } = form;
  return { ...(term as Partial<Term>), ...(billingPlan ? { billingPlan: planOf(billingPlan) } : {}) };
}

/** @throws Refused `least-above-most`, at the field of the form */
function checkCommitments(commitments: readonly CommitmentDto[]): void {
  commitments.forEach(({ leastPerGame, mostPerGame }, place) => {
    if (leastPerGame == null || mostPerGame == null || leastPerGame <= mostPerGame) return;
    refuse('least-above-most', {}, { commitments: { [place]: { leastPerGame: sentenceOfRefusal('least-above-most') } } });
  });
}
