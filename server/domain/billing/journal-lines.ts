import type { Day } from '../day.ts';
import { MONEY } from '../ledger/account.ts';
import type { Cents } from '../money.ts';
import { centsOf } from '../money.ts';
import { refuse } from '../refusals.ts';
import { splitIncome } from './income-split.ts';
import type { CodePart, JournalLayout } from './journal-layout.ts';
import { needsOutsideCode, splitsByTeam } from './journal-layout.ts';

/** An entry of the money journal as it leaves: what it changed in each account, debit above zero, and whose income it is. */
export interface JournalEntry {
  id: string;
  entryOn: Day;
  bookedOn: Day;
  description: string;
  documentNumber: string | null;
  sponsorName: string | null;
  contractNumber: string | null;
  changes: readonly { account: string; cents: Cents }[];
  teamIds: readonly string[];
}

export interface JournalTeam {
  name: string;
  schoolId: string;
  schoolName: string;
  /** the code the school's record holds, used where the layout gives none */
  schoolCode: string | null;
}

/** What the lines are named by. */
export interface JournalNames {
  accounts: ReadonlyMap<string, { name: string; outsideCode: string | null }>;
  teams: ReadonlyMap<string, JournalTeam>;
}

/** One line: an account, a team where income is split, an amount that is not zero, and the parts of its code string. */
export interface JournalLine {
  entry: JournalEntry;
  /** the place of the entry in the batch: 1, 2, … */
  entryNumber: number;
  account: string;
  accountName: string;
  outsideCode: string | null;
  cents: Cents;
  codeParts: readonly string[];
}

const INCOME: ReadonlySet<string> = new Set([MONEY.sponsorshipRevenue, MONEY.inKindRevenue, MONEY.unreadRevenue, MONEY.allowances]);

/**
 * The lines of a batch in the order of its entries, and what the layout asks for and nobody has mapped. Accounts an entry
 * leaves as they were have no line; income is split by team where the code string asks for it, lines of equal codes in one.
 *
 * @throws Refused `entry-does-not-balance`
 */
export function journalLines(entries: readonly JournalEntry[], layout: JournalLayout, names: JournalNames): { lines: JournalLine[]; missing: string[] } {
  const missing = new Set<string>();
  const lines = entries.flatMap((entry, place) => linesOf(entry, place + 1, layout, names, missing));
  return { lines, missing: [...missing].sort() };
}

function linesOf(entry: JournalEntry, entryNumber: number, layout: JournalLayout, names: JournalNames, missing: Set<string>): JournalLine[] {
  if (entry.changes.reduce((sum, { cents }) => sum + cents, 0) !== 0) refuse('entry-does-not-balance');
  return entry.changes.filter(({ cents }) => cents !== 0).flatMap(({ account, cents }) => {
    const called = names.accounts.get(account) ?? { name: account, outsideCode: null };
    if (needsOutsideCode(layout) && !called.outsideCode) missing.add(`Account ${account} ${called.name}: an outside code`);
    const teamIds = INCOME.has(account) && splitsByTeam(layout) ? entry.teamIds : [];
    const byCode = new Map<string, JournalLine>();
    for (const share of splitIncome(cents, teamIds)) {
      const codeParts = layout.codeParts.map((part) => codeOf(part, account, share.teamId, names, missing));
      const key = JSON.stringify(codeParts);
      const sum = centsOf((byCode.get(key)?.cents ?? 0) + share.cents);
      byCode.set(key, { entry, entryNumber, account, accountName: called.name, outsideCode: called.outsideCode, cents: sum, codeParts });
    }
    return [...byCode.values()].filter((line) => line.cents !== 0);
  });
}

function codeOf(part: CodePart, account: string, teamId: string | null, names: JournalNames, missing: Set<string>): string {
  const found = part.kind === 'constant' ? null : valueOf(part, account, teamId, names);
  const text = found ?? part.otherwise;
  if (text === null || text === '') missing.add(`${whoseCode(part, account, teamId, names)}: the part “${part.name}” of its code`);
  return text ?? '';
}

function valueOf(part: CodePart, account: string, teamId: string | null, names: JournalNames): string | null {
  const given = (key: string) => part.values.find((value) => value.key === key)?.text ?? null;
  if (part.kind === 'account') return given(account) ?? null;
  const team = teamId === null ? undefined : names.teams.get(teamId);
  if (teamId === null || team === undefined) return null;
  return part.kind === 'team' ? given(teamId) : (given(team.schoolId) ?? team.schoolCode);
}

function whoseCode(part: CodePart, account: string, teamId: string | null, names: JournalNames): string {
  const team = teamId === null ? undefined : names.teams.get(teamId);
  if (part.kind === 'team' && team) return `Team ${team.name}, ${team.schoolName}`;
  if (part.kind === 'school' && team) return `School ${team.schoolName}`;
  return `Account ${account} ${names.accounts.get(account)?.name ?? ''}`.trim();
}

/** The debits of lines, in cents; their credits come to the same. */
export function debitsOf(lines: readonly JournalLine[]): Cents {
  return centsOf(lines.reduce((sum, { cents }) => sum + Math.max(0, cents), 0));
}
