import { Go } from '../fields/go.tsx';
import { choiceFilter, findFilter, pickFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { COPY_STATE_WORDS } from '../words/choices.ts';
import { CheckTag } from './check-tag.tsx';
import { CopyState } from './state.tsx';
import type { Copy } from './types.ts';

const STATES = Object.entries(COPY_STATE_WORDS).map(([id, name]) => ({ id, name }));

export const CopyList = () => (
  <ListPage<Copy>
    title="Copy"
    addLabel="Add copy"
    sort={{ field: 'title', order: 'ASC' }}
    filters={[findFilter(), pickFilter('sponsorId', 'sponsors', 'Sponsor'), choiceFilter('state', 'State', STATES)]}
    empty="Copy is the words to be read for a sponsor. Until a version is approved, the packet carries the neutral line."
    columns={[
      { label: 'Copy', sortBy: 'title', show: (copy) => <Go resource="copies" id={copy.id}>{copy.title}</Go> },
      { label: 'Sponsor', show: (copy) => <Go resource="sponsors" id={copy.sponsorId}>{copy.sponsorName}</Go> },
      { label: 'Read kind', show: (copy) => copy.readKindName },
      { label: 'Copy check', show: (copy) => <CheckTag copy={copy} /> },
      { label: 'State', show: (copy) => <CopyState state={copy.state} /> },
    ]}
  />
);
