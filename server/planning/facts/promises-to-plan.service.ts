import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import type { PromiseToPlan } from '../../domain/planning/facts/promise-to-plan.ts';
import { refuse } from '../../domain/refusals.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import { SignedCommitments } from '../signed-commitments.service.ts';
import { FactsRows } from './facts-rows.service.ts';
import { OtherSeasons } from './other-seasons.service.ts';
import { promiseOfCommitment, promiseOfMakegood } from './owed-promises.ts';
import type { ReadElsewhere } from './owed-promises.ts';
import { promiseOfLine } from './plan-line.ts';
import type { PlanLine } from './plan-line.ts';

interface PromisesWanted {
  readonly offers: 'open' | 'none';
  readonly leavingOutOfferId?: string;
  readonly adding?: readonly PlanLine[];
}

const LAST = 3;

/** What a season owes and what it keeps room for: signed commitments, makegoods, open offers, and lines that are asked about. */
@Injectable()
export class PromisesToPlan {
  constructor(
    @Inject(SignedCommitments) private readonly commitments: SignedCommitments,
    @Inject(TermLedger) private readonly ledger: TermLedger,
    @Inject(FactsRows) private readonly rows: FactsRows,
    @Inject(OtherSeasons) private readonly otherSeasons: OtherSeasons,
  ) {}

  async ofSeason(seasonId: string, today: Day, wanted: PromisesWanted, elsewhere: readonly ReadElsewhere[]): Promise<PromiseToPlan[]> {
    const signed = await this.signed(seasonId, today, elsewhere);
    const offered = wanted.offers === 'open' ? await this.rows.offered(seasonId, today) : [];
    const asked = await this.named(wanted.adding ?? []);
    // Room for what is only offered never takes a place from what is signed.
    const lines = [...offered.filter((line) => line.dealId !== wanted.leavingOutOfferId).map((line) => ({ ...line, priority: LAST })), ...asked];
    const kinds = await this.rows.kinds(lines.map((line) => line.readKindId));
    return [...signed, ...lines.map((line) => promiseOfLine(line, kinds.get(line.readKindId) ?? refuse('unknown-read-kind')))];
  }

  private async signed(seasonId: string, today: Day, elsewhere: readonly ReadElsewhere[]): Promise<PromiseToPlan[]> {
    const signed = await this.commitments.ofSeason(seasonId);
    const byId = new Map(signed.map((one) => [one.id, one]));
    const positions = await this.ledger.positions([...new Set(signed.map((one) => one.termId))]);
    const kept = await this.otherSeasons.keptBy({ seasonId, today, signed, positions, elsewhere });
    const makegoods = await this.rows.makegoods(signed.map((one) => one.id));
    return [
      ...signed.filter((one) => one.counting !== 'onOccurrence').map((one) => promiseOfCommitment(one, positions.get(one.termId), elsewhere, kept.get(one.id))),
      ...makegoods.map((makegood) => {
        const one = byId.get(makegood.commitmentId)!;
        return promiseOfMakegood(makegood, one, positions.get(one.termId), elsewhere);
      }),
    ];
  }

  private async named(lines: readonly PlanLine[]): Promise<PlanLine[]> {
    const sponsors = await this.rows.sponsors(lines.flatMap((line) => line.sponsorId ?? []));
    return lines.map((line) => {
      const sponsor = line.sponsorId === null ? undefined : (sponsors.get(line.sponsorId) ?? refuse('unknown-sponsor'));
      return { ...line, sponsorName: line.sponsorName ?? sponsor?.name, categoryId: line.categoryId ?? sponsor?.categoryId ?? null };
    });
  }
}
