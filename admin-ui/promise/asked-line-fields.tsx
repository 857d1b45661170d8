import { Box } from '@mui/material';
import { ArrayInput, SelectArrayInput, SimpleFormIterator, useWrappedSource } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { AddRow } from '../forms/add-row.tsx';
import { FormGrid, FormPart } from '../forms/form-grid.tsx';
import { RemoveRow } from '../forms/remove-row.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { CountInput } from '../inputs/count-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import { COUNTINGS, LEVELS, PRIORITIES, SEPARATIONS, WINDOW_WORDS } from '../words/choices.ts';

const READS: Record<string, string> = { perGame: 'Reads in each game', perNight: 'Reads on each night' };
const WINDOWS = Object.entries(WINDOW_WORDS).map(([id, name]) => ({ id, name }));

function BlackoutDays() {
  return (
    <ArrayInput source="blackout" label="Days on which nothing is read" helperText={false}>
      <SimpleFormIterator addButton={<AddRow label="Add a day" />} removeButton={<RemoveRow label="Take out this day" />} disableReordering disableClear fullWidth>
        <DayInput source="day" label="Day" required />
      </SimpleFormIterator>
    </ArrayInput>
  );
}

function Finer() {
  const seasonId = useWatch({ name: 'seasonId' }) as string | undefined;
  return (
    <Box component="details" sx={{ width: '100%', '& summary': { cursor: 'pointer', minHeight: 44, display: 'list-item', py: 1.25, fontWeight: 600 } }}>
      <summary>Which games and windows, how often in one</summary>
      <FormGrid>
        <DayInput source="startsOn" label="Not before" />
        <DayInput source="endsOn" label="Not after" />
        <PickInput source="teamIds" reference="teams" label="Only games of these teams" shows="label" many {...(seasonId ? { filter: { seasonId, isOurs: true } } : {})} helperText="Empty for all" />
        <SelectArrayInput source="levels" label="Only these levels" choices={LEVELS} helperText="Empty for all" />
        <SelectArrayInput source="windowKinds" label="Only in these windows" choices={WINDOWS} helperText="Empty for all of the read kind" />
        <ChoiceInput source="separation" label="Kept apart from its competitors" choices={SEPARATIONS} defaultValue="window" required />
        <CountInput source="leastPerGame" label="At least in one game" max={99} />
        <CountInput source="mostPerGame" label="At most in one game" min={1} max={99} />
        <ChoiceInput source="priority" label="When places are short" choices={PRIORITIES} defaultValue={2} required />
      </FormGrid>
      <BlackoutDays />
    </Box>
  );
}

function AskedLine() {
  const counting = useWatch({ name: useWrappedSource('counting') }) as string | undefined;
  return (
    <Box sx={{ width: '100%' }}>
      <FormGrid>
        <PickInput source="readKindId" reference="read-kinds" label="Read kind" required />
        <ChoiceInput source="counting" label="Counted" choices={COUNTINGS} defaultValue="perTerm" required />
        {counting !== 'onOccurrence' && <CountInput source="reads" label={READS[counting ?? ''] ?? 'Reads in all'} min={1} max={100_000} required />}
      </FormGrid>
      <Finer />
    </Box>
  );
}

/** The reads that are asked about, line by line. */
export function AskedLinesFields() {
  return (
    <FormPart title="Reads">
      <ArrayInput source="lines" label={false} helperText={false}>
        <SimpleFormIterator addButton={<AddRow label="Add a line of reads" />} removeButton={<RemoveRow label="Take out these reads" />} disableReordering disableClear fullWidth sx={{ '& .RaSimpleFormIterator-line': { py: 2, display: 'block' } }}>
          <AskedLine />
        </SimpleFormIterator>
      </ArrayInput>
    </FormPart>
  );
}
