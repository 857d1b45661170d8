import { Go } from '../fields/go.tsx';
import { Name } from '../fields/name.tsx';
import { Swatches } from '../fields/swatches.tsx';
import { findFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import type { School } from './types.ts';

export const SchoolList = () => (
  <ListPage<School>
    title="Schools"
    addLabel="Add a school"
    sort={{ field: 'name', order: 'ASC' }}
    filters={[findFilter()]}
    empty="Schools are yours and the ones you play. Add your own school first, then the opponents, or import a schedule that names them."
    columns={[
      { label: 'School', sortBy: 'name', show: (school) => <><Swatches first={school.firstColour} second={school.secondColour} /><Go resource="schools" id={school.id}><Name name={school.name} sayAs={school.sayAs} /></Go></> },
      { label: 'Nickname', sortBy: 'nickname', show: (school) => school.nickname },
      { label: 'Side', show: (school) => (school.isOurs ? 'Ours' : 'Opponent') },
    ]}
  />
);
