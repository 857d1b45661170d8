import type { Day } from '../day.ts';
import { addCents, centsOf, NO_MONEY } from '../money.ts';
import type { Cents } from '../money.ts';
import { cellsOf, foldedText } from '../season/import-headings.ts';
import { changesOf, planOf, problem, refusedStep } from '../season/import-plan.ts';
import type { ImportFile, ImportPlan, ImportProblem, ImportStep } from '../season/import-plan.ts';
import type { Counting } from './contract-terms.ts';
import { CONTRACT_COLUMNS, namesContract, readContractRow } from './import-contract-rows.ts';
import type { ContractRow } from './import-contract-rows.ts';
import { sponsorSteps, sponsorThere } from './import-sponsors.ts';
import type { WantedSponsor } from './import-sponsors.ts';

export interface SponsorThere {
  readonly id: string;
  readonly name: string;
  readonly outsideId: string | null;
  readonly categoryName: string;
  readonly contactName: string | null;
  readonly email: string | null;
  readonly phone: string | null;
}

export interface ReadKindThere {
  readonly id: string;
  readonly name: string;
  readonly timing: 'scheduled' | 'onOccurrence';
  /** the rate card's price of one read in this season; null where it has none */
  readonly rateCents: Cents | null;
}

export interface WantedCommitment {
  readonly readKindId: string;
  readonly counting: Counting;
  readonly reads: number;
  readonly readsAtLeast: number | null;
  readonly readsAtMost: number | null;
  readonly rateCents: Cents;
  /** null: the days of the term */
  readonly startsOn: Day | null;
  readonly endsOn: Day | null;
}

export interface ContractThere {
  readonly id: string;
  readonly outsideId: string | null;
  readonly sponsorId: string;
  readonly sellerId: string;
  readonly payerName: string;
  readonly state: 'draft' | 'signed' | 'ended' | 'closed';
  readonly startsOn: Day;
  readonly endsOn: Day;
  readonly priceCents: Cents;
  /** in their places */
  readonly commitments: readonly WantedCommitment[];
}

export interface ContractsThere {
  readonly season: { readonly startsOn: Day; readonly endsOn: Day };
  readonly sponsors: readonly SponsorThere[];
  readonly categories: readonly { readonly name: string; readonly isBlocked: boolean }[];
  readonly sellers: readonly { readonly id: string; readonly name: string }[];
  readonly readKinds: readonly ReadKindThere[];
  /** the contracts with a term in this season */
  readonly contracts: readonly ContractThere[];
}

export interface WantedContract {
  readonly outsideId: string | null;
  /** null: the sponsor of that name is created by the same file */
  readonly sponsorId: string | null;
  readonly sponsorName: string;
  readonly sellerId: string;
  /** the sponsor itself where the file names no payer */
  readonly payerName: string;
  readonly startsOn: Day;
  readonly endsOn: Day;
  readonly priceCents: Cents;
  readonly commitments: readonly WantedCommitment[];
}

export interface ContractImportPlan {
  readonly sponsors: ImportPlan<WantedSponsor>;
  readonly contracts: ImportPlan<WantedContract>;
}

/**
 * What a file of sponsors with contracts would do. Rows with one contract number are lines of one contract;
 * without a number, rows of one sponsor and seller are. A contract with one faulty line is refused whole.
 * New contracts are drafts; a signed one is never changed by a file, and none is dropped.
 *
 * @throws Refused heading-missing, heading-twice, file-empty
 */
