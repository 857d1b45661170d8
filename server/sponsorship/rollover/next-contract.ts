import type { Day } from '../../domain/day.ts';
import type { Cents } from '../../domain/money.ts';
import { agreedPrice, priceOfNextYear, signedPrice } from '../../domain/sponsorship/rollover/agreed-price.ts';
import { movedBillingPlan } from '../../domain/billing/moved-plan.ts';
import { movedDay } from '../../domain/sponsorship/rollover/moved-days.ts';
import type { SeasonMove } from '../../domain/sponsorship/rollover/moved-days.ts';
import type { Happening } from '../../domain/sponsorship/happening.ts';
import type { BillingPlanDto } from '../billing-plan.dto.ts';
import type { BenefitDto, CommitmentDto } from '../contract-line.dto.ts';
import type { BenefitView, CommitmentView, ContractView } from '../contract-view.ts';
import type { ContractDto } from '../contract.dto.ts';
import type { ExclusivityDto } from '../company/company.dto.ts';

/** What the contracts of a season are carried into. */
export interface NextSeason {
  seasonId: string;
  move: SeasonMove;
  /** the new team of each old one, of this season and of others that were rolled over */
  nextTeams: ReadonlyMap<string, string>;
  /** the new rate card */
  rates: readonly { readKindId: string | null; benefitName: string | null; priceCents: number }[];
}

/** The next agreed year: same lines, the price as agreed for it, days moved along. */
export function yearForm(contract: ContractView, next: NextSeason, happenings: readonly Happening[]): ContractDto {
  const { increaseBasisPoints, term } = contract;
  const signedCents = signedPrice(happenings) ?? (term.priceCents as Cents);
  const raised = <Amount extends number | null>(amount: Amount): Amount => (amount === null ? amount : (priceOfNextYear(amount as Cents, increaseBasisPoints) as number as Amount));
  return {
    ...common(contract, next),
    note: contract.note,
    categoryException: contract.categoryException,
    categoryExceptionApprovedBy: contract.categoryExceptionApprovedBy,
    term: termForm(contract, next, { beforeCents: signedCents, nextCents: priceOfNextYear(agreedPrice(signedCents, happenings), increaseBasisPoints), increaseBasisPoints }),
    commitments: contract.commitments.map((line) => ({ ...commitmentForm(line, next), rateCents: line.rateCents, priceEachCents: raised(line.priceEachCents) })),
    benefits: contract.benefits.map((line) => ({ ...benefitForm(line, next), rateCents: line.rateCents })),
  };
}

/** A draft of a renewal: the old price for a start, the lines at the prices of the new rate card. */
export function renewalForm(contract: ContractView, next: NextSeason, happenings: readonly Happening[]): ContractDto {
  const signedCents = signedPrice(happenings) ?? (contract.term.priceCents as Cents);
  return {
    ...common(contract, next),
    note: contract.note,
    term: termForm(contract, next, { beforeCents: signedCents, nextCents: agreedPrice(signedCents, happenings), increaseBasisPoints: 0 }),
    commitments: contract.commitments.map((line) => ({ ...commitmentForm(line, next), rateCents: newRateOf(line, next) })),
    benefits: contract.benefits.map((line) => ({ ...benefitForm(line, next), rateCents: newRateOf(line, next) })),
  };
}

/** What one read or one piece costs at the new rate card, or as before where it has no price there. */
export function newRateOf(line: CommitmentView | BenefitView, { rates }: NextSeason): number {
  const rate = 'readKindId' in line ? rates.find((one) => one.readKindId === line.readKindId) : rates.find((one) => one.benefitName === line.name);
  return rate?.priceCents ?? line.rateCents;
}

type Common = Pick<ContractDto, 'sponsorId' | 'sellerId' | 'payerId' | 'title' | 'cancelledGamePolicy' | 'isInKind' | 'exclusivities'>;

function common({ sponsorId, sellerId, payerId, title, cancelledGamePolicy, isInKind, exclusivities }: ContractView, { move }: NextSeason): Common {
  const rights = exclusivities.filter((right) => right.reach !== 'game').map((right): ExclusivityDto => ({
    categoryId: right.categoryId, reach: right.reach, schoolId: right.schoolId, windowKinds: [...right.windowKinds],
    startsOn: movedDay(right.startsOn, move), endsOn: movedDay(right.endsOn, move),
  }));
  return { sponsorId, sellerId, payerId, title, cancelledGamePolicy, isInKind, exclusivities: rights };
}

interface Prices {
  /** as it was signed, to which its bills came */
  beforeCents: Cents;
  nextCents: Cents;
  increaseBasisPoints: number;
}

function termForm({ term }: ContractView, { seasonId, move }: NextSeason, prices: Prices): ContractDto['term'] {
  const raised = (amount: number | null) => (amount === null ? null : priceOfNextYear(amount as Cents, prices.increaseBasisPoints));
  return {
    seasonId,
    startsOn: movedDay(term.startsOn, move),
    endsOn: movedDay(term.endsOn, move),
    pricing: term.pricing,
    priceCents: prices.nextCents,
    billAtLeastCents: raised(term.billAtLeastCents),
    billAtMostCents: raised(term.billAtMostCents),
    billingPlan: movedBillingPlan(term.billingPlan, move, prices) as BillingPlanDto,
  };
}

/** Blackout days and games promised aloud belong to the season that is over. */
function commitmentForm(line: CommitmentView, { move, nextTeams }: NextSeason): CommitmentDto {
  const { id: _, contractId: _contract, place: _place, readKindName: _name, standing: _standing, blackoutDays: _days, pinnedGameIds: _games, startsOn, endsOn, teamIds, ...kept } = line;
  const moved = (day: Day | null) => (day === null ? null : movedDay(day, move));
  return { ...kept, startsOn: moved(startsOn), endsOn: moved(endsOn), teamIds: teamIds.map((id) => nextTeams.get(id) ?? id) };
}

function benefitForm({ name, quantity, fairValueCents, isTaxed, earns, startsOn, endsOn, dueOn }: BenefitView, { move }: NextSeason): BenefitDto {
  const moved = (day: Day | null) => (day === null ? null : movedDay(day, move));
  return { name, quantity, fairValueCents, isTaxed, earns, startsOn: moved(startsOn), endsOn: moved(endsOn), dueOn: moved(dueOn) };
}
