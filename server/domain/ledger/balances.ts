import { refuse } from '../refusals.ts';
import { CHART, accountOf } from './account.ts';
import type { AccountKey, Journal } from './account.ts';
import type { Posting, PostingKeys } from './posting.ts';

/** One balance: debit +, credit -, in reads or in cents. */
export interface Balance {
  journal: Journal;
  account: string;
  keys: PostingKeys;
  amount: number;
}

/** Balances by account and key; what is not there is zero. */
export type Balances = ReadonlyMap<string, Balance>;

const KEY_ORDER: readonly AccountKey[] = ['contractId', 'commitmentId', 'gameId', 'invoiceId', 'unappliedId'];

/** A sum under construction. */
export class BalanceSheet {
  readonly balances = new Map<string, Balance>();

  /** Adds a signed amount to an account; keys by which the account is not told apart are left out. */
  add(journal: Journal, account: string, amount: number, keys: PostingKeys = {}): void {
    if (amount === 0) return;
    const kept = keysFor(journal, account, keys);
    const name = nameOf(journal, account, kept);
    const before = this.balances.get(name)?.amount ?? 0;
    if (before + amount === 0) this.balances.delete(name);
    else this.balances.set(name, { journal, account, keys: kept, amount: before + amount });
  }
}

function keysFor(journal: Journal, account: string, keys: PostingKeys): PostingKeys {
  const kept: PostingKeys = {};
  for (const key of accountOf(journal, account).keyedBy) if (keys[key]) kept[key] = keys[key];
  return kept;
}

function nameOf(journal: Journal, account: string, keys: PostingKeys): string {
  return [journal, account, ...KEY_ORDER.map((key) => keys[key] ?? '')].join('|');
}

/** The balances that postings make, starting from nothing. */
export function balancesOfPostings(postings: Iterable<Posting>): Balances {
  const sheet = new BalanceSheet();
  for (const posting of postings) {
    sheet.add(posting.journal, posting.from, -posting.amount, posting);
    sheet.add(posting.journal, posting.to, posting.amount, posting);
  }
  return sheet.balances;
}

/** The sum of an account over the keys given (over all of them when none is given), in reads or cents. */
export function balanceOf(balances: Balances, journal: Journal, account: string, keys: PostingKeys = {}): number {
  let sum = 0;
  for (const balance of balances.values()) {
    if (balance.journal !== journal || balance.account !== account) continue;
    if (KEY_ORDER.every((key) => keys[key] === undefined || keys[key] === balance.keys[key])) sum += balance.amount;
  }
  return sum;
}

/**
 * The postings that lead from one state to another: within each journal and key what went down is moved to what went
 * up, in the order of the chart, so the same two states always give the same postings.
 *
 * @throws Refused `entry-does-not-balance` when the differences of a journal and key do not sum to zero
 */
export function postingsBetween(before: Balances, after: Balances): Posting[] {
  const sheet = new BalanceSheet();
  for (const { journal, account, amount, keys } of after.values()) sheet.add(journal, account, amount, keys);
  for (const { journal, account, amount, keys } of before.values()) sheet.add(journal, account, -amount, keys);
  return [...groupsOf(sheet.balances).values()].flatMap(pairUp);
}

/** Money is one group (its key is the seller of record); the other journals are grouped by their keys. */
function groupsOf(balances: Balances): Map<string, Balance[]> {
  const groups = new Map<string, Balance[]>();
  const inOrder = [...balances.values()].sort(byChart);
  for (const balance of inOrder) {
    const { contractId = '', commitmentId = '', gameId = '' } = balance.keys;
    const name = balance.journal === 'money' ? 'money' : [balance.journal, contractId, commitmentId, gameId].join('|');
    groups.set(name, [...(groups.get(name) ?? []), balance]);
  }
  return groups;
}

function byChart(one: Balance, other: Balance): number {
  return placeOf(one) - placeOf(other) || (textOf(one) < textOf(other) ? -1 : 1);
}

const PLACES = new Map(
  Object.entries(CHART).flatMap(([journal, accounts], room) =>
    accounts.map((account, place) => [`${journal}|${account.code}`, room * 100 + place] as const),
  ),
);

const placeOf = (balance: Balance) => PLACES.get(`${balance.journal}|${balance.account}`) ?? 0;

const textOf = (balance: Balance) => nameOf(balance.journal, balance.account, balance.keys);

function pairUp(differences: readonly Balance[]): Posting[] {
  const ups = differences.filter((one) => one.amount > 0).map((one) => ({ ...one }));
  const downs = differences.filter((one) => one.amount < 0).map((one) => ({ ...one }));
  const postings: Posting[] = [];
  while (ups[0] && downs[0]) {
    const [up, down] = [ups[0], downs[0]];
    const amount = Math.min(up.amount, -down.amount);
    postings.push({ journal: up.journal, from: down.account, to: up.account, amount, ...down.keys, ...up.keys });
    up.amount -= amount;
    down.amount += amount;
    if (up.amount === 0) ups.shift();
    if (down.amount === 0) downs.shift();
  }
  if (ups.length + downs.length > 0) refuse('entry-does-not-balance');
  return postings;
}

/**
 * @throws Refused `entry-does-not-balance` when a journal does not sum to zero over its keys
 */
export function assertBalanced(balances: Balances): void {
  for (const group of groupsOf(balances).values()) {
    if (group.reduce((sum, one) => sum + one.amount, 0) !== 0) refuse('entry-does-not-balance');
  }
}
