import { Go } from '../fields/go.tsx';
import { findFilter, pickFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { LEVEL_WORDS, wordFor } from '../words/choices.ts';
import { count } from '../words/count.ts';
import type { Team } from './types.ts';

export const TeamList = () => (
  <ListPage<Team>
    title="Teams"
    addLabel="Add a team"
    sort={{ field: 'name', order: 'ASC' }}
    filters={[findFilter(), pickFilter('seasonId', 'seasons', 'Season'), pickFilter('schoolId', 'schools', 'School')]}
    empty="A team belongs to a school and a season and has a roster. Add yours and the opponents’, or import rosters from a file."
    columns={[
      { label: 'Team', sortBy: 'name', show: (team) => <Go resource="teams" id={team.id}>{team.label}</Go> },
      { label: 'School', show: (team) => team.schoolName },
      { label: 'Level', sortBy: 'level', show: (team) => wordFor(LEVEL_WORDS, team.level) },
      { label: 'Season', show: (team) => team.seasonName },
      { label: 'Roster', show: (team) => count(team.rosterSize, 'player') },
    ]}
  />
);
