import { Inject, Injectable } from '@nestjs/common';
import { refuse, sentenceOfRefusal } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { OfferViews } from '../../sponsorship/offers/offer-views.service.ts';
import type { OfferView } from '../../sponsorship/offers/offer-view.ts';
import { CompanyCheck } from '../../sponsorship/company/company-check.service.ts';
import { ContractViews } from '../../sponsorship/contract-view.service.ts';
import { planLines } from './asked-lines.ts';
import type { PromiseCheckDto } from './promise-check.dto.ts';
import type { Asked } from './promise-checks.service.ts';

/** An offer that is asked about. */
export type AskedOffer = Asked & { readonly offer: OfferView };

/** What is asked in a form, in a draft contract or in an offer, and who is in the way of it. Inside a unit of work. */
@Injectable()
export class AskedDeals {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ContractViews) private readonly contracts: ContractViews,
    @Inject(OfferViews) private readonly offers: OfferViews,
    @Inject(CompanyCheck) private readonly company: CompanyCheck,
  ) {}

  /** @throws Refused `unknown-season`, `least-above-most`, `ends-before-it-starts` */
  async ofForm(form: PromiseCheckDto): Promise<Asked> {
    const [season] = await this.work.sql<{ startsOn: string; endsOn: string }>('select starts_on as "startsOn", ends_on as "endsOn" from season where department_id = $1 and id = $2', [form.seasonId]);
    if (season === undefined) return refuse('unknown-season');
    const sponsorId = form.sponsorId ?? null;
    const days = { startsOn: form.startsOn ?? season.startsOn, endsOn: form.endsOn ?? season.endsOn };
    return {
      seasonId: form.seasonId,
      lines: planLines(form.lines, { sponsorId, categoryId: form.categoryId ?? null, ...days }),
      ...(form.leavingOutOfferId ? { leavingOutOfferId: form.leavingOutOfferId } : {}),
      deal: 'this offer',
      obstacles: await this.blocked(sponsorId, form.categoryId ?? null),
    };
  }

  /** An offer in any state; what it holds itself is not in its way. @throws Refused `not-found` */
  async ofOffer(id: string): Promise<AskedOffer> {
    const offer = await this.offers.one(id);
    const { seasonId, sponsorId, startsOn, endsOn } = offer;
    const lines = planLines(offer.readLines, { sponsorId, categoryId: null, startsOn, endsOn, dealId: offer.id });
    const inTheWay = await this.company.obstaclesOf({ kind: 'offer', dealId: offer.id, sponsorId, startsOn, endsOn });
    return { offer, seasonId, lines, leavingOutOfferId: offer.id, deal: 'this offer', obstacles: inTheWay.map((one) => `${one.words}.`) };
  }

  /** What the offer holds of which the draft was made is not in its way. @throws Refused `not-found`, `contract-not-a-draft` */
  async ofContract(id: string): Promise<Asked> {
    const contract = await this.contracts.one(id);
    if (contract.term.state !== 'draft') refuse('contract-not-a-draft');
    const { startsOn, endsOn, seasonId } = contract.term;
    const deal = { sponsorId: contract.sponsorId, categoryId: null, startsOn, endsOn, dealId: contract.id };
    const inTheWay = await this.company.obstaclesOf({ kind: 'contract', dealId: contract.id, sponsorId: contract.sponsorId, startsOn, endsOn });
    const isExcepted = Boolean(contract.categoryException && contract.categoryExceptionApprovedBy);
    const [madeOf] = await this.work.sql<{ id: string }>('select id from offer where department_id = $1 and contract_id = $2', [contract.id]);
    return { seasonId, lines: planLines(contract.commitments, deal), ...(madeOf ? { leavingOutOfferId: madeOf.id } : {}), deal: 'this contract', obstacles: inTheWay.filter((one) => one.because !== 'blocked' || !isExcepted).map((one) => `${one.words}.`) };
  }

  /** A category that the department takes no sponsors of. */
  private async blocked(sponsorId: string | null, categoryId: string | null): Promise<string[]> {
    if (!isId(sponsorId ?? '') && !isId(categoryId ?? '')) return [];
    const rows = await this.work.sql<{ name: string }>(
      `select category.name from sponsor_category as category where category.department_id = $1 and category.is_blocked
         and (category.id = $2 or category.id = (select sponsor.category_id from sponsor where sponsor.department_id = $1 and sponsor.id = $3))`,
      [categoryId, sponsorId],
    );
    return rows.map(({ name }) => sentenceOfRefusal('category-blocked', { category: name }));
  }
}
