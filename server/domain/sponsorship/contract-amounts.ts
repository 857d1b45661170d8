import type { Position } from './position.ts';
import { earnedCentsOf, openCentsOf, sumOf } from './line-values.ts';
import { madeGoodIn, readsOfLine } from './slot-reads.ts';

/** The dollars of a contract, all in cents. */
export interface ContractAmounts {
  /** agreed price as it stands: P */
  priceCents: number;
  billedCents: number;
  /** price less billed; below zero it is overbilled */
  toBillCents: number;
  /** value of reads and benefits given and made good, forfeits, fees and minimums */
  revenueCents: number;
  earnedFixedCents: number;
  earnedPerReadCents: number;
  topUpCents: number;
  keptCents: number;
  feesCents: number;
  allowancesCents: number;
  /** fixed values that nothing has earned yet */
  openCents: number;
  /** below zero: unearned revenue; above: unbilled receivable */
  contractBalanceCents: number;
}

/** What a contract's state comes to in cents. */
export function amountsOf(position: Position): ContractAmounts {
  const earnedFixedCents = sumOf(position.lines.map(earnedCentsOf));
  const openCents = sumOf(position.lines.map(openCentsOf));
  const earnedPerReadCents = earnedPerRead(position);
  const minimumCents = minimumOf(position);
  const topUpCents = position.minimumClaimed ? Math.max(0, minimumCents - earnedPerReadCents) : 0;
  const { keptCents, feesCents, allowancesCents, billedCents } = position;
  const besides = keptCents + feesCents;
  const priceCents = earnedFixedCents + openCents + besides - allowancesCents + Math.max(minimumCents, earnedPerReadCents);
  const revenueCents = earnedFixedCents + besides + earnedPerReadCents + topUpCents;
  return {
    priceCents,
    billedCents,
    toBillCents: priceCents - billedCents,
    revenueCents,
    earnedFixedCents,
    earnedPerReadCents,
    topUpCents,
    keptCents,
    feesCents,
    allowancesCents,
    openCents,
    contractBalanceCents: revenueCents - allowancesCents - billedCents,
  };
}

/** What reads priced each have earned: up to the cap and not beyond. */
function earnedPerRead(position: Position): number {
  const earned = sumOf(
    position.lines.map((line) => {
      const { given } = readsOfLine(line);
      return priceEachOf(line.terms) * (given + sumOf(line.slots.map(madeGoodIn)));
    }),
  );
  return Math.min(position.terms.billAtMostCents ?? Infinity, earned);
}

function minimumOf(position: Position): number {
  if (position.minimumWaived) return 0;
  const credited = sumOf(position.lines.map((line) => priceEachOf(line.terms) * readsOfLine(line).credited));
  return Math.max(0, (position.terms.billAtLeastCents ?? 0) - credited);
}

export function priceEachOf(line: Position['lines'][number]['terms']): number {
  return line.kind === 'reads' && line.pricing === 'perRead' ? (line.priceEachCents ?? line.rateCents) : 0;
}

/** Earned by reads and benefits, apart by how it is paid: in money or in goods. */
export function earnedApart(position: Position): { cashCents: number; inKindCents: number } {
  const { earnedFixedCents, earnedPerReadCents } = amountsOf(position);
  const { inKindCents = 0, priceCents } = position.terms;
  const share = priceCents > 0 ? Number((2n * BigInt(earnedFixedCents) * BigInt(inKindCents) + BigInt(priceCents)) / (2n * BigInt(priceCents))) : 0;
  return { cashCents: earnedFixedCents + earnedPerReadCents - share, inKindCents: share };
}
