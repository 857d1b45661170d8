import { StatementRunList } from './list.tsx';
import { StatementRunShow } from './show.tsx';

export const statementRuns = { name: 'statement-runs', list: StatementRunList, show: StatementRunShow, recordRepresentation: 'seasonName' };
