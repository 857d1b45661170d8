import { useGetOne } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { FormGrid, FormPart } from '../forms/form-grid.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { FlagInput } from '../inputs/flag-input.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import type { Venue } from '../venues/types.ts';
import { CLASSES, LEVELS, OWNERS } from '../words/choices.ts';
import { StartFields } from './start-fields.tsx';

function FloorField() {
  const venueId = useWatch({ name: 'venueId' }) as string | undefined;
  const { data } = useGetOne<Venue>('venues', { id: venueId ?? '' }, { enabled: Boolean(venueId) });
  const floors = data?.floors ?? [];
  return floors.length === 0 ? null : <ChoiceInput source="floorId" label="Floor" choices={floors} />;
}

export function GameFields() {
  const seasonId = useWatch({ name: 'seasonId' }) as string | undefined;
  const ofSeason = seasonId ? { seasonId } : {};
  const label = { field: 'name', order: 'ASC' } as const;
  return (
    <>
      <FormGrid>
        <PickInput source="seasonId" reference="seasons" label="Season" required />
        <DayInput source="playedOn" label="Day" required />
        <ChoiceInput source="level" label="Level" choices={LEVELS} defaultValue="varsity" required />
        <ChoiceInput source="class" label="Class" choices={CLASSES} defaultValue="regular" required helperText="The state series belongs to the association: our reads are not owed there." />
        <PickInput source="homeTeamId" reference="teams" label="Home team" shows="label" sort={label} filter={ofSeason} required />
        <PickInput source="visitorTeamIds" reference="teams" label="Visitors" shows="label" sort={label} filter={ofSeason} required many helperText="One team, or several at a meet" />
      </FormGrid>
      <StartFields />
      <FormPart title="Where" why="A home game joins the night of the same venue and day; without one, a night is made.">
        <FormGrid>
          <PickInput source="venueId" reference="venues" label="Venue" required />
          <FloorField />
          <PickInput source="hostSchoolId" reference="schools" label="Host school" helperText="Only where the host does not play" />
          <ChoiceInput source="windowsOwnedBy" label="Whose are the sponsor windows" choices={OWNERS} defaultValue="us" required />
        </FormGrid>
        <FlagInput source="announced" label="Read over the public-address system" defaultValue />
      </FormPart>
    </>
  );
}
