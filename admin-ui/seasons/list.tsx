import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { ListPage } from '../lists/list-page.tsx';
import { wordFor } from '../words/choices.ts';
import type { Season } from './types.ts';

export const SeasonList = () => (
  <ListPage<Season>
    title="Seasons"
    addLabel="Add a season"
    sort={{ field: 'startsOn', order: 'DESC' }}
    empty="A season is one sport from its first day to its last. Teams, games and contracts belong to one, so add the season first."
    columns={[
      { label: 'Season', sortBy: 'name', show: (season) => <Go resource="seasons" id={season.id}>{season.name}</Go> },
      { label: 'Sport', show: (season) => wordFor({}, season.sport) },
      { label: 'First day', sortBy: 'startsOn', show: (season) => dayText(season.startsOn) },
      { label: 'Last day', sortBy: 'endsOn', show: (season) => dayText(season.endsOn) },
    ]}
  />
);
