import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { nextPackage } from '../../domain/reports/next-package.ts';
import type { LineRecord, NextPackage, PackageOnOffer, RateFrom } from '../../domain/reports/next-package.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { BENEFITS, COMMITMENTS } from '../../sponsorship/contract-view.sql.ts';
import type { BenefitView, CommitmentRow } from '../../sponsorship/contract-view.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import type { FulfillmentView, LineFulfillment } from '../fulfillment/fulfillment.dto.ts';
import { PACKAGES_OF_SEASONS, RATES_OF_SEASONS } from './renewals-queries.ts';
import type { OfferStart } from './renewals.dto.ts';
import type { TwoSeasons } from './renewal-seasons.ts';

interface RateRow {
  seasonId: string;
  readKindId: string | null;
  benefitName: string | null;
  priceCents: number;
}

export interface LastTerm {
  contractId: string;
  termId: string;
  title: string;
  sponsorId: string;
  sellerId: string;
  payerId: string;
  pricing: 'fixed' | 'perRead';
  endsOn: Day;
  state: string;
}

export interface Suggested {
  suggestion: NextPackage;
  offer: OfferStart;
}

type RateOf = (line: { readKindId: string | null; name: string; rateCents: number }) => { rateCents: number; rateFrom: RateFrom };

/** What to put to the sponsors of a season next, from the rate card, the packages on offer and each contract's record. */
@Injectable()
export class RenewalSuggestions {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(TermLedger) private readonly terms: TermLedger,
  ) {}

  /** By the contract's id; five statements, however many. @param prices what each cost, in cents */
  async of(contracts: readonly LastTerm[], proofs: readonly FulfillmentView[], prices: ReadonlyMap<string, number>, seasons: TwoSeasons, today: Day): Promise<Map<string, Suggested>> {
    const ids = contracts.map(({ contractId }) => contractId);
    const seasonIds = [seasons.season, seasons.next].flatMap((season) => season?.id ?? []);
    const commitments = await this.work.sql<CommitmentRow>(COMMITMENTS, [ids]);
    const benefits = await this.work.sql<BenefitView>(BENEFITS, [ids]);
    const rateOf = ratesOf(await this.work.sql<RateRow>(RATES_OF_SEASONS, [seasonIds]), seasons);
    const packages = packagesOf(await this.work.sql<PackageOnOffer & { seasonId: string }>(PACKAGES_OF_SEASONS, [seasonIds]), seasons);
    const occurrences = await this.occurrences(contracts, commitments);
    return new Map(
      contracts.map((contract) => {
        const own = commitments.filter((line) => line.contractId === contract.contractId);
        const others = benefits.filter((line) => line.contractId === contract.contractId);
        const proof = proofs.find((one) => one.contractId === contract.contractId);
        const isOver = contract.endsOn < today || contract.state !== 'signed';
        const records = [
          ...own.map((line) => readRecord(line, proof?.lines.find((one) => one.commitmentId === line.id), isOver, occurrences.get(line.id) ?? 0, rateOf)),
          ...others.map((line) => benefitRecord(line, isOver, rateOf)),
        ];
        const suggestion = nextPackage(records, prices.get(contract.contractId) ?? 0, packages);
        return [contract.contractId, { suggestion, offer: offerOf(contract, suggestion, { commitments: own, benefits: others }, seasons) }];
      }),
    );
  }

  /** How often it happened, by commitment; only contracts with such lines are folded. */
  private async occurrences(contracts: readonly LastTerm[], commitments: readonly CommitmentRow[]): Promise<Map<string, number>> {
    const onOccurrence = new Set(commitments.filter((line) => line.counting === 'onOccurrence').map((line) => line.contractId));
    if (onOccurrence.size === 0) return new Map();
    const positions = await this.terms.positions(contracts.filter(({ contractId }) => onOccurrence.has(contractId)).map(({ termId }) => termId));
    const lines = [...positions.values()].flatMap((position) => position.lines);
    return new Map(lines.map((line) => [line.terms.lineId, line.slots.reduce((sum, slot) => sum + slot.occurrences, 0)]));
  }
}

