import { CHART, MONEY } from '../ledger/account.ts';
import { BalanceSheet } from '../ledger/balances.ts';
import type { Balance } from '../ledger/balances.ts';
import type { Journal } from '../ledger/account.ts';
import type { Posting } from '../ledger/posting.ts';
import { amountText, centsOf } from '../money.ts';

/** Names for what a posting only knows by id or by its account. */
export interface PostingNames {
  line: (lineId: string) => string;
  invoice: (invoiceId: string) => string | undefined;
  /** whose credit it is */
  payer: string;
}

export interface PostingSentence {
  journal: Journal;
  sentence: string;
}

/** Accounts that rise by what is debited to them; the others fall. */
const RISE_BY_DEBIT: readonly string[] = [
  MONEY.cash, MONEY.undepositedReceipts, MONEY.receivable, MONEY.allowances, MONEY.goodsReceived, MONEY.badDebts, MONEY.bankCharges, MONEY.cashOverShort,
];

/** What belongs together where an entry has several sides, the closest first: debited, credited. */
const TOGETHER: readonly (readonly [string, string])[] = [
  [MONEY.salesTax, MONEY.receivable], [MONEY.salesTax, MONEY.unappliedCredit], [MONEY.receivable, MONEY.salesTax],
  [MONEY.contractBalance, MONEY.receivable], [MONEY.contractBalance, MONEY.unappliedCredit], [MONEY.allowances, MONEY.unappliedCredit],
  [MONEY.receivable, MONEY.contractBalance], [MONEY.goodsReceived, MONEY.contractBalance],
];

/**
 * Postings as plain sentences: what moves from where to where, for somebody who never kept books. They add up to the
 * postings, account by account.
 *
 * @param contractBalanceCents the contract balance before them; what takes it past zero is told in two sentences
 */
export function postingWords(postings: readonly Posting[], contractBalanceCents: number, names: PostingNames): PostingSentence[] {
  const changes = changesOf(postings);
  return [...readsSentences(changes, names), ...agreedSentences(changes), ...moneySentences(changes, contractBalanceCents, names)];
}

function changesOf(postings: readonly Posting[]): Balance[] {
  const sheet = new BalanceSheet();
  for (const posting of postings) {
    sheet.add(posting.journal, posting.to, posting.amount, posting);
    sheet.add(posting.journal, posting.from, -posting.amount, posting);
  }
  return [...sheet.balances.values()];
}

interface Side {
  account: string;
  words: string;
  rises: boolean;
  amount: number;
}

function moneySentences(changes: readonly Balance[], contractBalanceCents: number, names: PostingNames): PostingSentence[] {
  const sides = changes.filter((change) => change.journal === 'money').flatMap((change) => sidesOf(change, contractBalanceCents, names));
  const debits = sides.filter((side) => side.amount > 0);
  const credits = sides.filter((side) => side.amount < 0).map((side) => ({ ...side, amount: -side.amount }));
  const sentences: string[] = [];
  const pair = (debit: Side, credit: Side) => {
    const amount = Math.min(debit.amount, credit.amount);
    if (amount === 0) return;
    debit.amount -= amount;
    credit.amount -= amount;
    sentences.push(moneySentence(amount, debit, credit));
  };
  for (const [debited, credited] of TOGETHER) {
    for (const debit of debits) for (const credit of credits) if (debit.account === debited && credit.account === credited) pair(debit, credit);
  }
  for (const debit of debits) for (const credit of credits) pair(debit, credit);
  return sentences.map((sentence) => ({ journal: 'money', sentence }));
}

