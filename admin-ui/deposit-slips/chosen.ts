import type { DrawerLine } from './types.ts';

/** What the page was opened with: the payments just entered, of one seller. */
export interface Given {
  sellerId?: string;
  paymentIds?: string[];
}

export interface Sums {
  checkCount: number;
  checkCents: number;
  cashCents: number;
}

export function sumsOf(lines: readonly DrawerLine[]): Sums {
  const checks = lines.filter((line) => line.method === 'check');
  const sum = (some: readonly DrawerLine[]) => some.reduce((total, line) => total + line.amountCents, 0);
  return { checkCount: checks.length, checkCents: sum(checks), cashCents: sum(lines) - sum(checks) };
}

/** The sellers with something in the drawer, in the order of the list. */
export function sellersOf(lines: readonly DrawerLine[]): { id: string; name: string }[] {
  return [...new Map(lines.map((line) => [line.sellerId, line.sellerName])).entries()].map(([id, name]) => ({ id, name }));
}
