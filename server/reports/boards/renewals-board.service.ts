import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { Day } from '../../domain/day.ts';
import { whatFollows } from '../../domain/reports/what-follows.ts';
import type { FollowingContract, FollowingOffer } from '../../domain/reports/what-follows.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { FulfillmentService } from '../fulfillment/fulfillment.service.ts';
import { RenewalSuggestions } from './renewal-suggestions.service.ts';
import type { LastTerm } from './renewal-suggestions.service.ts';
import { seasonAndNext } from './renewal-seasons.ts';
import type { SeasonRow, TwoSeasons } from './renewal-seasons.ts';
import { CONTRACTS_AFTER, LAST_TERM, MONEY_OF_CONTRACTS, OFFERS_AFTER, SEASONS_BY_DAY } from './renewals-queries.ts';
import type { PaidState, RenewalRow, RenewalsQuery, RenewalsView } from './renewals.dto.ts';

type OfSponsor = Pick<RenewalRow, 'sponsorName' | 'contactName' | 'lastContactOn' | 'nextStep' | 'nextStepOn' | 'callerPersonId' | 'callerName'>;
type LastRow = LastTerm & OfSponsor & Pick<RenewalRow, 'number' | 'isInKind' | 'state'> & { years: number; yearNumber: number; fixedCents: number; lostOn: Day | null; lostReason: string | null };
type MoneyRow = Pick<RenewalRow, 'contractId' | 'openCents' | 'overdueCents' | 'toBillCents'> & { agreedCents: number };
type AfterRow = FollowingContract & { sponsorId: string; followsContractId: string | null };
type OfferRow = FollowingOffer & { sponsorId: string };

/** The sponsors of a season: what they had, how it went, what follows, and what to put to them next. */
@Injectable()
export class RenewalsBoard {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(FulfillmentService) private readonly proofs: FulfillmentService,
    @Inject(RenewalSuggestions) private readonly suggestions: RenewalSuggestions,
  ) {}

  /** @throws Refused `not-found` for a season that is none of ours */
  async report({ seasonId, callerPersonId, isNobodys }: RenewalsQuery): Promise<RenewalsView> {
    const today = await this.departments.today();
    const seasons = await this.work.sql<SeasonRow>(SEASONS_BY_DAY);
    const both = seasonAndNext(seasons, seasonId, today);
    const all = both.season ? await this.work.sql<LastRow>(LAST_TERM, [both.season.id]) : [];
    const asked = all.filter((row) => (isNobodys ? row.callerPersonId === null : callerPersonId === undefined || row.callerPersonId === callerPersonId));
    const rows = asked.length === 0 ? [] : await this.rows(asked, both, today);
    const sum = (cents: (row: RenewalRow) => number) => rows.reduce((total, row) => total + cents(row), 0);
    return {
      seasonId: both.season?.id ?? null,
      seasonName: both.season?.name ?? null,
      nextSeasonId: both.next?.id ?? null,
      nextSeasonName: both.next?.name ?? null,
      isOver: both.season !== null && both.season.endsOn < today,
      today,
      rows,
      priceCents: sum((row) => row.priceCents),
      suggestedCents: sum((row) => row.suggestion.worthCents),
      keptCents: sum((row) => (row.follows.state === 'signed' || row.follows.state === 'carriedOn' ? row.priceCents : 0)),
      seasons: seasons.map(({ id, name }) => ({ id, name })),
      callers: callersOf(all),
    };
  }

  private async rows(last: readonly LastRow[], both: TwoSeasons, today: Day): Promise<RenewalRow[]> {
    const ids = last.map(({ contractId }) => contractId);
    const sponsorIds = [...new Set(last.map(({ sponsorId }) => sponsorId))];
    const money = new Map((await this.work.sql<MoneyRow>(MONEY_OF_CONTRACTS, [ids, today])).map((row) => [row.contractId, row]));
    const after = await this.work.sql<AfterRow>(CONTRACTS_AFTER, [ids, sponsorIds, both.next?.id ?? null, both.season!.endsOn]);
    const offers = await this.work.sql<OfferRow>(OFFERS_AFTER, [today, sponsorIds, both.next?.id ?? null, both.season!.endsOn]);
    const proofs = await this.proofs.ofContracts(ids, { nights: false });
    const prices = new Map(last.map(({ contractId, pricing, fixedCents }) => [contractId, pricing === 'fixed' ? fixedCents : (money.get(contractId)?.agreedCents ?? 0)]));
    const suggested = await this.suggestions.of(last, proofs, prices, both, today);
    return last
      .map(({ termId: _termId, sellerId: _sellerId, payerId: _payerId, pricing: _pricing, fixedCents: _fixed, years, yearNumber, lostOn, lostReason, ...row }): RenewalRow => {
        const { openCents = 0, overdueCents = 0, toBillCents = 0 } = money.get(row.contractId) ?? {};
        const { promised = 0, given = 0, madeGood = 0, credited = 0, owed = 0 } = proofs.find((one) => one.contractId === row.contractId)?.sum ?? {};
        const contract = after.find((one) => one.followsContractId === row.contractId) ?? after.find((one) => one.followsContractId === null && one.sponsorId === row.sponsorId) ?? null;
        return {
          ...row, promised, given, madeGood, credited, owed, openCents, overdueCents, toBillCents,
          priceCents: prices.get(row.contractId)!,
          paid: paidState({ openCents, overdueCents, toBillCents }),
          follows: whatFollows({ yearNumber, years, contract, offers: offers.filter((offer) => offer.sponsorId === row.sponsorId), lostOn, lostReason }),
          ...suggested.get(row.contractId)!,
        };
      })
      .toSorted((one, other) => other.priceCents - one.priceCents || one.sponsorName.localeCompare(other.sponsorName, 'en'));
  }
}

/** What is overdue is said before what is open, and what is open before what nobody has billed yet. */
function paidState({ openCents, overdueCents, toBillCents }: Pick<RenewalRow, 'openCents' | 'overdueCents' | 'toBillCents'>): PaidState {
  if (overdueCents > 0) return 'overdue';
  if (openCents > 0) return 'open';
  return toBillCents > 0 ? 'notBilled' : 'paid';
}

function callersOf(rows: readonly LastRow[]): RenewalsView['callers'] {
  const names = new Map(rows.flatMap(({ callerPersonId, callerName }) => (callerPersonId && callerName ? [[callerPersonId, callerName] as const] : [])));
  return [...names].map(([personId, name]) => ({ personId, name })).toSorted((one, other) => one.name.localeCompare(other.name, 'en'));
}
