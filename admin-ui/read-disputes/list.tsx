import { choiceFilter, findFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { disputeColumns } from './columns.tsx';
import type { ReadDispute } from './types.ts';

export const ReadDisputeList = () => (
  <ListPage<ReadDispute>
    title="Disputes"
    lead={<p>What sponsors ask about single reads on their page, and what they were told.</p>}
    sort={{ field: 'askedAt', order: 'DESC' }}
    filters={[findFilter(), choiceFilter('state', 'State', [{ id: 'open', name: 'To be answered' }, { id: 'answered', name: 'Answered' }])]}
    empty="No sponsor has asked about a read. On its page a sponsor can say that a read was not given, or that one is missing on a night; the question then stands here until it is answered."
    columns={disputeColumns}
  />
);