export function planContractImport(file: ImportFile, there: ContractsThere): ContractImportPlan {
  const { rows, ignored } = cellsOf(file, CONTRACT_COLUMNS);
  const groups = new Map<string, { row: ContractRow; sponsorId: string | null }[]>();
  for (const cells of rows.filter(namesContract)) {
    const row = readContractRow(cells, there);
    const key = row.outsideId === null ? `${foldedText(row.sponsorName)} / ${foldedText(row.sellerName)}` : `number ${row.outsideId}`;
    groups.set(key, [...(groups.get(key) ?? []), { row, sponsorId: sponsorThere(cells, there)?.id ?? null }]);
  }
  const taken = new Set<string>();
  const steps = [...groups.values()].map((group) => {
    const step = stepFor(group.map(({ row }) => row), group[0]!.sponsorId, there, taken);
    if (step.existingId !== null) taken.add(step.existingId);
    return step;
  });
  const nameless = rows
    .filter((row) => row.cell('sponsor') === '' && !namesContract(row))
    .map((row) => refusedStep<WantedSponsor>([row.line], '', [problem(row.line, 'sponsor', 'import-value-missing')]));
  return {
    sponsors: planOf([...sponsorSteps(rows, there), ...nameless], ignored),
    contracts: planOf(steps, ignored),
  };
}

function stepFor(rows: readonly ContractRow[], sponsorId: string | null, there: ContractsThere, taken: ReadonlySet<string>): ImportStep<WantedContract> {
  const first = rows[0]!;
  const lines = rows.map((row) => row.line);
  const label = [first.outsideId, first.sponsorName].filter((part) => part !== null && part !== '').join(' ');
  const seller = sellerOf(rows, there);
  const problems = [...rows.flatMap((row) => row.problems), ...disagreements(rows), ...('problems' in seller ? seller.problems : [])];
  if (problems.length > 0 || 'problems' in seller) return refusedStep(lines, label, problems);
  const wanted = wantedOf(rows, sponsorId, seller.id, there);
  if (wanted.endsOn < wanted.startsOn) return refusedStep(lines, label, [problem(lines[0]!, 'to', 'ends-before-it-starts')]);
  const existing = contractFor(wanted, there, taken);
  const changes = existing ? differences(existing, wanted, there) : [];
  if (existing && changes.length > 0 && existing.state !== 'draft') {
    return refusedStep(lines, label, [problem(lines[0]!, changes[0]!.field, 'import-contract-signed')], existing.id);
  }
  const action = !existing ? 'create' : changes.length > 0 ? 'change' : 'same';
  return { action, lines, label, existingId: existing?.id ?? null, wanted, changes, problems: [], notes: notesOf(wanted, existing) };
}

function sellerOf(rows: readonly ContractRow[], there: ContractsThere): { id: string } | { problems: ImportProblem[] } {
  const named = rows.find((row) => row.sellerName !== '');
  if (!named) {
    const [only, ...others] = there.sellers;
    return only && others.length === 0 ? { id: only.id } : { problems: [problem(rows[0]!.line, 'seller', 'import-seller-missing')] };
  }
  const seller = there.sellers.find((other) => foldedText(other.name) === foldedText(named.sellerName));
  return seller ? { id: seller.id } : { problems: [problem(named.line, 'seller', 'import-seller-unknown', { value: named.sellerName })] };
}

/** What all lines of one contract must say alike, where they say anything. */
function disagreements(rows: readonly ContractRow[]): ImportProblem[] {
  const alike: readonly (readonly [string, (row: ContractRow) => string])[] = [
    ['sponsor', (row) => foldedText(row.sponsorName)],
    ['seller', (row) => foldedText(row.sellerName)],
    ['payer', (row) => foldedText(row.payerName)],
    ['contractPrice', (row) => String(row.contractPriceCents ?? '')],
  ];
  return alike.flatMap(([field, said]) => {
    const first = rows.find((row) => said(row) !== '');
    const other = rows.find((row) => said(row) !== '' && said(row) !== said(first!));
    return first && other ? [problem(other.line, field, 'import-contract-differs', { line: first.line })] : [];
  });
}