/** The contract balance is unearned revenue below zero and unbilled receivable above, so a change may be of both. */
function sidesOf({ account, amount, keys }: Balance, before: number, names: PostingNames): Side[] {
  if (account !== MONEY.contractBalance) return [{ account, amount, words: accountWords(account, keys, names), rises: amount > 0 === RISE_BY_DEBIT.includes(account) }];
  const after = before + amount;
  const unearned = Math.min(0, after) - Math.min(0, before);
  const unbilled = Math.max(0, after) - Math.max(0, before);
  const parts: Side[] = [
    { account, amount: unearned, words: 'unearned revenue', rises: unearned < 0 },
    { account, amount: unbilled, words: 'unbilled receivable', rises: unbilled > 0 },
  ];
  return parts.filter((part) => part.amount !== 0);
}

function moneySentence(amount: number, debit: Side, credit: Side): string {
  const money = amountText(centsOf(amount));
  if (debit.rises && credit.rises) return `${money} is added to ${debit.words} and to ${credit.words}.`;
  if (!debit.rises && !credit.rises) return `${money} is taken off ${debit.words} and off ${credit.words}.`;
  return debit.rises ? `${money} moves from ${credit.words} to ${debit.words}.` : `${money} moves from ${debit.words} to ${credit.words}.`;
}

function accountWords(code: string, keys: Balance['keys'], names: PostingNames): string {
  if (code === MONEY.unappliedCredit) return `the unapplied credit of ${names.payer}`;
  if (code === MONEY.receivable) {
    const number = keys.invoiceId === undefined ? undefined : names.invoice(keys.invoiceId);
    return number === undefined ? 'accounts receivable' : `what is open on invoice ${number}`;
  }
  return (CHART.money.find((one) => one.code === code)?.name ?? code).toLowerCase();
}

/** One sentence: how the price moves, and what of it was billed or is to be billed. */
function agreedSentences(changes: readonly Balance[]): PostingSentence[] {
  const of = (account: string) => changes.find((change) => change.journal === 'agreed' && change.account === account)?.amount ?? 0;
  const [price, billed, toBill] = [-of('promised'), of('billed'), of('toBill')];
  const parts = [[billed, 'billed'], [toBill, 'to be billed']] as const;
  const said = parts.filter(([amount]) => amount !== 0).map(([amount, words]) => `${money(Math.abs(amount))} ${amount > 0 ? 'more' : 'less'} is ${words}`);
  if (said.length === 0) return [];
  const head = price === 0 ? 'The agreed price stays' : `The agreed price ${price > 0 ? 'rises' : 'falls'} by ${money(Math.abs(price))}`;
  return [{ journal: 'agreed', sentence: `${head}: ${said.join(', ')}.` }];
}

const money = (amount: number) => amountText(centsOf(amount));

const STATES: readonly (readonly [string, string])[] = [
  ['owed', 'owed'], ['given', 'counted as given'], ['madeGood', 'made good'], ['credited', 'credited'], ['released', 'released'], ['extra', 'extra'],
];

/** One sentence a line: how the promise moves, and where its reads stand. */
function readsSentences(changes: readonly Balance[], names: PostingNames): PostingSentence[] {
  const reads = changes.filter((change) => change.journal === 'reads');
  return [...new Set(reads.map((change) => change.keys.commitmentId ?? ''))].flatMap((lineId): PostingSentence[] => {
    const of = (account: string) => reads.filter((one) => one.account === account && (one.keys.commitmentId ?? '') === lineId).reduce((sum, one) => sum + one.amount, 0);
    const promised = -of('promised');
    const carried = of('carried');
    const said = [
      ...(promised === 0 ? [] : [`${Math.abs(promised)} ${promised > 0 ? 'more' : 'fewer'} promised`]),
      ...STATES.filter(([account]) => of(account) !== 0).map(([account, words]) => `${Math.abs(of(account))} ${of(account) > 0 ? 'more' : 'fewer'} ${words}`),
      ...(carried === 0 ? [] : [carried > 0 ? `${carried} carried out` : `${-carried} carried in`]),
    ];
    return said.length === 0 ? [] : [{ journal: 'reads', sentence: `${names.line(lineId)}: ${said.join(', ')}.` }];
  });
}
