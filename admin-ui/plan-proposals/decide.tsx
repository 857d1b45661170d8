import { useRedirect } from 'react-admin';
import { Actions, CommandButton } from '../forms/command-button.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { iMay } from '../session/rights.ts';
import { numberText } from '../words/count.ts';
import { AskPlanButton } from './ask-plan-button.tsx';
import type { PlanProposal } from './types.ts';

function Accept({ proposal }: { proposal: PlanProposal }) {
  const { totals, asksWhy } = proposal.result!;
  return (
    <CommandButton
      label="Accept this plan"
      title="Accept this plan?"
      explains={`New places: ${numberText(totals.added)}. Moved: ${numberText(totals.moved + totals.movedWithinGame)}. Taken out: ${numberText(totals.gone)}. Locked nights, pinned reads and what is printed stay as they are.`}
      path={`/plan-proposals/${proposal.id}/accept`}
      version={proposal.version}
      confirmLabel="Accept it"
      success="The plan is accepted."
      variant="contained"
    >
      {asksWhy ? <WordsInput source="reason" label="Why competitors may stand together" longest={500} lines={2} helperText="Kept with each read that stands beside a competitor" required /> : undefined}
    </CommandButton>
  );
}

/** What may be done with a proposal that is worked out. */
export function Decide({ proposal }: { proposal: PlanProposal }) {
  const redirect = useRedirect();
  if (!iMay('plan-proposals', 'edit')) return null;
  const isOpen = proposal.state === 'proposed' && proposal.outOfDateBecause === null;
  return (
    <Actions>
      {isOpen && <Accept proposal={proposal} />}
      {(proposal.state === 'proposed' || proposal.state === 'failed') && (
        <CommandButton
          label="Discard"
          title="Discard this plan?"
          explains="Nothing is changed. The plan stays in the list as discarded."
          path={`/plan-proposals/${proposal.id}/discard`}
          confirmLabel="Discard it"
          success="The plan is discarded."
        />
      )}
      {!isOpen && proposal.state !== 'solving' && <AskPlanButton seasonId={proposal.seasonId} label="Work it out again" kind={proposal.kind} {...(proposal.because === null ? {} : { because: proposal.because })} {...(proposal.gameId === null ? {} : { gameId: proposal.gameId })} onAsked={(id) => redirect('show', 'plan-proposals', id)} />}
    </Actions>
  );
}
