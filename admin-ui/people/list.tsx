import { Go } from '../fields/go.tsx';
import { Name } from '../fields/name.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { ROLE_WORDS, wordFor } from '../words/choices.ts';
import type { Person } from './types.ts';

export const PersonList = () => (
  <ListPage<Person>
    title="People and roles"
    addLabel="Add a person"
    sort={{ field: 'name', order: 'ASC' }}
    empty="Nobody else signs in here yet. Add the announcer and the bookkeeper."
    columns={[
      { label: 'Name', sortBy: 'name', show: (person) => <Go resource="people" id={person.id}><Name name={person.name} sayAs={person.sayAs} /></Go> },
      { label: 'E-mail', show: (person) => person.email },
      { label: 'Roles', show: (person) => person.roles.map((role) => wordFor(ROLE_WORDS, role)).join(', ') },
    ]}
  />
);
