import { amountText, centsOf, splitByLargestRemainder } from '../money.ts';
import type { Happening } from '../sponsorship/happening.ts';
import type { MemoPosition, Position } from '../sponsorship/position.ts';
import { readsOfLine } from '../sponsorship/slot-reads.ts';

/** A line of a credit memo. Amounts in cents, above zero: what is given back. */
export interface MemoLine {
  description: string;
  quantity: number;
  unitCents: number | null;
  amountCents: number;
  taxCents: number;
  /** the document it credits; null for what was paid in goods */
  invoiceId: string | null;
  /** the commitment or benefit whose reads are credited */
  lineId: string | null;
}

/** Reads of one line whose values leave the contract. */
interface Concerned {
  lineId: string;
  name: string;
  values: readonly number[];
  count: number;
}

/** Why a memo is written where nobody says it otherwise. */
export function memoReason(happening: Happening): string {
  switch (happening.kind) {
    case 'gameCancelled':
      return 'A game was cancelled; its reads are credited.';
    case 'readsCredited':
      return 'Reads that were promised and not given.';
    case 'amended':
      return 'The contract was amended to less.';
    case 'swapped':
      return 'Reads were swapped for others at a lower price.';
    case 'priceLowered':
      return 'The price of what is still to come was lowered.';
    case 'ended':
      return 'The contract ended before its time.';
    case 'allowanceGiven':
      return 'An allowance on reads already given.';
    case 'overbillingCredited':
      return 'More was billed than the reads that count.';
    default:
      return 'A credit on this contract.';
  }
}

/**
 * The lines of a memo: the reads concerned at their own values where the memo credits just these, else one line for
 * each invoice that it credits. Amounts re-add to its net and tax to its tax, part by part.
 *
 * @param before the position that the happening met
 * @param after the position it left
 * @source the values of the reads are those allocated at signing, ASC 606-10-32-31; tax by largest remainder is common practice, no source
 */
export function memoLines(happening: Happening, memo: MemoPosition, before: Position, after: Position): MemoLine[] {
  const concerned = concernedBy(happening, before, after);
  const valueCents = concerned.reduce((sum, one) => sum + one.values.reduce((all, value) => all + value, 0), 0);
  const [only, ...others] = memo.parts;
  if (only && others.length === 0 && valueCents === memo.netCents) return withTax(concerned.flatMap((one) => atTheirValues(one, only.invoiceId ?? null)), only.taxCents);
  const words = concerned.length > 0 ? concerned.map(({ name, count }) => `${name}, ${count} credited`).join('; ') : memoReason(happening).replace(/\.$/, '');
  const whole = valueCents > memo.netCents ? ` (of ${amountText(centsOf(valueCents))}, the part that was billed)` : '';
  return memo.parts.map(({ invoiceId, netCents, taxCents }) => ({
    description: `${words}${whole}${invoiceId === undefined ? ', paid in goods' : numberIn(after, invoiceId)}`,
    quantity: 1,
    unitCents: null,
    amountCents: netCents,
    taxCents,
    invoiceId: invoiceId ?? null,
    lineId: concerned.length === 1 ? concerned[0]!.lineId : null,
  }));
}

function numberIn(position: Position, invoiceId: string): string {
  const document = position.documents.find((one) => one.invoiceId === invoiceId);
  return document?.kind === 'invoice' ? `, billed on ${document.number}` : ', billed before';
}

/** Lines that lost reads from their end, with the values those held. */
function concernedBy(happening: Happening, before: Position, after: Position): Concerned[] {
  if (happening.kind !== 'readsCredited' && happening.kind !== 'gameCancelled' && happening.kind !== 'ended') return [];
  return before.lines.flatMap((line) => {
    const left = after.lines.find((one) => one.terms.lineId === line.terms.lineId);
    if (!left) return [];
    const values = line.values.slice(left.values.length);
    const count = readsOfLine(line).owed - readsOfLine(left).owed;
    return count > 0 ? [{ lineId: line.terms.lineId, name: line.terms.name, values, count }] : [];
  });
}

function atTheirValues({ lineId, name, values }: Concerned, invoiceId: string | null): Omit<MemoLine, 'taxCents'>[] {
  return [...new Set(values)].filter((value) => value > 0).map((value) => {
    const quantity = values.filter((one) => one === value).length;
    return { description: `${name}, credited`, quantity, unitCents: value, amountCents: quantity * value, invoiceId, lineId };
  });
}

function withTax(lines: readonly Omit<MemoLine, 'taxCents'>[], taxCents: number): MemoLine[] {
  const shares = splitByLargestRemainder(centsOf(taxCents), lines.map((line) => line.amountCents));
  return lines.map((line, place) => ({ ...line, taxCents: shares[place] ?? 0 }));
}
