import { contractBalanceName } from '../ledger/account.ts';
import { amountText, centsOf } from '../money.ts';
import { explainedDocuments, explainedTax, explainedUnpaid } from './explained-documents.ts';
import type { PaidDocument } from './explained-documents.ts';
import { amountsOf, earnedApart, priceEachOf } from './contract-amounts.ts';
import type { ContractAmounts } from './contract-amounts.ts';
import { earnsOverDays } from './days-earned.ts';
import { explainedMoves } from './explained-moves.ts';
import type { Happening } from './happening.ts';
import { earnedCentsOf, isPricedByRead, openCentsOf, sumOf } from './line-values.ts';
import type { LinePosition, Position } from './position.ts';
import { earnsPerGame, readsOfLine, settledOrdinals } from './slot-reads.ts';

/** A step of a sum: what it is, in words, and what it adds (or takes, below zero), in cents. */
export interface ExplainedRow {
  words: string;
  amountCents: number;
  /** how the amount comes about */
  detail?: string;
}

/** A sum that visibly adds up: the rows make the total. */
export interface ExplainedSum {
  key: 'moves' | 'price' | 'earned' | 'billed' | 'balance' | 'bridge' | 'tax' | 'unpaid';
  title: string;
  /** one or two sentences of what the figure means */
  lead: string;
  rows: ExplainedRow[];
  total: ExplainedRow;
}

/** Where the reads or pieces of a line stand; the parts make the promise. */
export interface ExplainedReads {
  lineId: string;
  name: string;
  promised: number;
  /** it is counted in days that pass, not in reads or pieces */
  isOverDays: boolean;
  parts: { words: string; count: number }[];
  extra: number;
}

export interface Explanation {
  reads: ExplainedReads[];
  sums: ExplainedSum[];
}

const money = (cents: number) => amountText(centsOf(cents));
const row = (words: string, amountCents: number, detail?: string): ExplainedRow => ({ words, amountCents, ...(detail === undefined ? {} : { detail }) });
const unlessZero = (...rows: ExplainedRow[]) => rows.filter((one) => one.amountCents !== 0);

/**
 * Each figure of a contract as a sum in plain words: the price over its lines and reads, what is earned, by what it was
 * billed, the contract balance, and the bridge of the two ledgers. All amounts in cents.
 *
 * @param documents the contract's invoices with what is open on them, by the accounts office
 * @param happenings all that made the position, in order; they say why the price moved
 * @source ASC 606-10-45-1 for the contract balance and its two names
 */
export function explanationOf(position: Position, documents: readonly PaidDocument[] = [], happenings: readonly Happening[] = []): Explanation {
  const amounts = amountsOf(position);
  return {
    reads: position.lines.map(explainedReads),
    sums: [
      ...explainedMoves(happenings),
      explainedPrice(position, amounts),
      explainedEarned(position, amounts),
      explainedDocuments(position),
      explainedBalance(amounts),
      explainedBridge(position, amounts),
      ...explainedTax(position),
      ...explainedUnpaid(documents, position),
    ],
  };
}

/** Reads of one value together: "3 × 36.37, 5 × 36.36". */
export function valuesText(values: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const value of values) {
    const last = runs.at(-1);
    if (last && last[1] === value) last[0] += 1;
    else runs.push([1, value]);
  }
  return runs.map(([count, value]) => `${count} × ${money(value)}`).join(', ');
}

function explainedReads(line: LinePosition): ExplainedReads {
  const { promised, owed, given, madeGood, credited, released, carried, extra } = readsOfLine(line);
  const parts = [['given', given], ['made good', madeGood], ['credited', credited], ['released', released], ['carried over', carried], ['still owed', owed]] as const;
  const shown = parts.filter(([words, count]) => count !== 0 || words === 'given' || words === 'still owed');
  return { lineId: line.terms.lineId, name: line.terms.name, promised, isOverDays: earnsOverDays(line), parts: shown.map(([words, count]) => ({ words, count })), extra };
}

function explainedPrice({ lines, terms }: Position, amounts: ContractAmounts): ExplainedSum {
  const byRead = amounts.priceCents + amounts.allowancesCents - amounts.earnedFixedCents - amounts.openCents - amounts.keptCents - amounts.feesCents;
  const isLeast = byRead > amounts.earnedPerReadCents;
  const rows = [
    ...lines.filter((line) => !isPricedByRead(line.terms)).map((line) => row(line.terms.name, sumOf(line.values), valuesText(line.values))),
    ...unlessZero(
      row('Reads priced by the read', byRead, isLeast ? `the least amount agreed is ${money(terms.billAtLeastCents ?? 0)}` : capText(terms.billAtMostCents)),
      row('Kept without a read', amounts.keptCents, 'forfeited reads, and values that could not move on'),
      row('Fees', amounts.feesCents),
      row('Less allowances', -amounts.allowancesCents, 'conceded on what was given'),
    ),
  ];
  const lead = lines.every((line) => isPricedByRead(line.terms))
    ? 'Each read has its own price, and what is given makes the price as it stands.'
    : 'The price is shared over the lines by their rate-card prices and over the reads of a line, to the cent. What is credited, carried over or ended has left it.';
  return { key: 'price', title: 'The agreed price', lead, rows, total: row('Price as it stands', amounts.priceCents) };
}

