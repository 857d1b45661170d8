import type { Day } from '../day.ts';
import type { Cents } from '../money.ts';
import { foldedText, textProblem } from '../season/import-headings.ts';
import type { Cells, Columns } from '../season/import-headings.ts';
import { problem } from '../season/import-plan.ts';
import type { ImportProblem } from '../season/import-plan.ts';
import { centsOfCell, choiceOfCell, countOfCell, dayOfCell } from '../season/import-values.ts';
import type { Counting } from './contract-terms.ts';
import type { ContractsThere, ReadKindThere } from './import-contracts.ts';

export type ContractColumn =
  | 'outsideId'
  | 'sponsor'
  | 'sponsorOutsideId'
  | 'category'
  | 'contactName'
  | 'email'
  | 'phone'
  | 'readKind'
  | 'count'
  | 'counting'
  | 'atLeast'
  | 'atMost'
  | 'price'
  | 'contractPrice'
  | 'from'
  | 'to'
  | 'seller'
  | 'payer';

export const CONTRACT_COLUMNS: Columns<ContractColumn> = {
  headings: {
    outsideId: ['contract number', 'contract id', 'contract', 'agreement', 'outside id', 'deal id', 'order number'],
    sponsor: ['sponsor', 'business', 'company', 'advertiser', 'sponsor name', 'account name'],
    sponsorOutsideId: ['sponsor id', 'customer id', 'account id', 'account number', 'customer number'],
    category: ['category', 'industry', 'business type'],
    contactName: ['contact', 'contact name', 'contact person'],
    email: ['email', 'e-mail', 'contact email', 'email address'],
    phone: ['phone', 'telephone', 'contact phone', 'phone number'],
    readKind: ['read kind', 'read', 'kind', 'item', 'product', 'placement'],
    count: ['count', 'reads', 'quantity', 'qty', 'number of reads'],
    counting: ['counting', 'counted', 'counted per', 'per', 'basis'],
    atLeast: ['at least', 'reads at least', 'minimum reads', 'guaranteed reads'],
    atMost: ['at most', 'reads at most', 'maximum reads'],
    price: ['price', 'line price', 'amount', 'line amount'],
    contractPrice: ['contract price', 'total price', 'contract total', 'contract amount', 'total'],
    from: ['from', 'start', 'starts', 'start date', 'starts on', 'first day'],
    to: ['to', 'until', 'end', 'ends', 'end date', 'ends on', 'last day', 'through'],
    seller: ['seller', 'seller of record', 'sold by'],
    payer: ['payer', 'bill to', 'paid by', 'billed to'],
  },
  needed: [['sponsor']],
};

const COUNTING_SPELLINGS: Readonly<Record<Counting, readonly string[]>> = {
  perTerm: ['per term', 'term', 'season', 'per season', 'total', 'in all'],
  perGame: ['per game', 'game', 'each game', 'a game'],
  perNight: ['per night', 'night', 'each night', 'a night'],
  onOccurrence: ['on occurrence', 'per occurrence', 'occurrence', 'each time', 'each'],
};

/** One row that could be read: a sponsor, and a line of a contract where it has a read kind. */
export interface ContractRow {
  readonly line: number;
  readonly outsideId: string | null;
  readonly sponsorName: string;
  readonly sellerName: string;
  readonly payerName: string;
  readonly contractPriceCents: Cents | null;
  readonly from: Day | null;
  readonly to: Day | null;
  readonly commitment: {
    readonly kind: ReadKindThere;
    readonly counting: Counting;
    readonly reads: number;
    readonly readsAtLeast: number | null;
    readonly readsAtMost: number | null;
    readonly priceCents: Cents | null;
  } | null;
  readonly problems: readonly ImportProblem[];
}

/** True when a row says anything of a contract, not only of a sponsor. */
export function namesContract(row: Cells<ContractColumn>): boolean {
  const columns: readonly ContractColumn[] = ['outsideId', 'readKind', 'count', 'price', 'contractPrice'];
  return columns.some((column) => row.cell(column) !== '');
}

