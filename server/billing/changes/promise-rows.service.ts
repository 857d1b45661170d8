import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import type { LineTerms } from '../../domain/sponsorship/contract-terms.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Benefit } from '../../sponsorship/benefit.entity.ts';
import { Commitment } from '../../sponsorship/commitment.entity.ts';
import { CoveredGames } from '../../sponsorship/covered-games.service.ts';
import { ReadKind } from '../../sponsorship/read-kind.entity.ts';
import { benefitLineOf, readLineOf } from '../../sponsorship/terms-of-rows.ts';
import type { Term } from '../../sponsorship/term.entity.ts';
import type { NewBenefitDto, NewCommitmentDto } from './change.dto.ts';

/** A line as it enters a signed contract: its terms for the ledgers, its row for what is planned next. */
export interface NewLine {
  line: LineTerms;
  insert: () => Promise<void>;
}

const NO_NUMBERS = { readsAtLeast: null, readsAtMost: null, priceEachCents: null, startsOn: null, endsOn: null, leastPerGame: null, mostPerGame: null };

/** The rows of a contract's lines follow what is booked, so that planning sees the promise as it stands. */
@Injectable()
export class PromiseRows {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(CoveredGames) private readonly games: CoveredGames,
  ) {}

  /** Reads or pieces more or fewer on one line; what is counted game by game keeps its number for each game. */
  async follow(lineId: string, reads: number): Promise<void> {
    const commitment = await this.work.first(Commitment, { id: lineId });
    if (commitment?.counting === 'perTerm') await this.work.update(Commitment, lineId, null, { reads: commitment.reads + reads });
    if (commitment?.counting === 'onOccurrence') await this.work.update(Commitment, lineId, null, { readsAtLeast: (commitment.readsAtLeast ?? 0) + reads });
    const benefit = commitment ? null : await this.work.first(Benefit, { id: lineId });
    if (benefit) await this.work.update(Benefit, lineId, null, { quantity: benefit.quantity + reads });
  }

  /** A commitment from a day on, as the calendar has its games; it begins no earlier than the change. */
  async commitment(term: Term, { priceCents: _, ...form }: NewCommitmentDto, on: Day, place: number): Promise<NewLine> {
    const kind = (await this.work.first(ReadKind, { id: form.readKindId })) ?? refuse('unknown-read-kind');
    const startsOn = form.startsOn && form.startsOn > on ? form.startsOn : on < term.startsOn ? null : on;
    const row = {
      reads: 0, whose: 'ours', severalCountAsOne: false, rateCents: 0, teamIds: [], levels: [], windowKinds: [], blackoutDays: [], pinnedGameIds: [], separation: 'window', priority: 2, ...NO_NUMBERS,
      ...form, startsOn, id: form.id ?? newId(), termId: term.id, contractId: term.contractId, place,
    } as unknown as Commitment;
    const line = readLineOf({ ...row, readKindName: kind.name }, term, await this.games.ofReach([{ seasonId: term.seasonId, teamIds: row.teamIds }]));
    return { line, insert: async () => void (await this.work.insert(Commitment, row)) };
  }

  async benefit(term: Term, { priceCents: _, ...form }: NewBenefitDto, place: number): Promise<NewLine> {
    const nothing = { quantity: 1, rateCents: 0, fairValueCents: null, earns: 'onDelivery', startsOn: null, endsOn: null, dueOn: null };
    const row = { ...nothing, ...form, id: form.id ?? newId(), termId: term.id, contractId: term.contractId, place } as unknown as Benefit;
    return { line: benefitLineOf({ ...row, rateCents: centsOf(row.rateCents) }), insert: async () => void (await this.work.insert(Benefit, row)) };
  }

  /** The places that are free after the last line of each sort. */
  async nextPlaces(termId: string): Promise<{ commitment: number; benefit: number }> {
    const [row] = await this.work.sql<{ commitment: number; benefit: number }>(
      `select (select coalesce(max(place), 0) + 1 from commitment where department_id = $1 and term_id = $2) as commitment,
         (select coalesce(max(place), 0) + 1 from benefit where department_id = $1 and term_id = $2) as benefit`,
      [termId],
    );
    return row!;
  }
}
