import { Inject, Injectable } from '@nestjs/common';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { ContractViews } from '../../sponsorship/contract-view.service.ts';
import type { ContractView } from '../../sponsorship/contract-view.ts';
import { Seller } from '../../sponsorship/seller.entity.ts';
import { FulfillmentService } from '../fulfillment/fulfillment.service.ts';
import type { FulfillmentView } from '../fulfillment/fulfillment.dto.ts';
import type { BenefitOfSponsor, ContractOfSponsor, LineOfSponsor } from './contracts-of-sponsor.dto.ts';
import { readsOfSponsor } from './reads-of-sponsor.ts';

/** No sponsor has more. */
const MOST_CONTRACTS = 500;

/** The signed contracts of one sponsor, the latest first; drafts are the office's own. */
@Injectable()
export class ContractsOfSponsor {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ContractViews) private readonly contracts: ContractViews,
    @Inject(FulfillmentService) private readonly fulfillment: FulfillmentService,
  ) {}

  async of(sponsorId: string): Promise<ContractOfSponsor[]> {
    const { data } = await this.contracts.list({ sponsorId, sort: '-startsOn', perPage: MOST_CONTRACTS });
    const signed = data.filter((contract) => contract.term.state !== 'draft');
    const proofs = new Map((await this.fulfillment.ofContracts(signed.map((contract) => contract.id), { nights: false })).map((proof) => [proof.contractId, proof]));
    const billingElsewhere = new Set((await this.work.find(Seller, { keepsBooksHere: false })).map((seller) => seller.id));
    return signed.map((contract) => ({ ...shown(contract, proofs.get(contract.id)!), isInvoicedHere: !billingElsewhere.has(contract.sellerId) }));
  }
}

function shown({ title, sellerName, isInKind, term, standing }: ContractView, proof: FulfillmentView): Omit<ContractOfSponsor, 'isInvoicedHere'> {
  const { contractId, number, seasonId, seasonName, startsOn, endsOn, state, sum, lines, benefits } = proof;
  return {
    contractId, number, title, sellerName, isInKind, seasonId, seasonName, startsOn, endsOn, state,
    pricing: term.pricing,
    priceCents: standing.priceCents,
    stillToInvoiceCents: standing.toBillCents,
    sum: readsOfSponsor(sum),
    lines: lines.map(lineOf),
    benefits: benefits.map(benefitOf),
  };
}

function lineOf({ commitmentId, readKindName, counting, standing, planned, gamesInAll, gamesPlayed }: FulfillmentView['lines'][number]): LineOfSponsor {
  return { commitmentId, readKindName, counting, planned, gamesInAll, gamesPlayed, ...readsOfSponsor(standing) };
}

/** What was taken back was never delivered. */
function benefitOf({ deliveries, benefitId, name, quantity, delivered, dueOn, earns, startsOn, endsOn }: FulfillmentView['benefits'][number]): BenefitOfSponsor {
  const standing = deliveries.filter((one) => !one.isTakenBack).map(({ deliveredOn, quantity: pieces, proof }) => ({ deliveredOn, quantity: pieces, proof }));
  return { benefitId, name, quantity, delivered, dueOn, earns, startsOn, endsOn, deliveries: standing };
}
