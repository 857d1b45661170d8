import { useRedirect } from 'react-admin';
import { CommandButton } from '../forms/command-button.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import type { WholeStatementRun } from '../statement-runs/types.ts';

/** Statements for all sponsors of a season in one go. */
export function RunButton() {
  const redirect = useRedirect();
  return (
    <CommandButton<WholeStatementRun>
      label="Issue for all sponsors…"
      title="Issue the statements of a season"
      explains="Each signed contract of the season gets its next statement. Where nothing has changed since the last one, that one stands. You can watch how far it is, and stop it."
      path="/statement-runs"
      confirmLabel="Issue"
      success="The run has begun."
      variant="contained"
      leaves
      body={({ seasonId, throughOn }) => ({ seasonId, ...(throughOn ? { throughOn } : {}) })}
      onDone={(run) => redirect('show', 'statement-runs', run.id)}
    >
      <PickInput source="seasonId" reference="seasons" label="Season" required />
      <DayInput source="throughOn" label="Told through" helperText="Empty for today" />
    </CommandButton>
  );
}
