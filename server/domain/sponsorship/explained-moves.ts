import { applyHappening } from './apply-happening.ts';
import { amountsOf } from './contract-amounts.ts';
import type { ExplainedRow, ExplainedSum } from './explanation.ts';
import type { Happening, HappeningKind } from './happening.ts';
import type { Position } from './position.ts';

/** In the order in which they are told; what is not named here moves only a price by the read. */
const MOVES: readonly (readonly [string, readonly HappeningKind[]])[] = [
  ['Price as signed', ['signed', 'openingPosition']],
  ['Amended', ['amended']],
  ['Swapped', ['swapped']],
  ['Lowered for what was still to come', ['priceLowered']],
  ['Credited', ['readsCredited', 'gameCancelled', 'overbillingCredited']],
  ['Carried over', ['carriedOut', 'carriedIn']],
  ['Ended early', ['ended']],
];
const FEE = 'Fee for ending early';
const ALLOWANCES = 'Allowances';
const DISCOUNTS = 'Discounts for paying early';
const COUNTED = 'Reads counted at their price';

/** Why the price is what it is: from the price as signed to the price as it stands, in cents; nothing where it never moved. */
export function explainedMoves(happenings: readonly Happening[]): ExplainedSum[] {
  const moved = new Map<string, number>();
  const add = (words: string, cents: number) => moved.set(words, (moved.get(words) ?? 0) + cents);
  let position: Position | null = null;
  let priceCents = 0;
  for (const happening of happenings) {
    position = applyHappening(position, happening);
    const after = amountsOf(position).priceCents;
    const feeCents = happening.kind === 'ended' ? (happening.feeCents ?? 0) : 0;
    add(wordsOf(happening), after - priceCents - feeCents);
    add(FEE, feeCents);
    priceCents = after;
  }
  const order = [...MOVES.map(([words]) => words), FEE, ALLOWANCES, DISCOUNTS, COUNTED];
  const rows = order.map((words): ExplainedRow => ({ words, amountCents: moved.get(words) ?? 0 })).filter((row) => row.amountCents !== 0);
  if (rows.length < 2) return [];
  const lead = 'From the price as it was signed to the price as it stands.';
  return [{ key: 'moves', title: 'Why the price is what it is', lead, rows, total: { words: 'Price as it stands', amountCents: priceCents } }];
}

function wordsOf({ kind }: Happening): string {
  if (kind === 'allowanceGiven') return ALLOWANCES;
  if (kind === 'discountTaken') return DISCOUNTS;
  return MOVES.find(([, kinds]) => kinds.includes(kind))?.[0] ?? COUNTED;
}
