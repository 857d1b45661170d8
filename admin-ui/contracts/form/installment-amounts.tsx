import { useWatch } from 'react-hook-form';
import { splitByLargestRemainder, type Cents } from '../../../server/domain/money.ts';
import { dayText } from '../../format/day.ts';
import { moneyText } from '../../format/money.ts';

/** What each installment comes to, split as the server splits it. */
export function InstallmentAmounts() {
  const [price, rows] = useWatch({ name: ['term.priceCents', 'term.billingPlan.installments'] }) as [unknown, { on?: string; share?: number }[] | undefined];
  const shares = (rows ?? []).map((row) => Number(row?.share ?? 0));
  if (typeof price !== 'number' || shares.length === 0 || !shares.every((share) => Number.isSafeInteger(share) && share >= 0) || !shares.some((share) => share > 0)) return null;
  const amounts = splitByLargestRemainder(price as Cents, shares);
  return <p role="status">{rows!.map((row, place) => `${row.on ? dayText(row.on) : `Installment ${place + 1}`}: ${moneyText(amounts[place])}`).join(' · ')}</p>;
}

/** What fixed amounts leave open of the price, which is billed with the last one; or by how much they exceed it. */
export function RestOfThePrice() {
  const [price, rows] = useWatch({ name: ['term.priceCents', 'term.billingPlan.installments'] }) as [unknown, { amountCents?: number }[] | undefined];
  if (typeof price !== 'number' || !rows || rows.length === 0) return null;
  const rest = price - rows.reduce((sum, row) => sum + (row?.amountCents ?? 0), 0);
  if (rest === 0) return <p role="status">The amounts come to the price of {moneyText(price)}.</p>;
  if (rest > 0) return <p role="status">{moneyText(rest)} more is billed with the last one, so that all come to the price of {moneyText(price)}.</p>;
  return <p role="status">The amounts are {moneyText(-rest)} more than the price of {moneyText(price)}. They can be stored; the contract cannot be signed so.</p>;
}
