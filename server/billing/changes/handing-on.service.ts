import { Inject, Injectable } from '@nestjs/common';
import { checkSameSeller } from '../../domain/billing/payment.ts';
import type { Day } from '../../domain/day.ts';
import { amountText, centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import { carriedFiguresOf } from '../../domain/sponsorship/apply-happening.ts';
import type { HappeningOf } from '../../domain/sponsorship/happening.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { CompanyCheck } from '../../sponsorship/company/company-check.service.ts';
import { ContractAssignment } from '../../sponsorship/contract-assignment.entity.ts';
import { Contract } from '../../sponsorship/contract.entity.ts';
import { Payer } from '../../sponsorship/payer.entity.ts';
import { SponsorCategory } from '../../sponsorship/sponsor-category.entity.ts';
import { Sponsor } from '../../sponsorship/sponsor.entity.ts';
import { checkGoesOn } from './amending.service.ts';
import type { AssignContractDto, CarryReadsDto } from './change.dto.ts';
import type { Subject } from './change-subjects.service.ts';
import type { AskedChange, PlannedChange } from './contract-changes.service.ts';
import { openCentsOf } from './open-money.service.ts';

/** A contract goes on with a new owner, or its reads go on in the next term. */
@Injectable()
export class HandingOn {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(CompanyCheck) private readonly company: CompanyCheck,
  ) {}

  /** Nothing is posted: the seller stays, and what is issued keeps the names it was issued with. */
  assign(form: AssignContractDto, on: Day): AskedChange {
    return { on, plan: (subject) => this.planAssigning(subject, form, on) };
  }

  /** @throws Refused `carried-to-itself`, `carried-to-another-sponsor`, `payment-crosses-sellers`, and as the rules of carrying do */
  carry(form: CarryReadsDto, on: Day): AskedChange {
    const carryId = newId();
    const plan = async (subject: Subject, other: Subject | null): Promise<PlannedChange> => {
      const into = other ?? refuse('unknown-contract');
      checkCarrying(subject, into);
      const out: HappeningOf<'carriedOut'> = {
        kind: 'carriedOut', carryId, toContractId: into.contract.id, lineId: form.lineId, count: form.count, ...(form.gameId ? { gameId: form.gameId } : {}),
      };
      const { valuesCents, billedCents, taxCents } = carriedFiguresOf(subject.position, out);
      const happening: HappeningOf<'carriedIn'> = {
        kind: 'carriedIn', carryId, fromContractId: subject.contract.id, lineId: form.toLineId, count: form.count, ...(form.toGameId ? { gameId: form.toGameId } : {}),
        valuesCents, billedCents: centsOf(billedCents), taxCents: centsOf(taxCents),
      };
      return { on, reason: form.reason ?? null, steps: [{ subject, happening: out }, { subject: into, happening }], cautions: [], write: async () => {} };
    };
    return { on, otherContractId: form.toContractId, plan };
  }

  private async planAssigning(subject: Subject, form: AssignContractDto, on: Day): Promise<PlannedChange> {
    const { contract, documents } = subject;
    if (subject.position.closed) refuse('contract-closed');
    const sponsor = (await this.work.first(Sponsor, { id: form.toSponsorId })) ?? refuse('unknown-sponsor');
    const payer = (await this.work.first(Payer, { id: form.toPayerId })) ?? refuse('unknown-payer');
    if (sponsor.id === contract.sponsorId && payer.id === contract.payerId) refuse('already-the-owner');
    const exception = {
      categoryException: form.categoryException ?? contract.categoryException,
      categoryExceptionApprovedBy: form.categoryExceptionApprovedBy ?? contract.categoryExceptionApprovedBy,
    };
    const category = await this.work.one(SponsorCategory, sponsor.categoryId);
    if (category.isBlocked && !(exception.categoryException && exception.categoryExceptionApprovedBy)) refuse('category-blocked', { category: category.name });
    const { startsOn, endsOn } = subject.term;
    const handed = { kind: 'contract', dealId: contract.id, sponsorId: sponsor.id, startsOn, endsOn, exception: form.companyException } as const;
    await this.company.tryInTheWay(handed);
    const unpaidCents = openCentsOf(documents, 'invoice');
    const from = await this.work.one(Sponsor, contract.sponsorId);
    const cautions = [
      'Nothing is posted. Invoices that were issued keep the names they were issued with; the next ones name the new payer.',
      ...(unpaidCents > 0 ? [`${amountText(centsOf(unpaidCents))} on its invoices is not paid yet, and stays with the payer they name.`] : []),
      ...(sponsor.id === contract.sponsorId ? [] : [`The copy of ${from.name} is not read for ${sponsor.name}: give ${sponsor.name} copy of its own.`]),
    ];
    const write = async (): Promise<void> => {
      await this.company.refuseInTheWay(handed);
      await this.hand(contract, form, exception, on);
    };
    return { on, reason: form.reason, steps: [], cautions, write };
  }

  private async hand(contract: Contract, form: AssignContractDto, exception: Partial<Contract>, on: Day): Promise<void> {
    const { toSponsorId, toPayerId, reason } = form;
    await this.work.insert(ContractAssignment, {
      contractId: contract.id, fromSponsorId: contract.sponsorId, toSponsorId, fromPayerId: contract.payerId, toPayerId, assignedOn: on, reason,
      recordedByPersonId: this.work.personId,
    });
    await this.work.update(Contract, contract.id, null, { sponsorId: toSponsorId, payerId: toPayerId, ...exception });
    const sponsor = await this.work.one(Sponsor, toSponsorId);
    if (sponsor.status !== 'active') await this.work.update(Sponsor, toSponsorId, null, { status: 'active' });
  }
}

function checkCarrying(subject: Subject, into: Subject): void {
  if (subject.contract.id === into.contract.id) refuse('carried-to-itself');
  if (subject.contract.sponsorId !== into.contract.sponsorId) refuse('carried-to-another-sponsor');
  checkSameSeller(subject.contract.sellerId, into.contract.sellerId);
  checkGoesOn(into);
}
