import { useRecordContext } from 'react-admin';
import { dayText } from '../format/day.ts';
import { FormGrid } from '../forms/form-grid.tsx';
import { EditPage } from '../forms/record-form.tsx';
import { ClockInput } from '../inputs/clock-input.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
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
      <WordsInput source="note" label="Note for the table" longest={1000} lines={3} />
    </>
  );
}

export const NightEdit = () => (
  <EditPage title={(night: Night) => `Change the night of ${dayText(night.heldOn, 'weekday')}`} expand={(night: Night) => ({ ...night, title: night.ownTitle })}>
    <Fields />
  </EditPage>
);
