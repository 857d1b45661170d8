import { addCents } from '../../money.ts';
import type { Cents } from '../../money.ts';
import { pricesOfYears } from '../offers/prices-of-years.ts';
import type { Happening } from '../happening.ts';

/**
 * The fixed price of a year as it stands agreed: as signed, with what reads that were added, taken away or swapped changed. Credits and
 * concessions belong to the year they were given in, so the next one does not inherit them.
 */
export function agreedPrice(signedCents: Cents, happenings: readonly Happening[]): Cents {
  return happenings.reduce((price, happening) => {
    if (happening.kind === 'swapped') return addCents(price, happening.priceCents);
    if (happening.kind !== 'amended') return price;
    return [...happening.changes, ...(happening.newLines ?? [])].reduce((sum, change) => addCents(sum, change.priceCents), price);
  }, signedCents);
}

/**
 * The fixed price as it was signed, before anything changed it; the row of the term follows its changes.
 *
 * @returns null before signing
 */
export function signedPrice(happenings: readonly Happening[]): Cents | null {
  const signed = happenings.find((happening) => happening.kind === 'signed' || happening.kind === 'openingPosition');
  return signed?.terms.priceCents ?? null;
}

/** What the next agreed year costs, by the rule that the offer named its years with. */
export function priceOfNextYear(priceCents: Cents, increaseBasisPoints: number): Cents {
  return pricesOfYears(priceCents, increaseBasisPoints, 2)[1]!;
}
