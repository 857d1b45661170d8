import { NumberInput, useRecordContext } from 'react-admin';
import { dayText } from '../format/day.ts';
import { FormGrid } from '../forms/form-grid.tsx';
import { EditPage } from '../forms/record-form.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { ClockInput } from '../inputs/clock-input.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { ANTHEM_FORMS, FLAG_FORMS } from '../words/choices.ts';
import type { Night } from './types.ts';

function Fields() {
  const night = useRecordContext<Night>();
  if (!night) return null;
  return (
    <>
      <WordsInput source="title" label="Title" longest={120} helperText="Leave it, or name a special night: Senior Night" />
      <FormGrid>
        <PickInput source="venueId" reference="venues" label="Venue" required />
        <ClockInput source="doorsAt" label="Doors open" onDay={night.heldOn} />
      </FormGrid>
      <FormGrid>
        <ChoiceInput source="anthemForm" label="The anthem tonight" choices={ANTHEM_FORMS} helperText="Leave it for what the department usually does" />
        <ChoiceInput source="flagForm" label="The flag tonight" choices={FLAG_FORMS} helperText="Leave it for what the department usually does" />
        <NumberInput
          source="halftimeSeconds"
          label="Minutes of halftime"
          min={1}
          max={60}
          step={0.5}
          format={(seconds: unknown) => (typeof seconds === 'number' ? seconds / 60 : '')}
          parse={(minutes: string) => (minutes === '' ? null : Math.round(Number(minutes) * 60))}
          helperText="Only where it is not the usual length"
        />
      </FormGrid>
      <WordsInput source="note" label="Note for the table" longest={1000} lines={3} />
    </>
  );
}

export const NightEdit = () => (
  <EditPage title={(night: Night) => `Change the night of ${dayText(night.heldOn, 'weekday')}`} expand={(night: Night) => ({ ...night, title: night.ownTitle })}>
    <Fields />
  </EditPage>
);
