import { useGetList } from 'react-admin';
import { Go } from '../fields/go.tsx';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import { count } from '../words/count.ts';
import type { Team } from './types.ts';

export function TeamsOfSchool({ schoolId }: { schoolId: string }) {
  const { data = [], isPending } = useGetList<Team>('teams', { filter: { schoolId }, pagination: { page: 1, perPage: 100 }, sort: { field: 'name', order: 'ASC' } });
  if (isPending) return null;
  return (
    <Section title="Teams">
      {data.length === 0 ? (
        <EmptyList>No team of this school yet. Add one under Teams, or import a roster.</EmptyList>
      ) : (
        <Rows<Team>
          label="Teams of this school"
          rows={data}
          columns={[
            { label: 'Team', show: (team) => <Go resource="teams" id={team.id}>{team.label}</Go> },
            { label: 'Season', show: (team) => team.seasonName },
            { label: 'Roster', show: (team) => count(team.rosterSize, 'player') },
          ]}
        />
      )}
    </Section>
  );
}
