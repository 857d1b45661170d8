import { Alert } from '@mui/material';
import { useServer } from '../api/use-server.ts';
import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { instantText } from '../format/instant.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { AskPlanButton } from '../plan-proposals/ask-plan-button.tsx';
import type { PromiseStanding, SeasonPlan } from '../plan-proposals/types.ts';
import { iMay } from '../session/rights.ts';
import { Figures } from '../show/figures.tsx';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import { count, numberText } from '../words/count.ts';

function currentText(plan: SeasonPlan): string {
  if (plan.acceptedAt === null) return 'No plan was accepted yet.';
  if (plan.changedSince !== null) return `The plan accepted ${instantText(plan.acceptedAt)} is not current: since then ${plan.changedSince}.`;
  return `The plan accepted ${instantText(plan.acceptedAt)} is current.`;
}

const Promises = ({ plan }: { plan: SeasonPlan }) => (
  <Rows<PromiseStanding>
    label="What is owed, planned and at risk"
    rows={plan.promises}
    keyOf={(line) => line.promiseId}
    columns={[
      { label: 'Sponsor', show: (line) => (line.source === 'offer' ? `${line.sponsorName} (open offer)` : line.sponsorName) },
      { label: 'Read', show: (line) => (line.source === 'makegood' ? `${line.readKindName} (makegood)` : line.readKindName) },
      { label: 'Still to give', numeric: true, show: (line) => numberText(line.owed) },
      { label: 'Planned', numeric: true, show: (line) => numberText(line.planned) },
      { label: 'At risk', numeric: true, show: (line) => numberText(line.atRisk) },
    ]}
  />
);

function Locked({ plan }: { plan: SeasonPlan }) {
  if (plan.lockedNights.length === 0) return null;
  return (
    <Alert severity="info" icon={false} sx={{ mt: 2 }}>
      {plan.lockedNights.length === 1 ? 'One night is locked' : `${numberText(plan.lockedNights.length)} nights are locked`}: nothing is planned into or out of {plan.lockedNights.length === 1 ? 'it' : 'them'}.
      <ul>
        {plan.lockedNights.map((night) => <li key={night.nightId}><Go resource="nights" id={night.nightId}>{dayText(night.heldOn)}, {night.label}</Go>: {night.why === 'issued' ? 'its packet is issued' : (night.note ?? 'locked by hand')}</li>)}
      </ul>
    </Alert>
  );
}

/** Where the season's plan stands, and the way to a new one. */
export function SeasonPlanSection({ seasonId }: { seasonId: string }) {
  const plan = useServer<SeasonPlan>(iMay('plan-proposals', 'show') ? `/seasons/${seasonId}/plan` : null);
  if (!iMay('plan-proposals', 'show')) return null;
  return (
    <Section title="Plan of the season" actions={<AskPlanButton seasonId={seasonId} />}>
      <Reading of={plan}>
        {(seen) => (
          <>
            <Figures
              figures={[
                { label: 'Games to come', value: numberText(seen.gamesToCome) },
                { label: 'Reads to give', value: numberText(seen.owed) },
                { label: 'Planned', value: numberText(seen.planned) },
                { label: 'At risk', value: numberText(seen.atRisk) },
              ]}
            />
            <p>
              {currentText(seen)}{' '}
              {seen.latestProposal && <Go resource="plan-proposals" id={seen.latestProposal.id}>Look at the latest proposal</Go>}{' '}
              <Go to={`/plan?season=${seasonId}`}>Open the plan board</Go>
            </p>
            {seen.promises.length === 0 ? <EmptyList>{`Nothing is owed in ${count(seen.gamesToCome, 'game')} to come.`}</EmptyList> : <Promises plan={seen} />}
            <Locked plan={seen} />
          </>
        )}
      </Reading>
    </Section>
  );
}
