import { signedPosition } from '../apply-signing.ts';
import type { ContractTerms, LineTerms } from '../contract-terms.ts';
import { isPricedByRead, sumOf, valuedCount } from '../line-values.ts';
import type { LinePosition } from '../position.ts';

/** So many reads, games, pieces or days that are worth so much each. */
export interface EqualValues {
  readonly count: number;
  readonly cents: number;
}

/** What a line of an offer is worth as it will be credited, once signed. */
export interface OfferedLine {
  readonly lineId: string;
  readonly name: string;
  /** what holds the value: reads, games that are played (on occurrence without a minimum), pieces or days */
  readonly per: 'read' | 'game' | 'piece' | 'day';
  readonly count: number;
  /** the line's share of the price, or what its reads cost together where it is priced by the read */
  readonly valueCents: number;
  /** from the first read to the last; the earlier ones a cent more where the price does not go up */
  readonly each: readonly EqualValues[];
  readonly isPricedByRead: boolean;
}

/**
 * The price over the lines and their reads, by the very rule that signing freezes it with.
 *
 * @returns the lines in their places; the values of lines at a fixed price add up to the price
 * @throws Refused as signing would: `contract-without-lines`, `price-without-rates`, `value-without-reads`, …
 */
export function offeredValues(terms: ContractTerms): OfferedLine[] {
  return signedPosition(terms).lines.map(offeredLine);
}

function offeredLine({ terms, values }: LinePosition): OfferedLine {
  const { lineId, name } = terms;
  if (terms.kind === 'reads' && isPricedByRead(terms)) {
    const count = valuedCount(terms);
    const cents = terms.priceEachCents ?? 0;
    return { lineId, name, per: 'read', count, valueCents: count * cents, each: [{ count, cents }], isPricedByRead: true };
  }
  return { lineId, name, per: perOf(terms), count: values.length, valueCents: sumOf(values), each: equalValues(values), isPricedByRead: false };
}

function perOf(line: LineTerms): OfferedLine['per'] {
  if (line.kind === 'benefit') return line.earns === 'overDays' ? 'day' : 'piece';
  return line.gamesPlanned === undefined ? 'read' : 'game';
}

function equalValues(values: readonly number[]): EqualValues[] {
  const runs: { count: number; cents: number }[] = [];
  for (const cents of values) {
    const last = runs.at(-1);
    if (last?.cents === cents) last.count += 1;
    else runs.push({ count: 1, cents });
  }
  return runs;
}
