import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { ListPage } from '../lists/list-page.tsx';
import { RunButton } from '../performance-statements/run-button.tsx';
import { iMay } from '../session/rights.ts';
import { numberText } from '../words/count.ts';
import { StatementRunState } from './state.tsx';
import type { StatementRun } from './types.ts';

export const StatementRunList = () => (
  <ListPage<StatementRun>
    title="Runs of statements"
    sort={{ field: 'askedAt', order: 'DESC' }}
    actions={iMay('statement-runs', 'create') && <RunButton />}
    empty="No run yet. A run issues the statement of performance for every signed contract of a season."
    columns={[
      { label: 'Season', show: (run) => <Go resource="statement-runs" id={run.id}>{run.seasonName}</Go> },
      { label: 'Told through', sortBy: 'throughOn', show: (run) => dayText(run.throughOn) },
      { label: 'Issued on', show: (run) => dayText(run.issuedOn) },
      { label: 'Contracts', numeric: true, show: (run) => numberText(run.contracts) },
      { label: 'Issued', numeric: true, show: (run) => numberText(run.issued) },
      { label: 'Nothing new', numeric: true, show: (run) => numberText(run.theSame) },
      { label: 'Failed', numeric: true, show: (run) => numberText(run.failed) },
      { label: 'State', show: (run) => <StatementRunState run={run} /> },
    ]}
  />
);
