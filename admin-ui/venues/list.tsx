import { Go } from '../fields/go.tsx';
import { Name } from '../fields/name.tsx';
import { findFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import type { Venue } from './types.ts';

export const VenueList = () => (
  <ListPage<Venue>
    title="Venues"
    addLabel="Add a venue"
    sort={{ field: 'name', order: 'ASC' }}
    filters={[findFilter()]}
    empty="A venue is a gym or a field with its floors, its exits and the place of its defibrillator. Add the one you play home games in."
    columns={[
      { label: 'Venue', sortBy: 'name', show: (venue) => <Go resource="venues" id={venue.id}><Name name={venue.name} sayAs={venue.sayAs} /></Go> },
      { label: 'Floors', show: (venue) => (venue.floors ?? []).map((floor) => floor.name).join(', ') || 'None named' },
      { label: 'Whose', show: (venue) => (venue.isOurs ? 'Ours' : 'Away') },
    ]}
  />
);
