import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { wordFor } from '../words/choices.ts';
import { RollOverLink } from './roll-over/roll-over-link.tsx';
import { SeasonPlanSection } from './season-plan.tsx';
import type { Season } from './types.ts';

const listOf = (resource: string, seasonId: string) => `/${resource}?filter=${encodeURIComponent(JSON.stringify({ seasonId }))}`;

export const SeasonShow = () => (
  <ShowPage<Season> title={(season) => season.name} actions={(season) => <RollOverLink season={season} />}>
    {(season) => (
      <>
        <Section title="Season">
          <Facts
            facts={[
              ['Sport', wordFor({}, season.sport)],
              ['First day', dayText(season.startsOn, 'long')],
              ['Last day', dayText(season.endsOn, 'long')],
              ['Follows', season.followsSeasonId && <Go key="before" resource="seasons" id={season.followsSeasonId}>The season before</Go>],
              ['Rolled over into', season.followedBySeasonId && <Go key="next" resource="seasons" id={season.followedBySeasonId}>The next season</Go>],
              ['Teams', <Go key="teams" to={listOf('teams', season.id)}>Teams of this season</Go>],
              ['Games', <Go key="games" to={listOf('games', season.id)}>Games of this season</Go>],
              ['Contracts', <Go key="contracts" to={listOf('contracts', season.id)}>Contracts of this season</Go>],
              ['Rate card', <Go key="card" to={`/rate-card-lines?seasonId=${season.id}`}>Prices of this season</Go>],
            ]}
          />
        </Section>
        <SeasonPlanSection seasonId={season.id} />
      </>
    )}
  </ShowPage>
);