export function readContractRow(row: Cells<ContractColumn>, there: ContractsThere): ContractRow {
  const { line } = row;
  const kind = there.readKinds.find((other) => foldedText(other.name) === foldedText(row.cell('readKind'))) ?? null;
  const from = dayOfCell(row.cell('from'));
  const to = dayOfCell(row.cell('to'));
  const counting = countingOf(row, kind);
  const problems = [
    ...textProblem(line, 'sponsor', row.cell('sponsor'), 120, true),
    ...textProblem(line, 'outsideId', row.cell('outsideId'), 100, false),
    ...textProblem(line, 'payer', row.cell('payer'), 120, false),
    ...textProblem(line, 'readKind', row.cell('readKind'), 120, true),
    ...(row.cell('readKind') !== '' && !kind ? [problem(line, 'readKind', 'import-read-kind-unknown', { value: row.cell('readKind') })] : []),
    ...(counting === null ? [problem(line, 'counting', 'import-choice-unknown', { value: row.cell('counting'), choices: allowedCounting(kind).join(', ') })] : []),
    ...countProblems(row, counting),
    ...moneyProblem(row, 'price'),
    ...moneyProblem(row, 'contractPrice'),
    ...dayProblem(row, 'from', from),
    ...dayProblem(row, 'to', to),
    ...(from !== null && to !== null && to < from ? [problem(line, 'to', 'ends-before-it-starts')] : []),
  ];
  return {
    line,
    outsideId: row.cell('outsideId') || null,
    sponsorName: row.cell('sponsor'),
    sellerName: row.cell('seller'),
    payerName: row.cell('payer'),
    contractPriceCents: centsOfCell(row.cell('contractPrice')),
    from,
    to,
    commitment: kind && counting ? commitmentOf(row, kind, counting) : null,
    problems,
  };
}

function commitmentOf(row: Cells<ContractColumn>, kind: ReadKindThere, counting: Counting): ContractRow['commitment'] {
  const reads = countOfCell(row.cell('count')) ?? 0;
  const onOccurrence = counting === 'onOccurrence';
  return {
    kind,
    counting,
    reads: onOccurrence ? 0 : reads,
    readsAtLeast: onOccurrence ? (countOfCell(row.cell('atLeast')) ?? reads) : null,
    readsAtMost: onOccurrence ? countOfCell(row.cell('atMost')) : null,
    priceCents: centsOfCell(row.cell('price')),
  };
}

function allowedCounting(kind: ReadKindThere | null): Counting[] {
  if (kind === null) return ['perTerm', 'perGame', 'perNight', 'onOccurrence'];
  return kind.timing === 'onOccurrence' ? ['onOccurrence'] : ['perTerm', 'perGame', 'perNight'];
}

function countingOf(row: Cells<ContractColumn>, kind: ReadKindThere | null): Counting | null {
  if (row.cell('counting') === '') return allowedCounting(kind)[0]!;
  const counting = choiceOfCell(row.cell('counting'), COUNTING_SPELLINGS);
  return counting !== null && allowedCounting(kind).includes(counting) ? counting : null;
}

function countProblems(row: Cells<ContractColumn>, counting: Counting | null): ImportProblem[] {
  const columns: readonly ContractColumn[] = ['count', 'atLeast', 'atMost'];
  const unread = columns
    .filter((column) => row.cell(column) !== '' && countOfCell(row.cell(column)) === null)
    .map((column) => problem(row.line, column, 'import-count-unreadable', { value: row.cell(column) }));
  if (unread.length > 0 || counting === null) return unread;
  if (counting !== 'onOccurrence') {
    if (row.cell('count') === '') return [problem(row.line, 'count', 'import-value-missing')];
    return countOfCell(row.cell('count')) === 0 ? [problem(row.line, 'count', 'count-not-above-zero')] : [];
  }
  const least = countOfCell(row.cell('atLeast')) ?? countOfCell(row.cell('count')) ?? 0;
  const most = countOfCell(row.cell('atMost'));
  return most !== null && most < least ? [problem(row.line, 'atMost', 'at-most-below-at-least')] : [];
}

function moneyProblem(row: Cells<ContractColumn>, column: ContractColumn): ImportProblem[] {
  const text = row.cell(column);
  return text !== '' && centsOfCell(text) === null ? [problem(row.line, column, 'import-money-unreadable', { value: text })] : [];
}

function dayProblem(row: Cells<ContractColumn>, column: ContractColumn, day: Day | null): ImportProblem[] {
  const text = row.cell(column);
  return text !== '' && day === null ? [problem(row.line, column, 'import-day-unreadable', { value: text })] : [];
}
