import type { ReportColumn } from '../books/report-table.tsx';
import { some } from '../books/report-table.tsx';
import { moneyText } from '../format/money.ts';
import { department } from '../session/me.ts';
import type { IncomeColumn, IncomeFigures } from './types.ts';

/** What each column is, in one sentence, for whoever never kept books. */
export const MEANINGS: readonly { column: IncomeColumn; label: string; means: string }[] = [
  { column: 'signed', label: 'Signed', means: 'The price of every contract on the day it was signed, before tax.' },
  { column: 'changed', label: 'Changed since', means: 'What changes, credits and reads priced one by one added to those prices or took off them, on the day each was booked.' },
  { column: 'billed', label: 'Billed', means: 'Invoices less voided ones and credit memos, before tax, on the day each was booked; charges such as a bank fee are left out.' },
  { column: 'earned', label: 'Earned', means: 'Revenue in the ledger: reads and benefits given, what was kept without a read, less allowances.' },
  { column: 'collected', label: 'Collected', means: 'Money that came in, sales tax included, less what was paid back, came back, or was kept by the bank.' },
];

/** The first five are dollars; what is paid in goods is never added to them. */
export const GOODS: readonly { column: IncomeColumn; label: string }[] = [
  { column: 'inKindAgreed', label: 'Agreed in goods' }, { column: 'goodsReceived', label: 'Goods received' }, { column: 'inKindEarned', label: 'Earned by reads' },
];

/** The chart leaves out what changed since: it is a correction, and it is in the table. */
export const DRAWN = MEANINGS.filter(({ column }) => column !== 'changed');

export const hasGoods = (figures: IncomeFigures): boolean => GOODS.some(({ column }) => figures[column] !== 0);
export const hasDollars = (figures: IncomeFigures): boolean => MEANINGS.some(({ column }) => figures[column] !== 0);

/** The columns of a table whose rows are figures; `total` puts the sum below. */
export function figureColumns(columns: readonly { column: IncomeColumn; label: string }[], total?: IncomeFigures): ReportColumn<IncomeFigures>[] {
  return columns.map(({ column, label }) => ({ label, numeric: true, show: (line) => some(line[column]), ...(total ? { sum: moneyText(total[column]) } : {}) }));
}

/** Dollars on an axis need no cents. */
export function dollarsText(amountCents: number): string {
  const { currency, locale } = department();
  return new Intl.NumberFormat(locale, { style: 'currency', currency, maximumFractionDigits: 0 }).format(amountCents / 100);
}
