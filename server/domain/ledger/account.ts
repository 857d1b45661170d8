/** The three journals: reads owed and given, money agreed upon (a memo, never exported), money. */
export const JOURNALS = ['reads', 'agreed', 'money'] as const;

export type Journal = (typeof JOURNALS)[number];

/** What tells two balances of one account apart. */
export type AccountKey = 'contractId' | 'commitmentId' | 'gameId' | 'invoiceId' | 'unappliedId';

export interface Account {
  code: string;
  name: string;
  keyedBy: readonly AccountKey[];
}

/** Short names for the codes of the money accounts; a department may rename them and map them to its own. */
export const MONEY = {
  cash: '1000',
  undepositedReceipts: '1050',
  receivable: '1100',
  contractBalance: '2100',
  unappliedCredit: '2150',
  salesTax: '2200',
  openingBalance: '3900',
  sponsorshipRevenue: '4000',
  inKindRevenue: '4010',
  unreadRevenue: '4050',
  allowances: '4090',
  feesAndInterest: '4200',
  goodsReceived: '5000',
  badDebts: '5100',
  bankCharges: '5200',
  cashOverShort: '5300',
} as const;

const account = (code: string, name: string, ...keyedBy: AccountKey[]): Account => ({ code, name, keyedBy });

const readAccount = (code: string, name: string) => account(code, name, 'contractId', 'commitmentId', 'gameId');

/**
 * The chart of accounts, in the order in which postings name them. The contract balance is one account because
 * what is unearned and what is unbilled are netted contract by contract.
 *
 * @source ASC 606-10-45-1; common practice for the numbers
 */
export const CHART: Readonly<Record<Journal, readonly Account[]>> = {
  reads: [
    readAccount('promised', 'Promised'),
    readAccount('owed', 'Owed'),
    readAccount('given', 'Given'),
    readAccount('madeGood', 'Made good'),
    readAccount('credited', 'Credited'),
    readAccount('released', 'Released'),
    readAccount('carried', 'Carried over'),
    readAccount('extra', 'Extra'),
    readAccount('unpromised', 'Unpromised'),
  ],
  agreed: [
    account('promised', 'Agreed price', 'contractId'),
    account('billed', 'Billed', 'contractId'),
    account('toBill', 'To bill', 'contractId'),
  ],
  money: [
    account(MONEY.cash, 'Cash'),
    account(MONEY.undepositedReceipts, 'Undeposited receipts'),
    account(MONEY.receivable, 'Accounts receivable', 'invoiceId'),
    account(MONEY.contractBalance, 'Contract balance', 'contractId'),
    account(MONEY.unappliedCredit, 'Unapplied credit', 'unappliedId'),
    account(MONEY.salesTax, 'Sales tax payable'),
    account(MONEY.openingBalance, 'Opening balance'),
    account(MONEY.sponsorshipRevenue, 'Sponsorship revenue'),
    account(MONEY.inKindRevenue, 'In-kind revenue'),
    account(MONEY.unreadRevenue, 'Unread revenue'),
    account(MONEY.allowances, 'Allowances'),
    account(MONEY.feesAndInterest, 'Fees and interest'),
    account(MONEY.goodsReceived, 'Goods received'),
    account(MONEY.badDebts, 'Bad debts'),
    account(MONEY.bankCharges, 'Bank charges'),
    account(MONEY.cashOverShort, 'Cash over and short'),
  ],
};

/** @throws RangeError when the journal has no such account */
export function accountOf(journal: Journal, code: string): Account {
  const found = CHART[journal].find((one) => one.code === code);
  if (!found) throw new RangeError(`the ${journal} journal has no account ${code}`);
  return found;
}

/** The name a contract balance carries: what is paid and not earned, or what is earned and not billed. */
export function contractBalanceName(amountCents: number): 'Unearned revenue' | 'Unbilled receivable' | 'Contract balance' {
  if (amountCents === 0) return 'Contract balance';
  return amountCents < 0 ? 'Unearned revenue' : 'Unbilled receivable';
}
