import type { ContractTerms } from '../contract-terms.ts';
import { valuedCount } from '../line-values.ts';

/** What a line would cost alone. */
export interface CardWorth {
  readonly lineId: string;
  /** reads over all games, games (on occurrence without a minimum), or pieces */
  readonly count: number;
  readonly worthCents: number;
}

/**
 * What the lines of a bundle would cost one by one at the rate card: count × price of one. The same counts share the
 * bundle's price over its lines when it is signed.
 *
 * @param terms with benefits that are earned on delivery
 * @returns the lines in their places, in cents
 * @source relative stand-alone selling price, ASC 606-10-32-31
 */
export function cardWorth(terms: ContractTerms): CardWorth[] {
  return terms.lines.map((line) => {
    const count = valuedCount(line);
    return { lineId: line.lineId, count, worthCents: count * line.rateCents };
  });
}
