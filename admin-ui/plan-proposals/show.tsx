import { Alert } from '@mui/material';
import { Go } from '../fields/go.tsx';
import { instantText } from '../format/instant.ts';
import { Waiting } from '../layout/waiting.tsx';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { ByGame, BySponsor } from './before-after.tsx';
import { Decide } from './decide.tsx';
import { Moves } from './moves.tsx';
import { Outcome } from './outcome.tsx';
import { Solving } from './solving.tsx';
import { KIND_WORDS, ProposalState } from './state.tsx';
import type { PlanProposal } from './types.ts';

const About = ({ proposal }: { proposal: PlanProposal }) => (
  <Section title="This proposal">
    <Facts
      facts={[
        ['State', <ProposalState key="state" state={proposal.state} />],
        ['Season', <Go key="season" resource="seasons" id={proposal.seasonId}>{proposal.seasonName}</Go>],
        ['What was asked', KIND_WORDS[proposal.kind]],
        ['Why', proposal.because],
        ['Game', proposal.gameId === null ? null : <Go key="game" resource="games" id={proposal.gameId}>{proposal.gameLabel ?? 'The game'}</Go>],
        ['Asked', `${instantText(proposal.askedAt)}${proposal.askedByName === null ? '' : ` by ${proposal.askedByName}`}`],
        ['Decided', proposal.decidedAt === null ? null : `${instantText(proposal.decidedAt)}${proposal.decidedByName === null ? '' : ` by ${proposal.decidedByName}`}`],
      ]}
    />
  </Section>
);

function Sheet({ proposal }: { proposal: PlanProposal }) {
  // A line of the list is known before the whole proposal is read.
  if (!('result' in proposal)) return <Waiting />;
  const { result } = proposal;
  return (
    <>
      {proposal.state === 'solving' && <Solving proposal={proposal} />}
      {proposal.failure && <Alert severity="warning" icon={false} sx={{ mb: 2 }}>{proposal.failure}</Alert>}
      {proposal.outOfDateBecause && <Alert severity="warning" icon={false} sx={{ mb: 2 }}>This plan is out of date, because since then {proposal.outOfDateBecause}. It can no longer be accepted.</Alert>}
      <Decide proposal={proposal} />
      {result && <Outcome proposal={proposal} result={result} />}
      {result && <BySponsor result={result} />}
      {result && <Moves result={result} />}
      {result && <ByGame result={result} />}
      <About proposal={proposal} />
    </>
  );
}

/** A plan that is worked out, and what may be done with it. */
export const PlanProposalShow = () => (
  <ShowPage<PlanProposal> title={(proposal) => `Plan of ${proposal.seasonName}`} canEdit={false}>
    {(proposal) => <Sheet proposal={proposal} />}
  </ShowPage>
);
