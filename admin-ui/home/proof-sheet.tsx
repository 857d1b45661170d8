import { Box } from '@mui/material';
import type { ReactNode } from 'react';
import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { iMay } from '../session/rights.ts';
import { Section } from '../show/section.tsx';
import { count } from '../words/count.ts';
import type { Home } from './types.ts';

/** What of the proof waits for somebody; nothing where nothing does. */
export function ProofSheet({ proof }: { proof: Home['proof'] }) {
  if (!proof) return null;
  const { answersWaiting, answersLate, statementsToIssue } = proof;
  const lines: ReactNode[] = [];
  if (answersWaiting > 0) {
    lines.push(
      <>
        <Go to="/makegood-proposals">{count(answersWaiting, 'makegood')}</Go> {answersWaiting === 1 ? 'waits' : 'wait'} for a sponsor’s answer
        {answersLate > 0 && <>, <Tag mood="care">{answersLate === answersWaiting && answersLate === 1 ? 'past its day' : `${answersLate} past the day`}</Tag></>}
      </>,
    );
  }
  if (statementsToIssue > 0 && iMay('performance-statements', 'list')) {
    lines.push(<><Go to="/performance-statements">{count(statementsToIssue, 'statement')} of performance</Go> {statementsToIssue === 1 ? 'is' : 'are'} to be issued: the contract is over, or nearly</>);
  }
  if (lines.length === 0) return null;
  return (
    <Section title="What of the proof waits?">
      <Box component="ul" sx={{ m: 0, pl: 2.5 }}>{lines.map((line, place) => <li key={place}>{line}</li>)}</Box>
    </Section>
  );
}
