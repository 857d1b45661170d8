import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import type { HappeningOf, LineChange } from '../../domain/sponsorship/happening.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Term } from '../../sponsorship/term.entity.ts';
import type { AmendContractDto, LowerPriceDto, SwapReadsDto } from './change.dto.ts';
import type { Subject } from './change-subjects.service.ts';
import type { AskedChange, PlannedChange } from './contract-changes.service.ts';
import { PromiseRows } from './promise-rows.service.ts';

/** Changes of what is promised, or of its price, from now on. */
@Injectable()
export class Amending {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(PromiseRows) private readonly rows: PromiseRows,
  ) {}

  /** @throws Refused `contract-already-ended`, `nothing-to-amend`, `unknown-line`, and as the rule `amended` does */
  amend(form: AmendContractDto, on: Day): AskedChange {
    return { on, plan: (subject) => this.planAmending(subject, form, on) };
  }

  /** @throws Refused as the rule `swapped` does */
  swap(form: SwapReadsDto, on: Day): AskedChange {
    const { fromLineId, fromReads, toLineId, toReads } = form;
    const priceCents = centsOf(form.priceCents ?? 0);
    const happening: HappeningOf<'swapped'> = { kind: 'swapped', fromLineId, fromReads, toLineId, toReads, priceCents, memoId: newId() };
    const plan = async (subject: Subject): Promise<PlannedChange> => {
      checkGoesOn(subject);
      const write = async () => {
        await this.rows.follow(fromLineId, -fromReads);
        await this.rows.follow(toLineId, toReads);
        await this.priceFollows(subject, priceCents);
      };
      return { on, reason: form.reason ?? null, steps: [{ subject, happening }], cautions: [], write };
    };
    return { on, plan };
  }

  /** @throws Refused as the rule `priceLowered` does */
  lowerPrice(form: LowerPriceDto, on: Day): AskedChange {
    const byCents = centsOf(form.byCents);
    const happening: HappeningOf<'priceLowered'> = { kind: 'priceLowered', byCents, memoId: newId() };
    const plan = async (subject: Subject): Promise<PlannedChange> => {
      checkGoesOn(subject);
      return { on, reason: form.reason ?? null, steps: [{ subject, happening }], cautions: [], write: () => this.priceFollows(subject, -byCents) };
    };
    return { on, plan };
  }

  private async planAmending(subject: Subject, form: AmendContractDto, on: Day): Promise<PlannedChange> {
    checkGoesOn(subject);
    const changes = changesOf(form);
    const places = await this.rows.nextPlaces(subject.term.id);
    const commitments = await Promise.all((form.newCommitments ?? []).map((one, place) => this.rows.commitment(subject.term, one, on, places.commitment + place)));
    const benefits = await Promise.all((form.newBenefits ?? []).map((one, place) => this.rows.benefit(subject.term, one, places.benefit + place)));
    const added = [...commitments, ...benefits];
    const prices = [...(form.newCommitments ?? []), ...(form.newBenefits ?? [])].map((one) => centsOf(one.priceCents));
    if (changes.length + added.length === 0) refuse('nothing-to-amend');
    const newLines = added.map(({ line }, place) => ({ line, priceCents: prices[place]! }));
    const happening: HappeningOf<'amended'> = { kind: 'amended', changes, ...(newLines.length > 0 ? { newLines } : {}), memoId: newId() };
    const write = async () => {
      for (const { lineId, reads } of changes) await this.rows.follow(lineId, reads);
      for (const line of added) await line.insert();
      await this.priceFollows(subject, [...changes, ...newLines].reduce((sum, one) => sum + one.priceCents, 0));
    };
    return { on, reason: form.reason ?? null, steps: [{ subject, happening }], cautions: [], write };
  }

  private async priceFollows({ term }: Subject, addedCents: number): Promise<void> {
    if (addedCents !== 0) await this.work.update(Term, term.id, null, { priceCents: centsOf(Math.max(0, term.priceCents + addedCents)) });
  }
}

/** @throws Refused `contract-already-ended`, `contract-closed` */
export function checkGoesOn({ position }: Subject): void {
  if (position.closed) refuse('contract-closed');
  if (position.ended) refuse('contract-already-ended');
}

function changesOf({ commitmentId, gameId, reads = 0, priceCents = 0, changes = [] }: AmendContractDto): LineChange[] {
  const single = commitmentId === undefined ? [] : [{ lineId: commitmentId, gameId, reads, priceCents }];
  return [...single, ...changes].flatMap((one) => {
    if (one.reads === 0 && one.priceCents === 0) return [];
    return [{ lineId: one.lineId, reads: one.reads, priceCents: centsOf(one.priceCents), ...(one.gameId ? { gameId: one.gameId } : {}) }];
  });
}
