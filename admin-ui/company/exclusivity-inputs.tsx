import { Alert, Box } from '@mui/material';
import { ArrayInput, SelectArrayInput, SimpleFormIterator, required, useWrappedSource } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { AddRow } from '../forms/add-row.tsx';
import { FormGrid, FormPart } from '../forms/form-grid.tsx';
import { RemoveRow } from '../forms/remove-row.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { GamePick } from '../inputs/game-pick.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import { REACHES, WINDOWS } from '../words/choices.ts';

/** The days of the deal: a contract has them in its term, an offer has them itself. */
function useDeal(): { seasonId: string | undefined; startsOn: string | undefined; endsOn: string | undefined } {
  const [ofTerm, season, termStarts, starts, termEnds, ends] = useWatch({ name: ['term.seasonId', 'seasonId', 'term.startsOn', 'startsOn', 'term.endsOn', 'endsOn'] }) as (string | undefined)[];
  return { seasonId: ofTerm ?? season, startsOn: termStarts ?? starts, endsOn: termEnds ?? ends };
}

function OneRight() {
  const reach = useWatch({ name: useWrappedSource('reach') }) as string | undefined;
  const { seasonId, startsOn, endsOn } = useDeal();
  return (
    <Box sx={{ width: '100%' }}>
      <FormGrid columns={3}>
        <PickInput source="categoryId" reference="sponsor-categories" label="Category" required />
        <ChoiceInput source="reach" label="Where" choices={REACHES} defaultValue="season" required />
        <PickInput source="schoolId" reference="schools" label="At which school" filter={{ isOurs: true }} helperText="Empty for all" />
        <DayInput source="startsOn" label="First day" required {...(startsOn ? { defaultValue: startsOn } : {})} />
        <DayInput source="endsOn" label="Last day" required {...(endsOn ? { defaultValue: endsOn } : {})} />
        {reach === 'window' && <SelectArrayInput source="windowKinds" label="In these windows" choices={WINDOWS} validate={[required()]} helperText={false} />}
        {reach === 'game' && <GamePick source="gameIds" label="In these games" seasonId={seasonId} required />}
      </FormGrid>
    </Box>
  );
}

/** The rights to be the only sponsor of a category, in the form of a contract or an offer. */
export function ExclusivityInputs() {
  const rights = useWatch({ name: 'exclusivities' }) as unknown[] | undefined;
  return (
    <FormPart title="Only sponsor of its kind" why="Others of the category are refused while this holds; over windows or named games the planner keeps them out. Leave it empty where nothing is exclusive.">
      {rights && rights.length > 0 && (
        <Alert severity="info" icon={false} sx={{ width: '100%', mb: 1 }}>
          To be the only sponsor of a category is fine. To be the only one whose products are sold or used at the school (an exclusive provider) is a benefit worth money to the sponsor: put its value among the other benefits and ask your tax adviser (26 CFR 1.513-4(c)(2)(vi)).
        </Alert>
      )}
      <ArrayInput source="exclusivities" label={false} helperText={false}>
        <SimpleFormIterator addButton={<AddRow label="Add an exclusive right" />} removeButton={<RemoveRow label="Take out this right" />} disableReordering disableClear fullWidth sx={{ '& .RaSimpleFormIterator-line': { py: 2 } }}>
          <OneRight />
        </SimpleFormIterator>
      </ArrayInput>
    </FormPart>
  );
}
