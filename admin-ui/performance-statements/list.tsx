import { Button } from '@mui/material';
import { Link } from 'react-router';
import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { choiceFilter, findFilter, pickFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { iMay } from '../session/rights.ts';
import { PaperButton } from '../show/paper-button.tsx';
import { RunButton } from './run-button.tsx';
import { StatementState } from './state.tsx';
import type { PerformanceStatement } from './types.ts';

const STANDINGS = [{ id: 'latest', name: 'Latest of each contract' }, { id: 'replaced', name: 'Replaced' }];

function ListActions() {
  return (
    <>
      {iMay('performance-statements', 'create') && <RunButton />}
      <Button component={Link} to="/statement-runs" variant="outlined">Runs</Button>
    </>
  );
}

export const contractName = ({ contractNumber, contractTitle }: { contractNumber: string | null; contractTitle: string }): string => [contractNumber, contractTitle].filter(Boolean).join(', ');

export const paperName = ({ sponsorName, number }: PerformanceStatement): string => `performance-${sponsorName.replace(/[^A-Za-z0-9]+/g, '-')}-${number}`;

export const StatementList = () => (
  <ListPage<PerformanceStatement>
    title="Statements"
    sort={{ field: 'issuedOn', order: 'DESC' }}
    filters={[findFilter(), pickFilter('seasonId', 'seasons', 'Season'), pickFilter('sponsorId', 'sponsors', 'Sponsor'), choiceFilter('standing', 'Show', STANDINGS)]}
    actions={<ListActions />}
    empty="No statement of performance yet. One tells a sponsor what was promised and what was given, night by night, for the director to sign. Issue it from the contract, or for all sponsors of a season here."
    columns={[
      { label: 'Statement', sortBy: 'number', show: (one) => <Go resource="performance-statements" id={one.id}>Statement {one.number}</Go> },
      { label: 'Sponsor', sortBy: 'sponsorName', show: (one) => one.sponsorName },
      { label: 'Contract', sortBy: 'contractNumber', show: (one) => <Go resource="contracts" id={one.contractId}>{contractName(one)}</Go> },
      { label: 'Season', show: (one) => one.seasonName },
      { label: 'Issued', sortBy: 'issuedOn', show: (one) => dayText(one.issuedOn) },
      { label: 'Told through', sortBy: 'throughOn', show: (one) => dayText(one.throughOn) },
      { label: 'State', show: (one) => <StatementState statement={one} /> },
      { label: 'Paper', show: (one) => <PaperButton path={`/performance-statements/${one.id}/statement.pdf`} name={paperName(one)} label="PDF" /> },
    ]}
  />
);
