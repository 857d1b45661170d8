import { ROLL_COLUMNS } from '../../domain/billing/roll-forward.ts';
import type { RollColumn, RollForward } from '../../domain/billing/roll-forward.ts';
import type { Cell } from '../../platform/files/cell.ts';
import type { ReportTable } from '../../platform/files/file-answer.ts';
import type { AccountLedgerView, AgingView, IncomeAmounts, IncomeSplitView, OfSeller, RollForwardView, TrialBalanceView } from './report.dto.ts';

const money = (cents: number): Cell => ({ cents });
const day = (text: string): Cell => ({ day: text });
const named = (what: string, { sellerName }: OfSeller, when: string) => `${what}-${sellerName ?? 'nobody'}-${when}`;

export function trialBalanceTable(view: TrialBalanceView): ReportTable {
  return {
    fileName: named('trial-balance', view, view.on),
    sheetName: `Trial balance ${view.on}`,
    totalRows: 1,
    rows: [
      ['Account', 'Name', 'Outside code', 'Debit', 'Credit'],
      ...view.lines.map((line) => [line.account, line.name, line.outsideCode, money(line.debitCents), money(line.creditCents)]),
      ['Total', null, null, money(view.debitCents), money(view.creditCents)],
    ],
  };
}

export function accountLedgerTable(view: AccountLedgerView): ReportTable {
  return {
    fileName: named(`account-${view.account}`, view, `${view.from}-${view.to}`),
    sheetName: `${view.account} ${view.name}`,
    totalRows: 1,
    rows: [
      ['Booked', 'Happened', 'What happened', 'Document', 'Contract', 'Against', 'Debit', 'Credit', 'Balance'],
      [day(view.from), null, 'Opening balance', null, null, null, null, null, money(view.openingCents)],
      ...view.lines.map((line) => [
        day(line.bookedOn), day(line.occurredOn), line.sentence, line.cause?.label ?? null, line.contractTitle, line.against,
        money(line.debitCents), money(line.creditCents), money(line.balanceCents),
      ]),
      [day(view.to), null, view.leftOff > 0 ? `Closing balance (${view.leftOff} later postings are left off)` : 'Closing balance', null, null, null, null, null, money(view.closingCents)],
    ],
  };
}

export function agingTable(view: AgingView): ReportTable {
  const sums = (line: Pick<AgingView, 'bucketCents' | 'totalCents' | 'unappliedCents'>) => [...line.bucketCents, line.totalCents, line.unappliedCents].map(money);
  return {
    fileName: named(view.by === 'dueDay' ? 'aging-by-days-past-due' : 'aging-by-invoice-age', view, view.on),
    sheetName: `Aging ${view.on}`,
    totalRows: 1,
    rows: [
      ['Sponsor', 'Payer', ...view.buckets, 'Total', 'Credit not applied', 'Oldest invoice'],
      ...view.lines.map((line) => [line.sponsorName, line.payerName, ...sums(line), line.oldestNumber]),
      ['Total', null, ...sums(view), null],
    ],
  };
}

export const ROLL_HEADINGS: Readonly<Record<RollColumn, string>> = {
  takenOver: 'Taken over',
  billed: 'Billed',
  goodsReceived: 'Goods received',
  carried: 'Carried over',
  earned: 'Earned',
  kept: 'Forfeits, fees and minimums',
  allowed: 'Allowances',
  credited: 'Credited',
  voided: 'Voided',
};

export function rollForwardTable(view: RollForwardView): ReportTable {
  const figures = (line: RollForward) => [line.openingCents, ...ROLL_COLUMNS.map((column) => line[column]), line.closingCents, line.differenceCents].map(money);
  return {
    fileName: named('unearned-revenue', view, `${view.from}-${view.to}`),
    sheetName: `Unearned revenue ${view.to}`,
    totalRows: 1,
    rows: [
      ['Contract', 'Title', 'Sponsor', 'Opening', ...ROLL_COLUMNS.map((column) => ROLL_HEADINGS[column]), 'Closing', 'Difference'],
      ...view.lines.map((line) => [line.contractNumber, line.contractTitle, line.sponsorName, ...figures(line)]),
      ['Total', null, null, ...figures(view.total)],
    ],
  };
}

export function incomeSplitTable(view: IncomeSplitView): ReportTable {
  const amounts = (line: IncomeAmounts) => [line.sponsorshipCents, line.inKindCents, line.unreadCents, line.allowancesCents, line.totalCents].map(money);
  return {
    fileName: named('income-by-team', view, `${view.from}-${view.to}`),
    sheetName: `Income by team ${view.to}`,
    totalRows: 1,
    rows: [
      ['School', 'Team', 'Season', 'Sponsorship', 'In kind', 'Without a read', 'Allowances', 'Total'],
      ...view.lines.map((line) => [line.schoolName ?? 'Department', line.teamName, line.seasonName, ...amounts(line)]),
      ['Total', null, null, ...amounts(view.total)],
    ],
  };
}
