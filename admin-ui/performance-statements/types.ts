export type {
  StatementCheckView as StatementCheck,
  StatementContent,
  StatementDraftView as StatementDraft,
  StatementView as PerformanceStatement,
  WholeStatementView as WholePerformanceStatement,
} from '../../server/reports/performance/performance.dto.ts';
