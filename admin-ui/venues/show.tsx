import { Name } from '../fields/name.tsx';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import type { Venue } from './types.ts';

const NOT_WRITTEN = 'Not written yet';

export const VenueShow = () => (
  <ShowPage<Venue> title={(venue) => venue.name}>
    {(venue) => (
      <>
        <Section title="Venue">
          <Facts
            facts={[
              ['Name', <Name key="name" name={venue.name} sayAs={venue.sayAs} />],
              ['Address', venue.address],
              ['Floors', (venue.floors ?? []).map((floor) => floor.name).join(', ') || 'None named'],
              ['Whose', venue.isOurs ? 'Ours' : 'Away'],
            ]}
          />
        </Section>
        <Section title="When something happens" lead="Printed on every packet for this venue.">
          <Facts
            facts={[
              ['Exits', venue.exitsText ?? NOT_WRITTEN],
              ['Defibrillator', venue.defibrillatorPlace ?? NOT_WRITTEN],
              ['Clearing the building', venue.evacuationText ?? NOT_WRITTEN],
              ['Bad weather', venue.weatherText ?? NOT_WRITTEN],
              ['Someone is hurt', venue.injuryText ?? NOT_WRITTEN],
              ['A threat', venue.threatText ?? NOT_WRITTEN],
            ]}
          />
        </Section>
      </>
    )}
  </ShowPage>
);