function wantedOf(rows: readonly ContractRow[], sponsorId: string | null, sellerId: string, there: ContractsThere): WantedContract {
  const first = rows[0]!;
  const startsOn = rows.map((row) => row.from ?? there.season.startsOn).reduce((a, b) => (b < a ? b : a));
  const endsOn = rows.map((row) => row.to ?? there.season.endsOn).reduce((a, b) => (b > a ? b : a));
  const linePrices = rows.map((row) => row.commitment?.priceCents ?? NO_MONEY);
  return {
    outsideId: first.outsideId,
    sponsorId,
    sponsorName: there.sponsors.find((sponsor) => sponsor.id === sponsorId)?.name ?? first.sponsorName,
    sellerId,
    payerName: rows.find((row) => row.payerName !== '')?.payerName ?? first.sponsorName,
    startsOn,
    endsOn,
    priceCents: rows.find((row) => row.contractPriceCents !== null)?.contractPriceCents ?? addCents(...linePrices),
    commitments: rows.map((row) => commitmentOf(row, startsOn, endsOn, there)),
  };
}

function commitmentOf(row: ContractRow, startsOn: Day, endsOn: Day, there: ContractsThere): WantedCommitment {
  const { kind, counting, reads, readsAtLeast, readsAtMost, priceCents } = row.commitment!;
  const from = row.from ?? there.season.startsOn;
  const to = row.to ?? there.season.endsOn;
  const counted = counting === 'onOccurrence' ? (readsAtLeast ?? 0) : reads;
  const fromPrice = priceCents === null ? NO_MONEY : centsOf(Math.round(priceCents / Math.max(1, counted)));
  return {
    readKindId: kind.id,
    counting,
    reads,
    readsAtLeast,
    readsAtMost,
    rateCents: kind.rateCents ?? fromPrice,
    startsOn: from === startsOn ? null : from,
    endsOn: to === endsOn ? null : to,
  };
}

function contractFor(wanted: WantedContract, there: ContractsThere, taken: ReadonlySet<string>): ContractThere | null {
  const free = there.contracts.filter((contract) => !taken.has(contract.id));
  if (wanted.outsideId !== null) return free.find((contract) => contract.outsideId === wanted.outsideId) ?? null;
  const alike = free.filter(
    (contract) => contract.outsideId === null && contract.sponsorId === wanted.sponsorId && contract.sellerId === wanted.sellerId,
  );
  const [nearest] = alike.toSorted((a, b) => differences(a, wanted, there).length - differences(b, wanted, there).length);
  return nearest ?? null;
}

function differences(existing: ContractThere, wanted: WantedContract, there: ContractsThere): ReturnType<typeof changesOf> {
  return changesOf([
    ['sponsor', existing.sponsorId, wanted.sponsorId],
    ['seller', existing.sellerId, wanted.sellerId],
    ['payer', foldedText(existing.payerName), foldedText(wanted.payerName)],
    ['from', existing.startsOn, wanted.startsOn],
    ['to', existing.endsOn, wanted.endsOn],
    ['price', String(existing.priceCents), String(wanted.priceCents)],
    ['lines', linesInWords(existing.commitments, there), linesInWords(wanted.commitments, there)],
  ]);
}

function linesInWords(lines: readonly WantedCommitment[], there: ContractsThere): string {
  return lines
    .map((line) => {
      const kind = there.readKinds.find((other) => other.id === line.readKindId)?.name ?? line.readKindId;
      const count = line.counting === 'onOccurrence' ? `${line.readsAtLeast ?? 0} to ${line.readsAtMost ?? 'any'}` : String(line.reads);
      const days = line.startsOn || line.endsOn ? ` ${line.startsOn ?? ''}..${line.endsOn ?? ''}` : '';
      return `${count} ${kind} ${line.counting}${days}`;
    })
    .join('; ');
}

function notesOf(wanted: WantedContract, existing: ContractThere | null): string[] {
  if (existing && existing.state !== 'draft') return [];
  const free = wanted.priceCents === 0 ? ['No price: the contract would be signed for nothing.'] : [];
  return existing ? free : ['Comes in as a draft; signing it makes the reads owed.', ...free];
}
