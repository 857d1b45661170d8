import { CheckboxGroupInput, required } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { FormGrid } from '../forms/form-grid.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { CountInput } from '../inputs/count-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { HAPPENINGS } from '../seasons/sports.ts';
import { TIMINGS, WINDOW_WORDS } from '../words/choices.ts';

const WINDOWS = Object.entries(WINDOW_WORDS).map(([id, name]) => ({ id, name }));

export function ReadKindFields() {
  const [timing, windows] = useWatch({ name: ['timing', 'windows'] }) as [string | undefined, string[] | undefined];
  return (
    <>
      <FormGrid>
        <WordsInput source="name" label="Name" longest={80} required helperText="Game ball, Bank-shot mention, Concession read" />
        <ChoiceInput source="timing" label="Read when" choices={TIMINGS} defaultValue="scheduled" required />
        <CountInput source="defaultSeconds" label="Seconds it takes" min={1} max={600} defaultValue={15} required />
        <CountInput source="sponsorsPerGame" label="Sponsors one game can hold" min={1} max={99} defaultValue={1} required />
        {timing !== 'onOccurrence' && <WordsInput source="placeGroup" label="Shares places with" longest={60} helperText="The name of a group, such as long reads; leave empty where the window’s places are for all" />}
        {timing === 'onOccurrence' && <ChoiceInput source="occurrence" label="What has to happen" choices={HAPPENINGS} defaultValue="bankShot" required />}
        {windows?.includes('pregame') && <WordsInput source="presents" label="What is presented before the game" longest={60} helperText="Game ball; leave empty for a plain read" />}
      </FormGrid>
      <CheckboxGroupInput source="windows" label="Windows it may be read in" choices={WINDOWS} validate={[required('Choose at least one window.')]} helperText={false} />
    </>
  );
}
