import type { Contract } from '../types.ts';

export interface LineChoice {
  id: string;
  name: string;
  rateCents: number;
  counting: string | null;
}

/** The lines of a contract by name; two of one kind are told apart by their place. */
export function linesOf({ commitments = [], benefits = [] }: Contract): LineChoice[] {
  const all = [
    ...commitments.map((one) => ({ id: one.id, name: one.readKindName, rateCents: one.rateCents, counting: one.counting as string | null })),
    ...benefits.map((one) => ({ id: one.id, name: one.name, rateCents: one.rateCents, counting: null })),
  ];
  return all.map((line, place) => (all.filter((one) => one.name === line.name).length > 1 ? { ...line, name: `${line.name} (line ${place + 1})` } : line));
}

/** What a form's price comes to: above zero it raises the price, below it lowers it. */
export function priceOf(how: unknown, cents: unknown, atRateCents: number): number {
  if (how === 'rateCard') return atRateCents;
  const typed = typeof cents === 'number' ? cents : 0;
  return how === 'takesOff' ? -typed : typed;
}

export const PRICE_CHANGES = [
  { id: 'adds', name: 'Adds to the price' },
  { id: 'takesOff', name: 'Takes off the price' },
];