const capText = (mostCents: number | undefined) => (mostCents === undefined ? undefined : `at most ${money(mostCents)} is billed`);

function explainedEarned(position: Position, amounts: ContractAmounts): ExplainedSum {
  const rows = [
    ...position.lines.map(earnedRow),
    ...unlessZero(
      row('Beyond the most that is billed', amounts.earnedPerReadCents - sumOf(position.lines.map(earnedEach)), capText(position.terms.billAtMostCents)),
      row('Up to the least amount agreed', amounts.topUpCents),
      row('Kept without a read', amounts.keptCents),
      row('Fees', amounts.feesCents),
    ),
  ];
  const { inKindCents } = earnedApart(position);
  const lead = `Each read or benefit earns its own value when it is given or made good, in order; a read beyond the promise earns nothing.${inKindCents > 0 ? ` ${money(inKindCents)} of it is paid in goods.` : ''}`;
  return { key: 'earned', title: 'Earned', lead, rows, total: row('Earned so far (revenue)', amounts.revenueCents) };
}

const earnedEach = (line: LinePosition) => priceEachOf(line.terms) * settledOrdinals(line);

function earnedRow(line: LinePosition): ExplainedRow {
  const settled = settledOrdinals(line);
  const { given, madeGood } = readsOfLine(line);
  if (isPricedByRead(line.terms)) return row(line.terms.name, earnedEach(line), `${settled} × ${money(priceEachOf(line.terms))}`);
  const values = settled === 0 ? 'nothing given yet' : valuesText(line.values.slice(0, settled));
  if (earnsPerGame(line)) return row(`${line.terms.name}, earned by games played`, earnedCentsOf(line), `${settled} of ${line.values.length} games: ${values}`);
  const counted = earnsOverDays(line) ? `${settled} of ${line.values.length} days: ` : madeGood > 0 ? `${given} given and ${madeGood} made good: ` : '';
  return row(line.terms.name, earnedCentsOf(line), `${counted}${values}`);
}

const BALANCES = {
  'Unearned revenue': 'More is billed than was earned: reads and benefits are owed for it.',
  'Unbilled receivable': 'More is earned than was billed: it is still to be billed.',
  'Contract balance': 'What is billed is earned, and what is earned is billed.',
} as const;

function explainedBalance({ revenueCents, allowancesCents, billedCents, contractBalanceCents }: ContractAmounts): ExplainedSum {
  const name = contractBalanceName(contractBalanceCents);
  const rows = [row('Earned so far', revenueCents), ...unlessZero(row('Less allowances', -allowancesCents)), row('Less billed', -billedCents)];
  return { key: 'balance', title: 'The contract balance', lead: BALANCES[name], rows, total: row(name, contractBalanceCents) };
}

/** To bill less the contract balance is what is still owed: the two ledgers tell one story. */
function explainedBridge({ lines }: Position, amounts: ContractAmounts): ExplainedSum {
  const { toBillCents, contractBalanceCents, openCents } = amounts;
  const leastCents = toBillCents - contractBalanceCents - openCents;
  const owed = (kind: 'reads' | 'benefit') => sumOf(lines.filter((line) => line.terms.kind === kind && !isPricedByRead(line.terms)).map((line) => readsOfLine(line).owed));
  const many = (count: number, one: string) => `${count} ${one}${count === 1 ? '' : 's'}`;
  const [reads, benefits] = [owed('reads'), sumOf(lines.filter((line) => line.terms.kind === 'benefit').map(openCentsOf)) > 0 ? owed('benefit') : 0];
  const parts = [...(reads > 0 ? [many(reads, 'read')] : []), ...(benefits > 0 ? ['other benefits'] : [])];
  const byGame = lines.some((line) => earnsPerGame(line) && openCentsOf(line) > 0);
  const words = openCents === 0 ? 'Nothing at a fixed price is still owed' : byGame ? 'Value of what is still owed and to be played' : `Value of the ${parts.join(' and the ')} still owed`;
  const name = contractBalanceName(contractBalanceCents).toLowerCase();
  const rows = [
    row('To bill', toBillCents),
    ...unlessZero(row(contractBalanceCents < 0 ? `Plus ${name}` : `Less ${name}`, -contractBalanceCents)),
    ...unlessZero(row('Less the least amount agreed that reads have not reached', -leastCents)),
  ];
  const lead = 'The dollars still to come and the reads still to come are two sides of one promise. If this sum does not add up, something is wrong.';
  return { key: 'bridge', title: 'The bridge of the two ledgers', lead, rows, total: row(words, openCents) };
}
