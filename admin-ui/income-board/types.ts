export type { IncomeBoardView, IncomeOfMonth, IncomeOfSchool, IncomeOfSeller, IncomeOfTeam, IncomeSpan, IncomeTable } from '../../server/reports/boards/income.dto.ts';
export type { IncomeColumn, IncomeFigures } from '../../server/domain/reports/income-board.ts';
