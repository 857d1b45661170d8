import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { valuedCount } from '../../domain/sponsorship/line-values.ts';
import type { Position } from '../../domain/sponsorship/position.ts';
import { BECAUSE, fateOf, WAITS_FOR, waitsForGames } from '../../domain/sponsorship/rollover/fate.ts';
import type { ContractChoice, Fate } from '../../domain/sponsorship/rollover/fate.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { ContractHappenings } from '../contract-happenings.service.ts';
import { ContractSigning } from '../contract-signing.service.ts';
import { ContractViews } from '../contract-view.service.ts';
import type { ContractView } from '../contract-view.ts';
import { Contract } from '../contract.entity.ts';
import { ContractService } from '../contract.service.ts';
import { TermLedger } from '../term-ledger.service.ts';
import type { TermBooks } from '../term-ledger.service.ts';
import { newRateOf, renewalForm, yearForm } from './next-contract.ts';
import type { NextSeason } from './next-contract.ts';
import type { RolledContract } from './roll-over.dto.ts';
import { whatIsLeftBehind } from './left-behind.ts';

/** What was chosen for the contracts of a season, and the day on which agreed years are carried on. */
export interface Asked {
  choices: ReadonlyMap<string, ContractChoice>;
  signedOn: Day;
}

type Made = Pick<RolledContract, 'choice' | 'waits' | 'isSigned' | 'nextContractId' | 'nextNumber' | 'nextYearNumber' | 'startsOn' | 'endsOn' | 'nextPriceCents'>;

const LEFT: Made = { choice: 'leave', waits: [], isSigned: false, nextContractId: null, nextNumber: null, nextYearNumber: null, startsOn: null, endsOn: null, nextPriceCents: null };

/** Carries the contracts of a season into the next: agreed years signed by the ordinary signing, renewals as drafts. */
@Injectable()
export class ContractCarrying {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ContractViews) private readonly views: ContractViews,
    @Inject(ContractService) private readonly contracts: ContractService,
    @Inject(ContractSigning) private readonly signing: ContractSigning,
    @Inject(ContractHappenings) private readonly happenings: ContractHappenings,
    @Inject(TermLedger) private readonly terms: TermLedger,
  ) {}

  /** In the order in which they were signed, so that of two in each other's way the earlier goes first. */
  async carry(fromSeasonId: string, next: NextSeason, asked: Asked): Promise<RolledContract[]> {
    const { data } = await this.views.list({ seasonId: fromSeasonId, perPage: 10_000 });
    const contracts = data.toSorted((one, other) => orderOf(one).localeCompare(orderOf(other)));
    const books = new Map((await this.terms.read(contracts.map((one) => one.term.id))).map((one) => [one.contractId, one]));
    const disputes = await this.openDisputes(contracts.map((one) => one.id));
    const rolled: RolledContract[] = [];
    for (const contract of contracts) {
      const openDisputes = disputes.get(contract.id) ?? 0;
      const fate = fateOf(endingOf(contract, next, openDisputes));
      const choice = fate.choices.find((one) => one === asked.choices.get(contract.id)) ?? fate.choices[0]!;
      const made = await this.make(contract, next, fate, choice, books.get(contract.id), asked.signedOn);
      rolled.push({
        contractId: contract.id, number: contract.number, title: contract.title, sponsorId: contract.sponsorId, sponsorName: contract.sponsorName,
        yearNumber: contract.yearNumber, years: contract.years, choices: fate.choices, because: BECAUSE[fate.because], priceCents: contract.term.priceCents,
        cardCents: choice === 'leave' ? null : cardWorthOf(contract, next, books.get(contract.id)?.position ?? null),
        notes: choice === 'leave' ? [] : whatIsLeftBehind(contract, choice, openDisputes),
        ...made,
      });
    }
    return rolled;
  }

  private async make(contract: ContractView, next: NextSeason, fate: Fate, choice: ContractChoice, books: TermBooks | undefined, signedOn: Day): Promise<Made> {
    if (choice === 'leave') return LEFT;
    const happened = (books?.happened ?? []).map(({ happening }) => happening);
    const isYear = choice === 'carryOn';
    const draft = await this.contracts.add(isYear ? yearForm(contract, next, happened) : renewalForm(contract, next, happened));
    const { years, increaseBasisPoints, priceVariesWith, yearNumber } = contract;
    const follows = isYear ? { years, increaseBasisPoints, yearNumber: yearNumber + 1, followsAs: 'year' as const } : { followsAs: 'renewal' as const };
    await this.work.update(Contract, draft.id, null, { followsContractId: contract.id, priceVariesWith, ...follows });
    const waits = isYear ? await this.sign(contract, draft.id, fate, signedOn) : [];
    const { number } = await this.work.one(Contract, draft.id);
    const { startsOn, endsOn, priceCents } = draft.term;
    return { choice, waits, isSigned: isYear && waits.length === 0, nextContractId: draft.id, nextNumber: number, nextYearNumber: isYear ? yearNumber + 1 : 1, startsOn, endsOn, nextPriceCents: priceCents };
  }

  /** By the name of the original; what would be refused leaves a draft that says why. */
  private async sign({ number, term }: ContractView, contractId: string, fate: Fate, signedOn: Day): Promise<string[]> {
    const waits: string[] = fate.waitsFor.map((reason) => WAITS_FOR[reason]);
    if (waits.length > 0) return waits;
    const signature = { signedOn, signedByName: term.signedByName ?? `As agreed in ${number}` };
    const refusal = await this.signing.whyNot(contractId, signature);
    if (refusal) return [`${refusal.message} The next year is a draft until that is settled.`];
    await this.happenings.sign(contractId, signature);
    return [];
  }

  private async openDisputes(contractIds: readonly string[]): Promise<Map<string, number>> {
    const rows = await this.work.sql<{ contractId: string; open: number }>(
      `select contract_id as "contractId", count(*)::int as open from read_dispute where department_id = $1 and contract_id = any($2::uuid[]) and outcome is null group by contract_id`,
      [contractIds],
    );
    return new Map(rows.map((row) => [row.contractId, row.open]));
  }
}

const orderOf = ({ term, number, id }: ContractView): string => [term.signedOn ?? '9999', number ?? '', id].join(' ');

function endingOf(contract: ContractView, { nextTeams }: NextSeason, openDisputes: number): Parameters<typeof fateOf>[0] {
  const named = new Set(contract.commitments.flatMap((line) => line.teamIds));
  return {
    state: contract.term.state,
    yearNumber: contract.yearNumber,
    years: contract.years,
    isFollowed: contract.followedByContractId !== null,
    isInKind: contract.isInKind,
    isHeld: contract.hold !== null,
    openDisputes,
    waitsForGames: waitsForGames(contract.term.pricing, contract.commitments),
    teamsOfOtherSeasons: [...named].filter((id) => !nextTeams.has(id)).length,
  };
}

/** The lines one by one at the new rate card, with the games of the season that ends where a line is counted by the game. */
function cardWorthOf(contract: ContractView, next: NextSeason, position: Position | null): number | null {
  if (position === null) return null;
  const lines = new Map([...contract.commitments, ...contract.benefits].map((line) => [line.id, line]));
  return position.terms.lines.reduce((sum, terms) => {
    const line = lines.get(terms.lineId);
    return line ? sum + valuedCount(terms) * newRateOf(line, next) : sum;
  }, 0);
}
