import type { Cents } from '../../money.ts';
import { amountText, centsOf } from '../../money.ts';
import { asSentence, countedInWords, listInWords } from '../words/counted.ts';

/** What extra reads of one kind would earn, if nothing else were sold any more. */
export interface ExtraOfKind {
  readonly readKindId: string;
  readonly readKindName: string;
  /** the rate card's price of one; null where it names none */
  readonly priceCents: Cents | null;
  readonly most: number;
  readonly earnsCents: Cents;
}

/** Kinds by what the most of them would earn at the rate card, the best first; at the same amount the dearer read first. Common practice, no source. */
export function rankedExtras(kinds: readonly Omit<ExtraOfKind, 'earnsCents'>[]): ExtraOfKind[] {
  return kinds
    .map((kind) => ({ ...kind, earnsCents: centsOf(kind.most * (kind.priceCents ?? 0)) }))
    .toSorted((one, other) => other.earnsCents - one.earnsCents || (other.priceCents ?? 0) - (one.priceCents ?? 0) || (one.readKindId < other.readKindId ? -1 : 1));
}

/** So many extra reads of a kind, within a mix. */
export interface MixedKind {
  readonly readKindId: string;
  readonly readKindName: string;
  readonly priceCents: Cents;
  readonly reads: number;
}

/**
 * Kinds in the order in which the best mix takes them: the dearest read first, as many as fit. Reads that fit
 * together are the independent sets of a gammoid, so taking the dearest first earns the most.
 *
 * @source the greedy property of matroids (Rado 1957, Edmonds 1971, from memory)
 */
export function orderOfMix<Kind extends { readonly priceCents: Cents | null; readonly readKindId: string }>(kinds: readonly Kind[]): (Kind & { readonly priceCents: Cents })[] {
  const priced = kinds.filter((kind): kind is Kind & { readonly priceCents: Cents } => (kind.priceCents ?? 0) > 0);
  return priced.toSorted((one, other) => other.priceCents - one.priceCents || (one.readKindId < other.readKindId ? -1 : 1));
}

/** "Concession read" in the middle of a sentence: "concession reads". A name of several capitals keeps them. */
function manyOf(name: string, count: number): string {
  const inside = /^\p{Lu}\p{Ll}/u.test(name) ? `${name.charAt(0).toLowerCase()}${name.slice(1)}` : name;
  return countedInWords(count, inside);
}

/**
 * "Twelve time-out reads and four concession reads: $460.00 at the rate card."
 *
 * @param money how an amount is written; dollars where nothing else is said
 */
export function mixInWords(mix: readonly MixedKind[], money: (cents: Cents) => string = (cents) => `$${amountText(cents)}`): string {
  const sold = mix.filter((kind) => kind.reads > 0);
  if (sold.length === 0) return 'Nothing more fits that has a price on the rate card.';
  const cents = sold.reduce((sum, kind) => sum + kind.reads * kind.priceCents, 0);
  return `${asSentence(listInWords(sold.map((kind) => manyOf(kind.readKindName, kind.reads))))}: ${money(centsOf(cents))} at the rate card.`;
}
