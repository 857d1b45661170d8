import { Name } from '../fields/name.tsx';
import { Swatches } from '../fields/swatches.tsx';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { TeamsOfSchool } from '../teams/teams-of-school.tsx';
import type { School } from './types.ts';

export const SchoolShow = () => (
  <ShowPage<School> title={(school) => school.name}>
    {(school) => (
      <>
        <Section title="School">
          <Facts
            facts={[
              ['Name', <Name key="name" name={school.name} sayAs={school.sayAs} />],
              ['Short name', school.shortName],
              ['Nickname', school.nickname],
              ['Colors', <span key="colours"><Swatches first={school.firstColour} second={school.secondColour} />{school.firstColour} and {school.secondColour}</span>],
              ['Side', school.isOurs ? 'One of our schools' : 'Opponent'],
              ['Account code', school.accountCode],
              ['Id in imported files', school.outsideId],
            ]}
          />
        </Section>
        <TeamsOfSchool schoolId={school.id} />
      </>
    )}
  </ShowPage>
);
