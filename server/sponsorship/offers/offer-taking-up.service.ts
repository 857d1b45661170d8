import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { Day } from '../../domain/day.ts';
import { refuse } from '../../domain/refusals.ts';
import { assertOfferMove, offerStateOn } from '../../domain/sponsorship/offers/offer-moves.ts';
import type { OfferMove } from '../../domain/sponsorship/offers/offer-moves.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { BillingPlanDto } from '../billing-plan.dto.ts';
import { ContractHappenings } from '../contract-happenings.service.ts';
import type { ContractDto } from '../contract.dto.ts';
import { Contract } from '../contract.entity.ts';
import { ContractService } from '../contract.service.ts';
import { DealCompany } from './deal-company.service.ts';
import type { AcceptOfferDto, DraftContractDto } from './offer-life.dto.ts';
import { OfferRecords } from './offer-records.service.ts';
import type { OfferView } from './offer-view.ts';
import { OfferViews } from './offer-views.service.ts';
import { Offer } from './offer.entity.ts';

/** An offer becomes a contract: its first term is made as it was offered, and signed by the ordinary signing. */
@Injectable()
export class OfferTakingUp {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(OfferRecords) private readonly records: OfferRecords,
    @Inject(OfferViews) private readonly views: OfferViews,
    @Inject(ContractService) private readonly contracts: ContractService,
    @Inject(ContractHappenings) private readonly happenings: ContractHappenings,
    @Inject(DealCompany) private readonly company: DealCompany,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** @throws Refused `offer-lapsed`, `offer-already-accepted`, `offer-without-payer`, and as signing a contract does */
  async accept(id: string, form: AcceptOfferDto): Promise<void> {
    const contractId = await this.contractOf(id, 'accept', form);
    const { signedByName, categoryException, categoryExceptionApprovedBy, companyException } = form;
    await this.happenings.sign(contractId, { signedOn: form.signedOn as Day, signedByName, categoryException, categoryExceptionApprovedBy, companyException });
  }

  /** The same without a signature: a draft, which owes nothing until it is signed. */
  async draftContract(id: string, form: DraftContractDto): Promise<void> {
    await this.contractOf(id, 'draftContract', form);
  }

  private async contractOf(id: string, move: OfferMove, form: DraftContractDto): Promise<string> {
    const { offer } = await this.records.lock(id);
    const state = offerStateOn(offer, await this.departments.today());
    if (state !== 'lapsed' || !form.overrideReason) assertOfferMove(move, state, offer.lapsesOn);
    const view = await this.views.one(id);
    const payerId = form.payerId ?? offer.payerId ?? (await this.onlyPayerOf(offer.sponsorId));
    const contract = await this.contracts.add({ ...contractForm(view, payerId), ...noteOf(view, form), purchaseOrderNumber: form.purchaseOrderNumber ?? null });
    const { years, increaseBasisPoints, priceVariesWith } = offer;
    await this.work.update(Contract, contract.id, null, { years, increaseBasisPoints, priceVariesWith });
    // From here on the offer is taken up, so its own rights are not in its contract's way.
    await this.work.update(Offer, id, null, { contractId: contract.id });
    await this.company.handOn(id, contract.id);
    return contract.id;
  }

  private async onlyPayerOf(sponsorId: string): Promise<string> {
    const payers = await this.work.sql<{ id: string }>('select id from payer where department_id = $1 and sponsor_id = $2 limit 2', [sponsorId]);
    return payers.length === 1 ? payers[0]!.id : refuse('offer-without-payer', {}, { payerId: 'is missing' });
  }
}

function contractForm(offer: OfferView, payerId: string): ContractDto {
  const { sponsorId, sellerId, title, cancelledGamePolicy, seasonId, startsOn, endsOn, pricing, priceCents, billAtLeastCents, billAtMostCents } = offer;
  const billingPlan = offer.billingPlan as BillingPlanDto;
  return {
    sponsorId, sellerId, payerId, title, cancelledGamePolicy,
    term: { seasonId, startsOn, endsOn, pricing, priceCents, billAtLeastCents, billAtMostCents, billingPlan },
    commitments: offer.readLines.map(({ id: _, offerId: _offer, place: _place, readKindName: _name, ...line }) => line),
    benefits: offer.benefitLines.map(({ id: _, offerId: _offer, place: _place, ...line }) => line),
  };
}

function noteOf({ note, lapsesOn, state }: OfferView, { overrideReason }: DraftContractDto): { note: string | null } {
  const late = state === 'lapsed' && overrideReason ? `Taken up after the offer lapsed on ${lapsesOn}: ${overrideReason}` : null;
  return { note: [note, late].filter(Boolean).join('\n').slice(0, 2000) || null };
}
