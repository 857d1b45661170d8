import { useWatch } from 'react-hook-form';
import { FormGrid, FormPart } from '../forms/form-grid.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { ClockInput } from '../inputs/clock-input.tsx';
import { CountInput } from '../inputs/count-input.tsx';
import { PickInput } from '../inputs/pick-input.tsx';

const STARTS = [
  { id: 'clock', name: 'At an hour' },
  { id: 'after', name: 'After another game' },
];

/** A start stands on the clock or floats behind another game of the day. */
export function StartFields() {
  const [how, playedOn] = useWatch({ name: ['starts', 'playedOn'] }) as [string | undefined, string | undefined];
  const ofDay = playedOn ? { from: playedOn, to: playedOn } : {};
  return (
    <FormPart title="When it starts">
      <FormGrid columns={3}>
        <ChoiceInput source="starts" label="It starts" choices={STARTS} defaultValue="clock" required />
        {how === 'after' ? (
          <PickInput source="startsAfterGameId" reference="games" label="Behind which game" shows="label" sort={{ field: 'startsAt', order: 'ASC' }} filter={ofDay} required />
        ) : (
          <ClockInput source="startsAtClock" label="Hour" />
        )}
        {how === 'after' && <CountInput source="startsAfterMinutes" label="Minutes after its end" max={600} defaultValue={20} />}
      </FormGrid>
    </FormPart>
  );
}
