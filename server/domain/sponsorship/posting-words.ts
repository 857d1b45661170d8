import { CHART, MONEY } from '../ledger/account.ts';
import type { Posting } from '../ledger/posting.ts';
import { amountText, centsOf } from '../money.ts';

/** Names for what a posting only knows by id or by its account. */
export interface PostingNames {
  line: (lineId: string) => string;
  invoice: (invoiceId: string) => string | undefined;
  /** whose credit it is */
  payer: string;
}

/** One movement in words, with what it is about. */
export interface PostingWords {
  journal: Posting['journal'];
  /** reads, or cents in the two other journals */
  amount: number;
  sentence: string;
}

/** Accounts that rise by what is debited to them; the others fall. The contract balance is told apart by its sign. */
const RISE_BY_DEBIT: readonly string[] = [
  MONEY.cash, MONEY.undepositedReceipts, MONEY.receivable, MONEY.allowances, MONEY.goodsReceived, MONEY.badDebts, MONEY.bankCharges, MONEY.cashOverShort,
];

/**
 * Postings as plain sentences, in their order: what moves from where to where, for somebody who never kept books.
 *
 * @param contractBalanceCents the contract balance before the first of them; where it passes zero, one posting becomes two sentences
 */
export function postingWords(postings: readonly Posting[], contractBalanceCents: number, names: PostingNames): PostingWords[] {
  let balance = contractBalanceCents;
  return postings.flatMap((posting): PostingWords[] => {
    if (posting.journal === 'reads') return [{ journal: 'reads', amount: posting.amount, sentence: readsSentence(posting, names) }];
    if (posting.journal === 'agreed') return [{ journal: 'agreed', amount: posting.amount, sentence: agreedSentence(posting) }];
    const parts = partsOf(posting, balance);
    balance += parts.reduce((sum, part) => sum + signed(part.posting), 0);
    return parts.map((part) => ({ journal: 'money', amount: part.posting.amount, sentence: moneySentence(part, names) }));
  });
}

interface Part {
  posting: Posting;
  /** whether the contract balance stands as unbilled receivable while this part moves */
  isUnbilled: boolean;
}

function signed({ from, to, amount }: Posting): number {
  return (to === MONEY.contractBalance ? amount : 0) - (from === MONEY.contractBalance ? amount : 0);
}

function partsOf(posting: Posting, balance: number): Part[] {
  const change = signed(posting);
  if (change === 0) return [{ posting, isUnbilled: false }];
  const after = balance + change;
  if (balance * after >= 0) return [{ posting, isUnbilled: balance > 0 || after > 0 }];
  const first = Math.abs(balance);
  return [
    { posting: { ...posting, amount: first }, isUnbilled: balance > 0 },
    { posting: { ...posting, amount: posting.amount - first }, isUnbilled: after > 0 },
  ];
}

function moneySentence({ posting, isUnbilled }: Part, names: PostingNames): string {
  const amount = amountText(centsOf(posting.amount));
  const rises = (account: string) => (account === MONEY.contractBalance ? isUnbilled : RISE_BY_DEBIT.includes(account));
  const [debited, credited] = [accountWords(posting.to, posting, isUnbilled, names), accountWords(posting.from, posting, isUnbilled, names)];
  const [up, down] = [rises(posting.to), rises(posting.from)];
  if (up && down) return `${amount} moves from ${credited} to ${debited}.`;
  if (!up && !down) return `${amount} moves from ${debited} to ${credited}.`;
  return up ? `${amount} is added to ${debited} and to ${credited}.` : `${amount} is taken off ${debited} and off ${credited}.`;
}

function accountWords(code: string, posting: Posting, isUnbilled: boolean, names: PostingNames): string {
  if (code === MONEY.contractBalance) return isUnbilled ? 'unbilled receivable' : 'unearned revenue';
  if (code === MONEY.unappliedCredit) return `the unapplied credit of ${names.payer}`;
  if (code === MONEY.receivable) {
    const number = posting.invoiceId === undefined ? undefined : names.invoice(posting.invoiceId);
    return number === undefined ? 'accounts receivable' : `what is open on invoice ${number}`;
  }
  return (CHART.money.find((one) => one.code === code)?.name ?? code).toLowerCase();
}

function agreedSentence({ from, to, amount }: Posting): string {
  const money = amountText(centsOf(amount));
  if (to === 'promised') {
    return from === 'toBill' ? `The agreed price falls by ${money}; as much less is still to be billed.` : `The agreed price falls by ${money} that was billed.`;
  }
  if (from === 'promised') {
    return to === 'toBill' ? `The agreed price rises by ${money}, still to be billed.` : `The agreed price rises by ${money} that is billed.`;
  }
  return to === 'billed' ? `${money} that was to be billed counts as billed.` : `${money} that was billed is to be billed again.`;
}

const STATES: Record<string, string> = {
  owed: 'owed', given: 'given', madeGood: 'made good', credited: 'credited', released: 'released', carried: 'carried over', extra: 'extra', unpromised: 'unpromised',
};

function readsSentence({ from, to, amount, commitmentId = '' }: Posting, names: PostingNames): string {
  const line = `${names.line(commitmentId)}: ${amount}`;
  if (from === 'promised') return `${line} more promised${to === 'owed' ? ' and owed' : `; counted as ${STATES[to]}`}.`;
  if (to === 'promised') return `${line} fewer promised${from === 'owed' ? ' and owed' : ''}.`;
  if (from === 'carried' && to === 'owed') return `${line} carried in and owed.`;
  if (from === 'extra' || to === 'unpromised') return `${line} that ${amount === 1 ? 'was' : 'were'} extra now ${amount === 1 ? 'counts' : 'count'}.`;
  return `${line} no longer ${STATES[from] ?? from}, now ${STATES[to] ?? to}.`;
}
