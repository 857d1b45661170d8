import { Typography } from '@mui/material';
import { Title, useGetList } from 'react-admin';
import { useServer } from '../api/use-server.ts';
import { Go } from '../fields/go.tsx';
import { today } from '../format/day.ts';
import { kindOfWindow } from '../../server/domain/season/window-names.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import type { ReadKind } from '../read-kinds/types.ts';
import { profileOn } from '../seasons/sports.ts';
import type { Season } from '../seasons/types.ts';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import { wordFor } from '../words/choices.ts';
import { SportTable } from './sport-table.tsx';
import type { WindowPlaces } from './types.ts';

/** Groups of read kinds that share places, each with the kinds of windows it is read in. */
function groupsOf(kinds: readonly ReadKind[]): Map<string, string[]> {
  const groups = new Map<string, string[]>();
  for (const { placeGroup, windows } of kinds) {
    if (placeGroup) groups.set(placeGroup, [...(groups.get(placeGroup) ?? []), ...windows.map(kindOfWindow)]);
  }
  return groups;
}

/** How many reads a window holds, by the sports of the department's seasons. */
export function WindowPlacesPage() {
  const asked = useServer<{ data: WindowPlaces[] }>('/window-places?perPage=100');
  const { data: seasons = [], isPending } = useGetList<Season>('seasons', { pagination: { page: 1, perPage: 100 }, sort: { field: 'startsOn', order: 'DESC' } });
  const { data: kinds = [] } = useGetList<ReadKind>('read-kinds', { pagination: { page: 1, perPage: 100 }, sort: { field: 'name', order: 'ASC' } });
  const sports = [...new Set(seasons.map((season) => season.sport))];
  return (
    <>
      <Title title="Places in windows" />
      <Typography sx={{ maxWidth: '70ch', mb: 2 }}>
        How many sponsor reads fit into each window of a game. The sport’s profile gives a start; say otherwise where your crowd bears more or fewer. Read kinds that share places with each other are named as a group on the <Go to="/read-kinds">read kind</Go>, and may have fewer places than the window. How many time-outs are relied on is said under <Go to="/department">Department</Go>.
      </Typography>
      <Reading of={asked}>
        {({ data }) =>
          isPending ? null : sports.length === 0 ? (
            <EmptyList>There is no season yet. Add one, and its windows stand here.</EmptyList>
          ) : (
            <>
              {sports.map((sport) => {
                const profile = profileOn(sport, today());
                return profile && (
                  <Section key={sport} title={wordFor({}, sport)}>
                    <SportTable profile={profile} places={data.filter((one) => one.sport === sport)} groups={groupsOf(kinds)} />
                  </Section>
                );
              })}
            </>
          )
        }
      </Reading>
    </>
  );
}
