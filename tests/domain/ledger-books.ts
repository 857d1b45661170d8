import { expect } from 'vitest';
import type { Journal } from '../../server/domain/ledger/account.ts';
import { MONEY } from '../../server/domain/ledger/account.ts';
import { assertBalanced, balanceOf, balancesOfPostings } from '../../server/domain/ledger/balances.ts';
import type { Posting, PostingKeys } from '../../server/domain/ledger/posting.ts';
import { centsOf } from '../../server/domain/money.ts';
import type { Cents } from '../../server/domain/money.ts';
import { Refused } from '../../server/domain/refusals.ts';
import type { RefusalCode } from '../../server/domain/refusals.ts';
import { bookHappening } from '../../server/domain/sponsorship/apply-happening.ts';
import type { ContractTerms, LineTerms, ReadLine } from '../../server/domain/sponsorship/contract-terms.ts';
import type { Happening } from '../../server/domain/sponsorship/happening.ts';
import { invariantsOf } from '../../server/domain/sponsorship/invariants.ts';
import type { Position } from '../../server/domain/sponsorship/position.ts';

export const dollars = (amount: number): Cents => centsOf(Math.round(amount * 100));

export const PER_TERM: ReadLine = {
  kind: 'reads',
  lineId: 'line',
  name: 'Concession read',
  counting: 'perTerm',
  pricing: 'fixed',
  reads: 24,
  rateCents: dollars(50),
};

export function terms(lines: LineTerms[], priceDollars: number, rest: Partial<ContractTerms> = {}): ContractTerms {
  return { contractId: 'contract', priceCents: dollars(priceDollars), cancelledGame: 'credit', lines, ...rest };
}

/** The books of one contract: every happening is booked, every posting kept, every invariant asserted. */
export class Books {
  position: Position | null = null;
  readonly postings: Posting[] = [];
  /** as they are stored */
  readonly told: Happening[] = [];
  private reads = 0;

  /** Books a happening and answers what it posted. */
  book(happening: Happening): Posting[] {
    const booked = bookHappening(this.position, happening);
    // What is stored as JSON must say the same when it is read back.
    expect(JSON.parse(JSON.stringify(booked.happening))).toEqual(booked.happening);
    this.told.push(booked.happening);
    this.position = booked.position;
    this.postings.push(...booked.postings);
    expect(invariantsOf(booked.position)).toEqual([]);
    assertBalanced(balancesOfPostings(booked.postings));
    return booked.postings;
  }

  /** Books what belongs to documents and not to the contract. */
  post(postings: Posting[]): Posting[] {
    this.postings.push(...postings);
    return postings;
  }

  reading(lineId = 'line', times = 1, gameId?: string): Posting[] {
    const all: Posting[] = [];
    for (let count = 0; count < times; count += 1) {
      this.reads += 1;
      all.push(...this.book({ kind: 'readCounted', readId: `read-${this.reads}`, lineId, ...(gameId ? { gameId } : {}) }));
    }
    return all;
  }

  invoice(invoiceId: string, net: number, tax = 0): Posting[] {
    return this.book({ kind: 'invoiced', invoiceId, number: invoiceId, netCents: dollars(net), taxCents: dollars(tax), lines: [{ text: 'Sponsorship', amountCents: dollars(net) }] });
  }

  balance(journal: Journal, account: string, keys: PostingKeys = {}): number {
    return balanceOf(balancesOfPostings(this.postings), journal, account, keys);
  }

  money(account: keyof typeof MONEY, keys: PostingKeys = {}): number {
    return this.balance('money', MONEY[account], keys) / 100;
  }
}

const SHORT: Record<string, [Journal, string]> = {
  P: ['agreed', 'promised'],
  BL: ['agreed', 'billed'],
  TB: ['agreed', 'toBill'],
  cash: ['money', MONEY.cash],
  drawer: ['money', MONEY.undepositedReceipts],
  AR: ['money', MONEY.receivable],
  CB: ['money', MONEY.contractBalance],
  UC: ['money', MONEY.unappliedCredit],
  ST: ['money', MONEY.salesTax],
  SR: ['money', MONEY.sponsorshipRevenue],
  IR: ['money', MONEY.inKindRevenue],
  UR: ['money', MONEY.unreadRevenue],
  AL: ['money', MONEY.allowances],
  BD: ['money', MONEY.badDebts],
  goods: ['money', MONEY.goodsReceived],
  fees: ['money', MONEY.feesAndInterest],
  bank: ['money', MONEY.bankCharges],
  opening: ['money', MONEY.openingBalance],
};

/** What postings change, in the ledger's short names: reads by account, dollars by `P`, `TB`, `CB` … */
export function changesOf(postings: Posting[]): Record<string, number> {
  const balances = balancesOfPostings(postings);
  const changes: Record<string, number> = {};
  for (const [name, [journal, account]] of Object.entries(SHORT)) {
    const amount = balanceOf(balances, journal, account);
    if (amount !== 0) changes[name] = amount / 100;
  }
  for (const balance of balances.values()) {
    if (balance.journal === 'reads') changes[balance.account] = (changes[balance.account] ?? 0) + balance.amount;
  }
  return changes;
}

/** The code with which something is refused, or `null` when it is not. */
export function refusalOf(run: () => unknown): RefusalCode | null {
  try {
    run();
    return null;
  } catch (error) {
    if (error instanceof Refused) return error.code;
    throw error;
  }
}
