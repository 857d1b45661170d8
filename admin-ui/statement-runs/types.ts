export type {
  StatementRunLine,
  StatementRunView as StatementRun,
  WholeStatementRunView as WholeStatementRun,
} from '../../server/reports/performance/performance.dto.ts';