/** A price of the next season before one of this season, before the contract's own. */
function ratesOf(rates: readonly RateRow[], { season, next }: TwoSeasons): RateOf {
  const find = (seasonId: string | undefined, { readKindId, name }: { readKindId: string | null; name: string }) =>
    rates.find((rate) => rate.seasonId === seasonId && (readKindId === null ? rate.benefitName === name : rate.readKindId === readKindId));
  return (line) => {
    const [ahead, here] = [find(next?.id, line), find(season?.id, line)];
    if (ahead) return { rateCents: ahead.priceCents, rateFrom: 'nextSeason' };
    return here ? { rateCents: here.priceCents, rateFrom: 'thisSeason' } : { rateCents: line.rateCents, rateFrom: 'contract' };
  };
}

function packagesOf(packages: readonly (PackageOnOffer & { seasonId: string })[], { season, next }: TwoSeasons): PackageOnOffer[] {
  const ahead = packages.filter((one) => one.seasonId === next?.id);
  return ahead.length > 0 ? ahead : packages.filter((one) => one.seasonId === season?.id);
}

function readRecord(line: CommitmentRow, proof: LineFulfillment | undefined, isOver: boolean, occurrences: number, rateOf: RateOf): LineRecord {
  const { readKindId, readKindName: name, counting } = line;
  const onOccurrence = counting === 'onOccurrence';
  const standing = proof?.standing;
  const promised = (standing?.promised ?? 0) - (standing?.carried ?? 0);
  return {
    readKindId, name, counting,
    quantity: onOccurrence ? (line.readsAtLeast ?? 0) : counting === 'perTerm' ? promised : line.reads,
    atMost: onOccurrence ? line.readsAtMost : null,
    due: isOver ? promised : (standing?.expectedByNow ?? 0),
    given: (standing?.given ?? 0) + (standing?.madeGood ?? 0),
    games: proof?.gamesInAll ?? 0,
    seen: onOccurrence ? { occurrences, games: proof?.gamesPlayed ?? 0 } : null,
    ...rateOf({ readKindId, name, rateCents: line.rateCents }),
  };
}

/** What earns over its days needs no delivery: it was there. */
function benefitRecord({ name, quantity, delivered, earns, rateCents }: BenefitView, isOver: boolean, rateOf: RateOf): LineRecord {
  const wasThere = earns === 'overDays';
  return {
    readKindId: null, name, counting: null, quantity, atMost: null, games: 0, seen: null,
    due: isOver || wasThere || delivered > 0 ? quantity : 0,
    given: wasThere ? quantity : isOver ? delivered : Math.max(delivered, quantity),
    ...rateOf({ readKindId: null, name, rateCents }),
  };
}

interface LinesBefore {
  commitments: readonly CommitmentRow[];
  benefits: readonly BenefitView[];
}

/** The lines of last term with the numbers that are suggested; teams, days and games belong to the season that is over. */
function offerOf(contract: LastTerm, { lines, worthCents }: NextPackage, { commitments, benefits }: LinesBefore, { next }: TwoSeasons): OfferStart {
  const reads = lines.filter((line) => line.readKindId !== null);
  const used = new Set<string>();
  const isPerRead = contract.pricing === 'perRead';
  const readLines = reads.map(({ readKindId, counting, quantity, atMost, rateCents }) => {
    const before = commitments.find((one) => one.readKindId === readKindId && one.counting === counting && !used.has(one.id))!;
    used.add(before.id);
    const { whose, severalCountAsOne, levels, leastPerGame, mostPerGame, separation, windowKinds, priority, isTaxed } = before;
    const numbers = counting === 'onOccurrence' ? { readsAtLeast: quantity || null, readsAtMost: atMost } : { reads: quantity };
    return { readKindId, counting, ...numbers, rateCents, ...(isPerRead ? { priceEachCents: rateCents } : {}), whose, severalCountAsOne, levels, leastPerGame, mostPerGame, separation, windowKinds, priority, isTaxed };
  });
  const { title, sponsorId, sellerId, payerId } = contract;
  return {
    title, sponsorId, sellerId, payerId, ...(next ? { seasonId: next.id } : {}), pricing: isPerRead ? 'perRead' : 'fixed', priceCents: isPerRead ? 0 : worthCents, readLines,
    benefitLines: lines.filter((line) => line.readKindId === null).map(({ name, quantity, rateCents }) => {
      const { fairValueCents, earns, isTaxed } = benefits.find((one) => one.name === name)!;
      return { name, quantity, rateCents, fairValueCents, earns, isTaxed };
    }),
  };
}
