import { Alert, Box, LinearProgress } from '@mui/material';
import { useEffect } from 'react';
import { useRefresh } from 'react-admin';
import { Go } from '../fields/go.tsx';
import { CommandButton } from '../forms/command-button.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { sentenceText } from '../format/sentence.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { iMay } from '../session/rights.ts';
import { Facts } from '../show/facts.tsx';
import { Figures } from '../show/figures.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { numberText } from '../words/count.ts';
import { SellerTotals } from './seller-totals.tsx';
import { RunState } from './state.tsx';
import type { RunLine, WholeBillingRun } from './types.ts';

const LOOK_EVERY_MILLISECONDS = 1000;

/** How far it has come; looks again every second until it is through. */
function Progress({ run }: { run: WholeBillingRun }) {
  const refresh = useRefresh();
  useEffect(() => {
    if (run.isFinished || !run.isRunning) return undefined;
    const timer = setTimeout(refresh, LOOK_EVERY_MILLISECONDS);
    return () => clearTimeout(timer);
  }, [run, refresh]);
  if (run.isFinished) return null;
  const words = `${numberText(run.done)} of ${numberText(run.contracts)} contracts`;
  return (
    <Box sx={{ my: 2 }}>
      <LinearProgress variant="determinate" value={(100 * run.done) / run.contracts} aria-label={words} sx={{ height: 10, mb: 1 }} />
      <p role="status">{words}{run.isRunning ? '…' : ''}</p>
      {!run.isRunning && <Alert severity="warning">This run broke off. What it issued stands; go on with it, and it bills what is left. Nothing is billed twice.</Alert>}
    </Box>
  );
}

const contractName = (line: RunLine) => [line.contractNumber, line.contractTitle].filter(Boolean).join(', ');

const Continue = ({ run }: { run: WholeBillingRun }) => (
  <CommandButton
    label="Continue the run"
    title="Continue this billing run?"
    explains="It goes on where it stood. Contracts that it dealt with are left as they are."
    path={`/billing-runs/${run.id}/continue`}
    confirmLabel="Continue"
    success="The run goes on."
    variant="contained"
  />
);

export const BillingRunShow = () => (
  <ShowPage<WholeBillingRun>
    title={(run) => `Billing run through ${dayText(run.throughDay)}`}
    canEdit={false}
    actions={(run) => !run.isFinished && !run.isRunning && iMay('billing-runs', 'create') && <Continue run={run} />}
  >
    {(run) => {
      const issued = (run.lines ?? []).filter((line) => line.outcome === 'issued');
      const skipped = (run.lines ?? []).filter((line) => line.outcome === 'skipped');
      return (
        <>
          <Section title="Run">
            <Figures
              figures={[
                { label: 'Invoices', value: numberText(run.issued) },
                { label: 'Skipped', value: numberText(run.skipped) },
                { label: 'To pay', value: moneyText(run.grossCents) },
              ]}
            />
            <Progress run={run} />
            <Facts
              facts={[
                ['State', <RunState key="state" run={run} />],
                ['Due through', dayText(run.throughDay)],
                ['Invoices issued on', dayText(run.issuedOn)],
                ['Seller of record', run.sellerName ?? 'All sellers'],
                ['Started by', run.startedByName ?? 'The command line'],
              ]}
            />
          </Section>
          <Section title="Invoices issued">
            {issued.length === 0 ? (
              <EmptyList>{run.isFinished ? 'Nothing was due, so no invoice was issued.' : 'No invoice yet.'}</EmptyList>
            ) : (
              <>
                <Rows<RunLine>
                  label="Invoices of the run"
                  rows={issued}
                  columns={[
                    { label: 'Invoice', show: (line) => <Go resource="invoices" id={line.invoiceId}>{line.invoiceNumber}</Go> },
                    { label: 'Sponsor', show: (line) => line.sponsorName },
                    { label: 'Contract', show: (line) => <Go resource="contracts" id={line.contractId}>{contractName(line)}</Go> },
                    { label: 'Net', numeric: true, show: (line) => moneyText(line.netCents) },
                    { label: 'To pay', numeric: true, show: (line) => moneyText(line.grossCents) },
                  ]}
                />
                <Box sx={{ mt: 2 }}><SellerTotals totals={run.totals} /></Box>
              </>
            )}
          </Section>
          {skipped.length > 0 && (
            <Section title="Skipped">
              <Rows<RunLine>
                label="Contracts that were skipped"
                rows={skipped}
                columns={[
                  { label: 'Sponsor', show: (line) => line.sponsorName },
                  { label: 'Contract', show: (line) => <Go resource="contracts" id={line.contractId}>{contractName(line)}</Go> },
                  { label: 'Why', show: (line) => sentenceText(line.why) },
                ]}
              />
            </Section>
          )}
        </>
      );
    }}
  </ShowPage>
);
