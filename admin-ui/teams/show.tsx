import { Button } from '@mui/material';
import { useState } from 'react';
import { Go } from '../fields/go.tsx';
import { Name } from '../fields/name.tsx';
import { iMay } from '../session/rights.ts';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { LEVEL_WORDS, wordFor } from '../words/choices.ts';
import { Roster } from './roster.tsx';
import { RosterForm } from './roster-form.tsx';
import { RosterCaution } from './roster-caution.tsx';
import { RosterWarnings } from './roster-warnings.tsx';
import type { Team } from './types.ts';

function RosterSheet({ team }: { team: Team }) {
  const [editing, setEditing] = useState(false);
  const may = iMay('teams', 'edit');
  return (
    <Section title="Roster" actions={may && !editing && <Button variant="contained" onClick={() => setEditing(true)}>Edit the roster</Button>}>
      <RosterCaution />
      {!editing && <RosterWarnings warnings={team.warnings ?? []} />}
      {editing ? <RosterForm team={team} onDone={() => setEditing(false)} /> : <Roster team={team} />}
    </Section>
  );
}

export const TeamShow = () => (
  <ShowPage<Team> title={(team) => team.label}>
    {(team) => (
      <>
        <Section title="Team">
          <Facts
            facts={[
              ['School', <Go key="school" resource="schools" id={team.schoolId}>{team.schoolName}</Go>],
              ['Season', <Go key="season" resource="seasons" id={team.seasonId}>{team.seasonName}</Go>],
              ['Level', wordFor(LEVEL_WORDS, team.level)],
              ['Head coach', team.headCoach ? <Name key="coach" name={team.headCoach} sayAs={team.headCoachSayAs} /> : 'Not named yet'],
            ]}
          />
        </Section>
        <RosterSheet team={team} />
      </>
    )}
  </ShowPage>
);
