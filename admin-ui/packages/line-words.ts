import { moneyText } from '../format/money.ts';
import { numberText } from '../words/count.ts';
import type { OfferedLine, Package, PackageLine } from './types.ts';

const COUNTED: Record<string, (quantity: string) => string> = {
  perTerm: (quantity) => quantity, perGame: (quantity) => `${quantity} in every game`, perNight: (quantity) => `${quantity} on every night`,
};

/** "12", "1 in every game", "each time, at least 5". */
export function quantityInWords({ counting, quantity }: Pick<PackageLine, 'counting' | 'quantity'>): string {
  if (counting === 'onOccurrence') return quantity > 0 ? `each time, at least ${numberText(quantity)}` : 'each time it happens';
  return (COUNTED[counting ?? 'perTerm'] ?? COUNTED['perTerm']!)(numberText(quantity));
}

export const nameOfLine = (line: Pick<PackageLine, 'readKindName' | 'benefitName'>): string => line.readKindName ?? line.benefitName ?? '–';

/** "Sponsored game ball: 6; Banner on the north rail: 1". */
export const linesInWords = (lines: readonly PackageLine[]): string => lines.map((line) => `${nameOfLine(line)}: ${quantityInWords(line)}`).join('; ');

/** "$1,250.00 for $1,400.00 worth at the rate card". */
export function priceInWords({ priceCents, worthCents }: Pick<Package, 'priceCents' | 'worthCents'>): string {
  return worthCents === 0 ? `${moneyText(priceCents)}; the rate card prices none of its lines` : `${moneyText(priceCents)} for ${moneyText(worthCents)} worth at the rate card`;
}

/** "4 × $76.92, 2 × $76.93": what one read is credited with when it is missed. */
export const eachInWords = ({ each }: OfferedLine): string => each.map(({ count, cents }) => (each.length === 1 ? moneyText(cents) : `${numberText(count)} × ${moneyText(cents)}`)).join(', ') || '–';
