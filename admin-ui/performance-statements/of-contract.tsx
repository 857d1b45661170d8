import { useServer } from '../api/use-server.ts';
import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { iMay } from '../session/rights.ts';
import { PaperButton } from '../show/paper-button.tsx';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import { IssueStatementButton } from './issue-button.tsx';
import { paperName } from './list.tsx';
import { StatementState } from './state.tsx';
import type { PerformanceStatement } from './types.ts';

/** The statements of performance of one contract, the latest first. */
export function StatementsOfContract({ contractId }: { contractId: string }) {
  const asked = useServer<{ data: PerformanceStatement[] }>(`/contracts/${contractId}/performance-statements`);
  const issue = (isFirst: boolean) => (iMay('performance-statements', 'create') ? <IssueStatementButton contractId={contractId} isFirst={isFirst} /> : null);
  const draft = <PaperButton path={`/contracts/${contractId}/performance-statement-draft.pdf`} name="performance-draft" label="Look at a draft (PDF)" />;
  return (
    <Reading of={asked}>
      {({ data }) => (
        <Section title="Statements of performance" lead="What was promised and what was given, for the sponsor, signed by the director. What is issued never changes." actions={<>{draft}{data.length > 0 && issue(false)}</>}>
          {data[0]?.isOutOfDate && <p role="status">The books have changed since statement {data[0].number}: issue the next.</p>}
          {data.length === 0 ? (
            <EmptyList action={issue(true)}>None is issued yet. A draft shows what it would say now.</EmptyList>
          ) : (
            <Rows<PerformanceStatement>
              label="Statements of performance of this contract"
              rows={data}
              columns={[
                { label: 'Statement', show: (one) => <Go resource="performance-statements" id={one.id}>Statement {one.number}</Go> },
                { label: 'Issued', show: (one) => dayText(one.issuedOn) },
                { label: 'Told through', show: (one) => dayText(one.throughOn) },
                { label: 'Issued by', show: (one) => one.issuedByName ?? 'The command line' },
                { label: 'State', show: (one) => <StatementState statement={one} /> },
                { label: 'Paper', show: (one) => <PaperButton path={`/performance-statements/${one.id}/statement.pdf`} name={paperName(one)} label="PDF" /> },
              ]}
            />
          )}
        </Section>
      )}
    </Reading>
  );
}
