import { useRedirect } from 'react-admin';
import { CommandButton } from '../forms/command-button.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import type { WholePerformanceStatement } from './types.ts';

export function IssueStatementButton({ contractId, isFirst = false }: { contractId: string; isFirst?: boolean }) {
  const redirect = useRedirect();
  return (
    <CommandButton<WholePerformanceStatement>
      label={isFirst ? 'Issue a statement…' : 'Issue the next…'}
      title="Issue a statement of performance"
      explains="It gets a number and the head of a seal over the books as they are now, and never changes. A later one replaces it."
      path={`/contracts/${contractId}/performance-statements`}
      confirmLabel="Issue"
      success="The statement is issued."
      variant="contained"
      leaves
      body={({ throughOn }) => (throughOn ? { throughOn } : {})}
      onDone={(statement) => redirect('show', 'performance-statements', statement.id)}
    >
      <DayInput source="throughOn" label="Told through" helperText="Empty for today" />
    </CommandButton>
  );
}
