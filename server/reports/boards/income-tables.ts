import { INCOME_COLUMNS } from '../../domain/reports/income-board.ts';
import type { IncomeColumn, IncomeFigures } from '../../domain/reports/income-board.ts';
import type { Cell } from '../../platform/files/cell.ts';
import type { ReportTable } from '../../platform/files/file-answer.ts';
import type { IncomeBoardView, IncomeTable } from './income.dto.ts';

export const INCOME_HEADINGS: Readonly<Record<IncomeColumn, string>> = {
  signed: 'Signed',
  changed: 'Changed since',
  billed: 'Billed',
  earned: 'Earned',
  collected: 'Collected',
  inKindAgreed: 'In kind: agreed',
  goodsReceived: 'In kind: goods received',
  inKindEarned: 'In kind: earned',
};

const HEADINGS = INCOME_COLUMNS.map((column) => INCOME_HEADINGS[column]);
const amounts = (line: IncomeFigures): Cell[] => INCOME_COLUMNS.map((column) => ({ cents: line[column] }));

/** Each table: its name, the headings of what its rows are called, its rows, and whether they add up. */
const TABLES: Readonly<Record<IncomeTable, { name: string; heads: string[]; rows: (view: IncomeBoardView) => Cell[][]; isSummed: boolean }>> = {
  months: { name: 'by month', heads: ['Month', 'Fiscal year'], rows: (view) => view.months.map((line) => [line.month.slice(0, 7), line.fiscalYear, ...amounts(line)]), isSummed: true },
  teams: {
    name: 'by team', heads: ['School', 'Team', 'Season'],
    rows: (view) => view.teams.map((line) => [line.schoolName ?? 'No team', line.teamName, line.seasonName, ...amounts(line)]), isSummed: true,
  },
  schools: { name: 'by school', heads: ['School', 'Account code'], rows: (view) => view.schools.map((line) => [line.schoolName ?? 'No school', line.accountCode, ...amounts(line)]), isSummed: true },
  sellers: { name: 'by seller', heads: ['Seller of record'], rows: (view) => view.sellers.map((line) => [line.sellerName, ...amounts(line)]), isSummed: false },
};

/** One of the tables of the board for a spreadsheet. */
export function incomeTable(view: IncomeBoardView, which: IncomeTable): ReportTable {
  const { name, heads, rows, isSummed } = TABLES[which];
  const total: Cell[] = ['Total', ...heads.slice(1).map(() => null), ...amounts(view.total)];
  return {
    fileName: `income-${name}-${which === 'sellers' ? 'all' : (view.sellerName ?? 'nobody')}-${view.title}`,
    sheetName: `Income ${name}`,
    totalRows: isSummed ? 1 : 0,
    rows: [[...heads, ...HEADINGS], ...rows(view), ...(isSummed ? [total] : [])],
  };
}
