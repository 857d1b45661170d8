import type { Day } from '../day.ts';
import type { Cents } from '../money.ts';
import { amountText, centsOf } from '../money.ts';
import { refuse } from '../refusals.ts';
import { amountsOf } from '../sponsorship/contract-amounts.ts';
import type { Position } from '../sponsorship/position.ts';

/** Goods a sponsor pays with: how many of what, each at its fair value at signing. */
export interface GoodsPromise {
  id: string;
  what: string;
  quantity: number;
  unitCents: Cents;
  dueOn: Day | null;
  /** how many came so far */
  received: number;
}

/**
 * What the promised goods come to at their single values.
 *
 * @throws RangeError beyond the whole numbers that are exact
 */
export function goodsTotal(promises: readonly Pick<GoodsPromise, 'quantity' | 'unitCents'>[]): Cents {
  return centsOf(promises.reduce((sum, { quantity, unitCents }) => sum + quantity * unitCents, 0));
}

/**
 * The goods have to come to the price. Where a single value had to be rounded to the cent they may miss it by less than a
 * cent for each piece; the last delivery takes that difference.
 *
 * @throws Refused `goods-miss-the-price`
 * @source common practice, no source
 */
export function assertGoodsMeetPrice(promises: readonly Pick<GoodsPromise, 'quantity' | 'unitCents'>[], priceCents: Cents): void {
  const total = goodsTotal(promises);
  const pieces = promises.reduce((sum, { quantity }) => sum + quantity, 0);
  if (total !== priceCents && Math.abs(total - priceCents) >= pieces) refuse('goods-miss-the-price', { total: amountText(total), price: amountText(priceCents) });
}

/** What of the price neither goods nor an invoice nor an allowance has met, in cents. */
export function openOf(position: Position): Cents {
  return centsOf(Math.max(0, amountsOf(position).toBillCents));
}

/** What may still come in as goods, in cents: what was agreed in goods at signing, and never more than the price leaves open. What an amendment adds is paid in money. */
export function goodsRoomOf(position: Position): Cents {
  return centsOf(Math.max(0, Math.min((position.terms.inKindCents ?? 0) - position.goodsCents, openOf(position))));
}

/**
 * What a delivery is worth: its pieces at their fair value at signing; the delivery after which nothing is missing takes what
 * is left of what was agreed in goods, so that they come to it to the cent.
 *
 * @param quantity whole pieces, above zero
 * @param openCents what may still come in as goods
 * @throws Refused `unknown-goods-promise`, `more-goods-than-promised`, `goods-settled`
 * @source ASC 606-10-32-21 to 32-24: noncash consideration at fair value at the inception of the contract (from memory)
 */
export function valueOfDelivery(promises: readonly GoodsPromise[], promiseId: string, quantity: number, openCents: Cents): Cents {
  const promise = promises.find(({ id }) => id === promiseId) ?? refuse('unknown-goods-promise');
  const open = promise.quantity - promise.received;
  if (quantity > open) refuse('more-goods-than-promised', { open });
  if (openCents === 0 && promise.unitCents > 0) refuse('goods-settled');
  const isLast = promises.every(({ id, received, quantity: promised }) => received + (id === promiseId ? quantity : 0) === promised);
  return isLast ? openCents : centsOf(Math.min(quantity * promise.unitCents, openCents));
}

/** Whether pieces are missing after their day. */
export function isGoodsLate({ quantity, received, dueOn }: Pick<GoodsPromise, 'quantity' | 'received' | 'dueOn'>, today: Day): boolean {
  return dueOn !== null && received < quantity && dueOn < today;
}
