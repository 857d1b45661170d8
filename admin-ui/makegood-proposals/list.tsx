import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { choiceFilter, findFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { OpenShortfalls } from './open-shortfalls.tsx';
import { ProposalStanding, STANDING_CHOICES } from './standing.tsx';
import type { MakegoodProposalLine } from './types.ts';

export const MakegoodProposalList = () => (
  <ListPage<MakegoodProposalLine>
    title="Makegoods"
    lead={<OpenShortfalls />}
    sort={{ field: 'proposedOn', order: 'DESC' }}
    filters={[findFilter(), choiceFilter('standing', 'State', STANDING_CHOICES)]}
    empty={<>Nothing is proposed. When a read was missed, open the <Go to="/contracts">contract</Go> and look under “Missed reads and credits”.</>}
    columns={[
      { label: 'Proposed', sortBy: 'proposedOn', show: (one) => <Go resource="makegood-proposals" id={one.id}>{dayText(one.proposedOn)}</Go> },
      { label: 'Sponsor', sortBy: 'sponsorName', show: (one) => one.sponsorName },
      { label: 'Contract', sortBy: 'contractNumber', show: (one) => <Go resource="contracts" id={one.contractId}>{one.contractNumber ?? one.contractTitle}</Go> },
      { label: 'What', show: (one) => one.words },
      { label: 'Answer by', sortBy: 'answerBy', show: (one) => (one.answerBy ? dayText(one.answerBy) : '–') },
      { label: 'State', sortBy: 'standing', show: (one) => <ProposalStanding standing={one.standing} /> },
    ]}
  />
);
