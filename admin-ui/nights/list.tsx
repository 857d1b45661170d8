import { DateInput } from 'react-admin';
import { Go } from '../fields/go.tsx';
import { Whole } from '../fields/whole.tsx';
import { dayText, today } from '../format/day.ts';
import { choiceFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { iMay } from '../session/rights.ts';
import { NIGHT_STATES } from '../words/choices.ts';
import { count } from '../words/count.ts';
import { gameUnder } from './game-words.ts';
import { PacketState } from './packet-state.tsx';
import { OpenDeskButton } from './table/open-desk-button.tsx';
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
      { label: 'Day', sortBy: 'heldOn', show: (night) => <Whole>{dayText(night.heldOn, 'weekday')}</Whole> },
      { label: 'Venue', show: (night) => [night.venueName, night.floorName].filter(Boolean).join(', ') },
      { label: 'Games', show: (night) => night.games.length === 0 ? 'None' : night.games.map((game) => <div key={game.id}>{gameUnder(night, game)}</div>) },
      { label: 'Planned', show: (night) => <Whole>{count(night.placementCount, 'read')}</Whole> },
      { label: 'Packet', show: (night) => <PacketState night={night} /> },
    ...(iMay('log', 'show') ? [{ label: 'Table', show: (night: Night) => night.state === 'open' && <OpenDeskButton nightId={night.id} title={night.title} variant="outlined" size="small" /> }] : []),
    ]}
  />
);
