import { Go } from '../fields/go.tsx';
import { instantText } from '../format/instant.ts';
import { pickFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { KIND_WORDS, ProposalState } from './state.tsx';
import type { PlanProposalLine } from './types.ts';

export const PlanProposalList = () => (
  <ListPage<PlanProposalLine>
    title="Plans proposed"
    lead={<p>A plan is worked out first and looked at; nothing has a place by it until somebody accepts it.</p>}
    sort={{ field: 'askedAt', order: 'DESC' }}
    filters={[pickFilter('seasonId', 'seasons', 'Season')]}
    empty={<>No plan was asked for yet. Open a <Go to="/seasons">season</Go> and press “Plan the season”.</>}
    columns={[
      { label: 'Asked', sortBy: 'askedAt', show: (line) => <Go resource="plan-proposals" id={line.id}>{instantText(line.askedAt)}</Go> },
      { label: 'Season', sortBy: 'seasonName', show: (line) => line.seasonName },
      { label: 'What', show: (line) => KIND_WORDS[line.kind] },
      { label: 'Outcome', show: (line) => line.headline ?? line.failure ?? '–' },
      { label: 'By', show: (line) => line.askedByName ?? '–' },
      { label: 'State', sortBy: 'state', show: (line) => <ProposalState state={line.state} /> },
    ]}
  />
);
