import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { Name } from '../fields/name.tsx';
import { dayText } from '../format/day.ts';
import { choiceFilter, findFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { SPONSOR_STATUS_WORDS, SPONSOR_STATUSES, wordFor } from '../words/choices.ts';
import { count } from '../words/count.ts';
import type { Sponsor } from './types.ts';

export const SponsorList = () => (
  <ListPage<Sponsor>
    title="Sponsors"
    addLabel="Add a sponsor"
    sort={{ field: 'name', order: 'ASC' }}
    filters={[findFilter(), choiceFilter('status', 'State', SPONSOR_STATUSES)]}
    empty="A sponsor is a business whose name you promise to read. Add one, or import sponsors with their contracts from a file."
    columns={[
      { label: 'Sponsor', sortBy: 'name', show: (sponsor) => <Go resource="sponsors" id={sponsor.id}><Name name={sponsor.name} sayAs={sponsor.sayAs} /></Go> },
      { label: 'Category', show: (sponsor) => sponsor.categoryName },
      { label: 'State', sortBy: 'status', show: (sponsor) => (sponsor.lostOn ? <Tag mood="bad">Lost</Tag> : wordFor(SPONSOR_STATUS_WORDS, sponsor.status)) },
      { label: 'Contracts', show: (sponsor) => count(sponsor.contracts ?? 0, 'contract') },
      { label: 'Whose call', show: (sponsor) => sponsor.callerName ?? '–' },
      { label: 'Next step', show: (sponsor) => (sponsor.nextStep ? `${sponsor.nextStep}${sponsor.nextStepOn ? `, ${dayText(sponsor.nextStepOn, 'weekday')}` : ''}` : '–') },
    ]}
  />
);
