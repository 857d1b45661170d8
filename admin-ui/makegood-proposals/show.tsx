import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { Waiting } from '../layout/waiting.tsx';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { count } from '../words/count.ts';
import { Decide } from './decide.tsx';
import { ProposalStanding, REMEDY_WORDS } from './standing.tsx';
import { ProposalTrace } from './trace.tsx';
import type { MakegoodProposal } from './types.ts';

const BECAUSE: Record<MakegoodProposal['because'], string> = {
  windowOver: 'Their windows are over', gameCancelled: 'A game was called off', seasonEnding: 'No game is left that could carry them', asked: 'It was asked for, though games are left',
};

const answerOf = ({ acceptedOn, declinedOn, answeredByName, answeredHow, answerNote }: MakegoodProposal): string | null => {
  const on = acceptedOn ?? declinedOn;
  if (on === null) return null;
  const how = answeredHow === 'link' ? 'by the sponsor’s link' : 'recorded by the athletic director';
  return `${acceptedOn ? 'Accepted' : 'Declined'} ${dayText(on)} by ${answeredByName}, ${how}${answerNote ? `: ${answerNote}` : ''}`;
};

/** Reads given instead; null for a credit or a carry-over. */
const progressOf = ({ replacementReads, placed, given, settledReads, missedReads }: MakegoodProposal): string | null =>
  replacementReads === null ? null : `${given} of ${replacementReads} given, ${placed} with a place; ${settledReads} of ${count(missedReads, 'missed read')} settled`;

function Sheet({ proposal }: { proposal: MakegoodProposal }) {
  // A line of the list is known before the whole proposal is read.
  if (!('missed' in proposal)) return <Waiting />;
  return (
    <>
      <Decide proposal={proposal} />
      <Section title="What is proposed" lead={proposal.words}>
        <Facts
          facts={[
            ['State', <ProposalStanding key="state" standing={proposal.standing} />],
            ['Sponsor', <Go key="sponsor" resource="sponsors" id={proposal.sponsorId}>{proposal.sponsorName}</Go>],
            ['Contract', <Go key="contract" resource="contracts" id={proposal.contractId}>{[proposal.contractNumber, proposal.contractTitle].filter(Boolean).join(', ')}</Go>],
            ['Remedy', REMEDY_WORDS[proposal.remedy]],
            ['Why', BECAUSE[proposal.because]],
            ['Value before tax', proposal.amountCents === null ? null : moneyText(proposal.amountCents)],
            ['How far it is', proposal.acceptedOn ? progressOf(proposal) : null],
            ['Proposed', dayText(proposal.proposedOn)],
            ['The sponsor sees it', proposal.withdrawnOn ? 'No longer' : proposal.shownOn ? `Since ${dayText(proposal.shownOn)}` : 'Not yet'],
            ['Answer by', proposal.answerBy && dayText(proposal.answerBy)],
            ['Answer', answerOf(proposal)],
            ['Settled', proposal.settledOn && dayText(proposal.settledOn)],
            ['Note', proposal.note],
          ]}
        />
      </Section>
      <Section title="From the missed read to what settles it"><ProposalTrace proposal={proposal} /></Section>
    </>
  );
}

/** One proposal, what may be done with it, and each missed read with what settled it. */
export const MakegoodProposalShow = () => (
  <ShowPage<MakegoodProposal> title={(proposal) => `Makegood for ${proposal.sponsorName}`} canEdit={false}>
    {(proposal) => <Sheet proposal={proposal} />}
  </ShowPage>
);
