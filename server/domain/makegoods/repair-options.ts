import { amountsOf } from '../sponsorship/contract-amounts.ts';
import { fallWithPrice } from '../sponsorship/credit-price.ts';
import { lineOf } from '../sponsorship/line-of.ts';
import { sumOf, takeFromEnd } from '../sponsorship/line-values.ts';
import type { Position } from '../sponsorship/position.ts';
import { readsOfSlot } from '../sponsorship/slot-reads.ts';

export const REMEDIES = ['moreReads', 'otherKind', 'carryOver', 'credit'] as const;
export type Remedy = (typeof REMEDIES)[number];

/** A kind of read that can be given instead, as the season stands. */
export interface KindToGive {
  readonly readKindId: string;
  readonly readKindName: string;
  /** of one read, by the season's rate card; null where it is not on it */
  readonly priceCents: number | null;
  /** for reads of this sponsor, in the games left that the commitment covers */
  readonly freePlaces: number;
}

export interface ToRepair {
  /** reads that cannot be given as promised */
  readonly missed: number;
  /** of one missed read, as it was signed */
  readonly priceCents: number;
  /** the kind that was promised; null where it waits for something to happen and cannot be planned */
  readonly kind: KindToGive | null;
  readonly others: readonly KindToGive[];
  /** what crediting them lowers the price by, cents */
  readonly creditCents: number;
  /** the value they would take along into the next contract, cents */
  readonly carriedCents: number;
  /** paid in goods: a missed read is made good before anything is paid back */
  readonly isInKind: boolean;
}

/** One way to settle missed reads. */
export interface RepairOption {
  readonly remedy: Remedy;
  readonly readKindId: string | null;
  readonly readKindName: string | null;
  /** reads given instead */
  readonly replacements: number | null;
  readonly freePlaces: number | null;
  /** what it costs the school: nothing for free places of the same kind, the rate-card value of reads of another, the value credited or carried */
  readonly costCents: number;
  /** it can be done as things stand */
  readonly fits: boolean;
}

/**
 * The remedies open for missed reads with what each costs the school in cents: those that can be done first, cheapest first;
 * at the same price more reads come before another kind, then carrying over, then money back.
 *
 * @source common practice, no source
 */
export function repairOptionsOf({ missed, priceCents, kind, others, creditCents, carriedCents, isInKind }: ToRepair): RepairOption[] {
  if (missed <= 0) return [];
  const none = { readKindId: null, readKindName: null, replacements: null, freePlaces: null };
  const options: RepairOption[] = [
    ...(kind ? [{ remedy: 'moreReads', ...namesOf(kind), replacements: missed, costCents: 0, fits: kind.freePlaces >= missed } as const] : []),
    ...others.flatMap((other): RepairOption[] => {
      const replacements = fewestInstead(missed, priceCents, other.priceCents ?? 0);
      if (replacements === null) return [];
      return [{ remedy: 'otherKind', ...namesOf(other), replacements, costCents: replacements * other.priceCents!, fits: other.freePlaces >= replacements }];
    }),
    { remedy: 'carryOver', ...none, costCents: carriedCents, fits: true },
    { remedy: 'credit', ...none, costCents: creditCents, fits: !isInKind },
  ];
  const order = (one: RepairOption): number => REMEDIES.indexOf(one.remedy);
  return options.toSorted((a, b) => Number(b.fits) - Number(a.fits) || a.costCents - b.costCents || order(a) - order(b));
}

const namesOf = ({ readKindId, readKindName, freePlaces }: KindToGive) => ({ readKindId, readKindName, freePlaces });

/**
 * The fewest reads of another kind whose rate-card value is at least that of the missed ones.
 *
 * @param priceCents of one missed read
 * @param otherCents of one read given instead
 * @returns null where the other has no price, or more than a thousand would be needed
 */
export function fewestInstead(missed: number, priceCents: number, otherCents: number): number | null {
  if (otherCents <= 0) return null;
  const fewest = Math.max(1, Math.ceil((missed * priceCents) / otherCents));
  return fewest <= 1000 ? fewest : null;
}

/**
 * What crediting owed reads of a line lowers the price by, cents: the last values of the line, not so many times an average, and
 * after a discount no more than what was paid.
 *
 * @throws Refused `unknown-line`
 * @source LEDGER.md, section 1, Values: 3 of 7 reads of 1,000.00 are 428.56
 */
export function creditedValueOf(position: Position, lineId: string, reads: number): number {
  const after = structuredClone(position);
  const line = lineOf(after, lineId);
  const { priceCents } = amountsOf(position);
  takeFromEnd(line, reads);
  let left = reads;
  for (const slot of line.slots) {
    const credited = Math.min(left, readsOfSlot(line, slot).owed);
    slot.credited += credited;
    left -= credited;
  }
  fallWithPrice(after, priceCents, { allowancesFall: true });
  return priceCents - amountsOf(after).priceCents;
}

/** What owed reads of a line take along into another contract, cents; nothing where they are priced by the read. */
export function carriedValueOf(position: Position, lineId: string, reads: number): number {
  return sumOf(takeFromEnd(structuredClone(lineOf(position, lineId)), reads));
}
