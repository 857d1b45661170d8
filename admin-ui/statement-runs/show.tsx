import { Box, LinearProgress } from '@mui/material';
import { useEffect } from 'react';
import { useRefresh } from 'react-admin';
import { Go } from '../fields/go.tsx';
import { CommandButton } from '../forms/command-button.tsx';
import { dayText } from '../format/day.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { contractName } from '../performance-statements/list.tsx';
import { iMay } from '../session/rights.ts';
import { Facts } from '../show/facts.tsx';
import { Figures } from '../show/figures.tsx';
import { PaperButton } from '../show/paper-button.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { numberText } from '../words/count.ts';
import { StatementRunState } from './state.tsx';
import type { StatementRunLine, WholeStatementRun } from './types.ts';

const LOOK_EVERY_MILLISECONDS = 1000;

const isUnderWay = ({ state }: WholeStatementRun): boolean => state === 'waiting' || state === 'running';

/** How far it has come; looks again every second until it is through. */
function Progress({ run }: { run: WholeStatementRun }) {
  const refresh = useRefresh();
  useEffect(() => {
    if (!isUnderWay(run)) return undefined;
    const timer = setTimeout(refresh, LOOK_EVERY_MILLISECONDS);
    return () => clearTimeout(timer);
  }, [run, refresh]);
  if (!isUnderWay(run)) return null;
  const words = `${numberText(run.done)} of ${numberText(run.contracts)} contracts`;
  return (
    <Box sx={{ my: 2 }}>
      <LinearProgress variant="determinate" value={run.contracts === 0 ? 100 : (100 * run.done) / run.contracts} aria-label={words} sx={{ height: 10, mb: 1 }} />
      <p role="status">{words}…</p>
    </Box>
  );
}

const Stop = ({ run }: { run: WholeStatementRun }) => (
  <CommandButton
    label="Stop the run"
    title="Stop this run?"
    explains="What it issued so far stands. The contracts that are left get no statement from it."
    path={`/statement-runs/${run.id}/cancel`}
    confirmLabel="Stop"
    success="The run is stopped."
  />
);

function Issued({ run, lines }: { run: WholeStatementRun; lines: readonly StatementRunLine[] }) {
  if (lines.length === 0) return <EmptyList>{isUnderWay(run) ? 'No statement yet.' : 'No statement was issued.'}</EmptyList>;
  return (
    <Rows<StatementRunLine>
      label="Statements of the run"
      rows={lines}
      keyOf={(line) => line.contractId}
      columns={[
        { label: 'Statement', show: (line) => <Go resource="performance-statements" id={line.statementId}>Statement {line.number}</Go> },
        { label: 'Sponsor', show: (line) => line.sponsorName },
        { label: 'Contract', show: (line) => <Go resource="contracts" id={line.contractId}>{contractName(line)}</Go> },
        { label: 'Paper', show: (line) => <PaperButton path={`/performance-statements/${line.statementId}/statement.pdf`} name={`performance-${line.sponsorName.replace(/[^A-Za-z0-9]+/g, '-')}-${line.number}`} label="PDF" /> },
      ]}
    />
  );
}

export const StatementRunShow = () => (
  <ShowPage<WholeStatementRun>
    title={(run) => `Statements of ${run.seasonName}`}
    canEdit={false}
    actions={(run) => isUnderWay(run) && iMay('statement-runs', 'create') && <Stop run={run} />}
  >
    {(run) => {
      const issued = (run.lines ?? []).filter((line) => line.outcome === 'issued');
      const others = (run.lines ?? []).filter((line) => line.outcome !== 'issued');
      return (
        <>
          <Section title="Run">
            <Figures figures={[{ label: 'Issued', value: numberText(run.issued) }, { label: 'Nothing new', value: numberText(run.theSame) }, { label: 'Failed', value: numberText(run.failed) }]} />
            <Progress run={run} />
            <Facts
              facts={[
                ['State', <StatementRunState key="state" run={run} />],
                ['Told through', dayText(run.throughOn)],
                ['Issued on', dayText(run.issuedOn)],
                ['Asked for by', run.askedByName ?? 'The command line'],
              ]}
            />
          </Section>
          <Section title="Statements issued"><Issued run={run} lines={issued} /></Section>
          {others.length > 0 && (
            <Section title="Without a new statement">
              <Rows<StatementRunLine>
                label="Contracts without a new statement"
                rows={others}
                keyOf={(line) => line.contractId}
                columns={[
                  { label: 'Sponsor', show: (line) => line.sponsorName },
                  { label: 'Contract', show: (line) => <Go resource="contracts" id={line.contractId}>{contractName(line)}</Go> },
                  { label: 'Why', show: (line) => line.why },
                ]}
              />
            </Section>
          )}
        </>
      );
    }}
  </ShowPage>
);
