import { Name } from '../fields/name.tsx';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { ROLE_WORDS, wordFor } from '../words/choices.ts';
import type { Person } from './types.ts';

export const PersonShow = () => (
  <ShowPage<Person> title={(person) => person.name}>
    {(person) => (
      <Section title="Person">
        <Facts facts={[['Name', <Name key="name" name={person.name} sayAs={person.sayAs} />], ['E-mail', person.email], ['Roles', person.roles.map((role) => wordFor(ROLE_WORDS, role)).join(', ')]]} />
      </Section>
    )}
  </ShowPage>
);
