import { StatementList } from './list.tsx';
import { StatementShow } from './show.tsx';

export const performanceStatements = { name: 'performance-statements', list: StatementList, show: StatementShow, recordRepresentation: 'number' };
