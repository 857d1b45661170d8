declare const cents: unique symbol;

/** An amount of money in whole cents of the department's currency. May be negative in a balance. */
export type Cents = number & { readonly [cents]: true };

/**
 * Reads a whole number as cents.
 *
 * @param amount whole cents, within ±(2^53 - 1)
 * @throws RangeError when the number is not a whole number that JavaScript holds exactly
 */
export function centsOf(amount: number): Cents {
  if (!Number.isSafeInteger(amount)) throw new RangeError(`${amount} is not a whole number of cents`);
  return (amount === 0 ? 0 : amount) as Cents;
}

export const NO_MONEY = 0 as Cents;

/** Adds amounts; a sum beyond 2^53 - 1 throws RangeError instead of losing a cent. */
export function addCents(...amounts: readonly Cents[]): Cents {
  let sum = 0;
  for (const amount of amounts) sum = centsOf(sum + amount);
  return sum as Cents;
}

/** `left - right`, in cents. */
export function subtractCents(left: Cents, right: Cents): Cents {
  return centsOf(left - right);
}

/** A unit price in cents times a whole count. */
export function timesCents(priceCents: Cents, count: number): Cents {
  return centsOf(priceCents * count);
}

/**
 * Splits an amount by weights with the largest-remainder method (Hamilton): each part gets the whole
 * cents of its quota, what is left goes one cent at a time to the largest remainders, ties to the
 * earliest part. The parts always re-add to the amount. A negative amount splits as its mirror.
 *
 * The method is not monotone (the Alabama paradox), so a part that was issued or earned is never
 * split again: take it out of the amount first and split the rest.
 *
 * @param amountCents what is split
 * @param weights one whole number, zero or more, per part; at least one above zero
 * @throws RangeError when there is no part, a weight is negative or broken, or all weights are zero
 * @source Hamilton's apportionment of 1792; COMAP, For All Practical Purposes, ch. 14
 */
export function splitByLargestRemainder(amountCents: Cents, weights: readonly number[]): Cents[] {
  if (weights.some((weight) => !Number.isSafeInteger(weight) || weight < 0)) {
    throw new RangeError('a weight is a whole number, zero or more');
  }
  const total = weights.reduce((sum, weight) => sum + BigInt(weight), 0n);
  if (total === 0n) throw new RangeError('nothing to split by: all weights are zero');
  const sign = amountCents < 0 ? -1 : 1;
  const amount = BigInt(Math.abs(amountCents));
  const parts = weights.map((weight, place) => {
    const share = amount * BigInt(weight);
    return { place, whole: share / total, remainder: share % total };
  });
  let left = amount - parts.reduce((sum, part) => sum + part.whole, 0n);
  const byRemainder = [...parts].sort((a, b) =>
    a.remainder === b.remainder ? a.place - b.place : a.remainder > b.remainder ? -1 : 1,
  );
  for (const part of byRemainder) {
    if (left === 0n) break;
    part.whole += 1n;
    left -= 1n;
  }
  return parts.map((part) => centsOf(sign * Number(part.whole)));
}

/** Splits an amount into `count` equal parts, the earlier ones a cent larger where it does not go up. */
export function splitEvenly(amountCents: Cents, count: number): Cents[] {
  return splitByLargestRemainder(amountCents, Array.from({ length: count }, () => 1));
}

/**
 * A share of an amount in hundredths of a percent, rounded half away from zero to the cent.
 *
 * @param basisPoints 725 is 7.25 %
 */
export function shareOfCents(amountCents: Cents, basisPoints: number): Cents {
  const sign = amountCents < 0 ? -1 : 1;
  const doubled = BigInt(Math.abs(amountCents)) * BigInt(basisPoints) * 2n;
  return centsOf(sign * Number((doubled + 10_000n) / 20_000n));
}

/** An amount as plain text with two decimals and thousands set off, `1,234.50`; for sentences, not for a locale. */
export function amountText(amountCents: Cents): string {
  const digits = String(Math.abs(amountCents)).padStart(3, '0');
  const whole = digits.slice(0, -2).replace(/\B(?=(\d{3})+$)/g, ',');
  return `${amountCents < 0 ? '-' : ''}${whole}.${digits.slice(-2)}`;
}

/** An amount as a sponsor or a director reads it in a sentence: `$1,234.50`, `-$12.00`. */
export function amountInSentence(amountCents: Cents): string {
  return `${amountCents < 0 ? '-' : ''}$${amountText(centsOf(Math.abs(amountCents)))}`;
}
