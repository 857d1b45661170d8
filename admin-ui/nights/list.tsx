import { DateInput } from 'react-admin';
import { Go } from '../fields/go.tsx';
import { dayText, today } from '../format/day.ts';
import { choiceFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { NIGHT_STATES } from '../words/choices.ts';
import { count } from '../words/count.ts';
import { PacketState } from './packet-state.tsx';
import type { Night } from './types.ts';

export const NightList = () => (
  <ListPage<Night>
    title="Nights"
    sort={{ field: 'heldOn', order: 'ASC' }}
    filters={[<DateInput key="from" source="from" label="From" size="medium" margin="dense" alwaysOn helperText={false} />, choiceFilter('state', 'State', NIGHT_STATES)]}
    filterDefaults={{ from: today() }}
    empty="A night is one program at one venue on one day. It is made by itself when you add or import a home game."
    columns={[
      { label: 'Night', show: (night) => <Go resource="nights" id={night.id}>{night.title}</Go> },
      { label: 'Day', sortBy: 'heldOn', show: (night) => dayText(night.heldOn, 'weekday') },
      { label: 'Venue', show: (night) => [night.venueName, night.floorName].filter(Boolean).join(', ') },
      { label: 'Games', show: (night) => night.games.map((game) => `${game.label}, ${game.startsAtShown}`).join('; ') || 'None' },
      { label: 'Planned', show: (night) => count(night.placementCount, 'read') },
      { label: 'Packet', show: (night) => <PacketState night={night} /> },
    ]}
  />
);
