import { Box, LinearProgress } from '@mui/material';
import { useEffect, useState } from 'react';
import { useRefresh } from 'react-admin';
import { CommandButton } from '../forms/command-button.tsx';
import { iMay } from '../session/rights.ts';
import { Section } from '../show/section.tsx';
import { count } from '../words/count.ts';
import type { PlanProposal } from './types.ts';

const LOOK_EVERY_MILLISECONDS = 700;
const secondsSince = (instant: string): number => Math.max(0, Math.round((Date.now() - Date.parse(instant)) / 1000));

/** While the plan is worked out: how long already, how long at most, and a way to stop it. */
export function Solving({ proposal }: { proposal: PlanProposal }) {
  const refresh = useRefresh();
  const [passed, setPassed] = useState(() => secondsSince(proposal.askedAt));
  useEffect(() => {
    const timer = setInterval(() => {
      setPassed(secondsSince(proposal.askedAt));
      refresh();
    }, LOOK_EVERY_MILLISECONDS);
    return () => clearInterval(timer);
  }, [proposal.askedAt, refresh]);
  return (
    <Section title="The plan is being worked out">
      <LinearProgress aria-label="The plan is being worked out" sx={{ height: 10, mb: 1 }} />
      <Box component="p" role="status" sx={{ mt: 0 }}>At most {count(proposal.seconds, 'second')}; you may leave this page and come back.</Box>
      <Box component="p" sx={{ color: 'text.secondary' }}>{count(passed, 'second')} so far.</Box>
      {iMay('plan-proposals', 'edit') && (
        <CommandButton
          label="Cancel"
          title="Stop working out this plan?"
          explains="Nothing is changed. You may ask for a plan again at any time."
          path={`/plan-proposals/${proposal.id}/cancel`}
          confirmLabel="Stop it"
          success="The plan is no longer worked out."
        />
      )}
    </Section>
  );
}
