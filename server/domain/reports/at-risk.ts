import type { RepairOption } from '../makegoods/repair-options.ts';
import type { Counting } from '../sponsorship/contract-terms.ts';

/** Why a promise is at risk, the gravest first. */
export const RISKS = ['shortfall', 'held', 'floor', 'behind', 'chance'] as const;
export type Risk = (typeof RISKS)[number];

/** Below nine in ten a promise is worth a look. @source common practice, no source */
export const LIKELY = 0.9;

/** What is known of one commitment; counts in reads. */
export interface PromiseAtRisk {
  readonly counting: Counting;
  readonly owed: number;
  readonly behind: number;
  readonly planned: number;
  readonly loggedNotSignedOff: number;
  /** owed, and no game is left that could carry them as promised */
  readonly shortfall: number;
  /** of those, what nothing is proposed for yet */
  readonly openShortfall: number;
  readonly brokenFloors: number;
  readonly isHeld: boolean;
  /** that all of it is given, 0 to 1; null where nobody can say */
  readonly chanceAllGiven: number | null;
  /** the part of the price that nothing has earned yet */
  readonly openCents: number;
}

/** Why it is at risk; nothing where it is not. What is given in full is at no risk any more, save for a floor that was broken. */
export function risksOf(promise: PromiseAtRisk): Risk[] {
  const { owed, behind, shortfall, brokenFloors, isHeld, chanceAllGiven } = promise;
  const is: Record<Risk, boolean> = {
    shortfall: shortfall > 0,
    held: isHeld && owed > 0,
    floor: brokenFloors > 0,
    behind: behind > 0,
    chance: owed > 0 && chanceAllGiven !== null && chanceAllGiven < LIKELY,
  };
  return RISKS.filter((risk) => is[risk]);
}

/**
 * What is at stake, in cents: what nothing has earned yet times the chance that not all of it is given. Where nobody can
 * tell a chance, the share of what is owed that is short or behind stands for it.
 *
 * @source common practice, no source
 */
export function atStakeCents({ owed, behind, shortfall, chanceAllGiven, openCents }: PromiseAtRisk): number {
  if (owed <= 0) return 0;
  const missing = chanceAllGiven === null ? Math.min(1, Math.max(shortfall, behind) / owed) : 1 - chanceAllGiven;
  return Math.round(openCents * missing);
}

export type RepairKind = 'liftHold' | 'makegood' | 'proposed' | 'place' | 'replan' | 'wait' | 'speak';

export interface Repair {
  readonly kind: RepairKind;
  readonly words: string;
  /** what it costs the school; null where nobody can say */
  readonly costCents: number | null;
}

const readsInWords = (reads: number): string => `${reads} ${reads === 1 ? 'read' : 'reads'}`;

/** One remedy as it is told to the office: "Give 3 more of Concession read". */
export function remedyInWords({ remedy, readKindName, replacements }: RepairOption, missed: number): string {
  if (remedy === 'moreReads') return `Give ${replacements} more of ${readKindName}`;
  if (remedy === 'otherKind') return `Give ${replacements} of ${readKindName} instead of ${missed}`;
  if (remedy === 'carryOver') return `Carry ${readsInWords(missed)} over into the next contract`;
  return `Credit ${readsInWords(missed)}`;
}

/**
 * The cheapest thing to do about a promise at risk. A hold comes first, because nothing is read under it; then what can no
 * longer be given as promised; then reads that have no place yet, which costs nothing.
 *
 * @param options the remedies open for the shortfall, cheapest first
 * @source common practice, no source
 */
export function cheapestRepair(promise: PromiseAtRisk, options: readonly RepairOption[]): Repair {
  const { isHeld, owed, openShortfall, shortfall, planned, loggedNotSignedOff, counting, brokenFloors, behind } = promise;
  if (isHeld && owed > 0) return { kind: 'liftHold', words: 'Settle what the hold is about, and lift it', costCents: 0 };
  const best = options.find((option) => option.fits);
  if (openShortfall > 0 && best) return { kind: 'makegood', words: remedyInWords(best, openShortfall), costCents: best.costCents };
  if (shortfall > 0 && openShortfall === 0) return { kind: 'proposed', words: 'A makegood is proposed: wait for the answer', costCents: null };
  const unplaced = owed - shortfall - planned - loggedNotSignedOff;
  if (counting !== 'onOccurrence' && unplaced > 0) return { kind: 'place', words: `Place ${readsInWords(unplaced)} that ${unplaced === 1 ? 'has' : 'have'} no place yet`, costCents: 0 };
  if (counting === 'onOccurrence') return { kind: 'wait', words: 'It waits for what happens on the floor: speak with the sponsor early', costCents: null };
  if (owed > 0 && (behind > 0 || brokenFloors === 0)) return { kind: 'replan', words: 'All have their place: move them to earlier games', costCents: 0 };
  return { kind: 'speak', words: 'A game fell below its least: speak with the sponsor', costCents: null };
}
