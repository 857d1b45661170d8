import { useWatch } from 'react-hook-form';
import { PrayerCaution } from '../department/prayer-caution.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { CountInput } from '../inputs/count-input.tsx';
import { FlagInput } from '../inputs/flag-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { SPORTS } from '../seasons/sports.ts';
import { LANGUAGES } from '../words/choices.ts';
import { MOMENT_CHOICES } from './moments.ts';

export function ScriptFields() {
  const moment = useWatch({ name: 'moment' }) as string | undefined;
  return (
    <>
      <FormGrid>
        <WordsInput source="title" label="Title" longest={120} required />
        <ChoiceInput source="moment" label="Moment" choices={MOMENT_CHOICES} required />
        <ChoiceInput source="sport" label="Sport" choices={SPORTS} helperText="Empty for every sport" />
        <ChoiceInput source="language" label="Language" choices={LANGUAGES} defaultValue="en" required />
      </FormGrid>
      {moment === 'prayer' && <PrayerCaution />}
      <WordsInput source="text" label="Words" longest={5000} lines={6} required helperText="What is said. Directions stand in double brackets: [[pause 3]], [[wait for applause]]. An empty line begins a new paragraph." />
      <FormGrid>
        <CountInput source="place" label="Order within the moment" min={1} max={99} defaultValue={1} required />
        <FlagInput source="isOn" label="Goes into packets" defaultValue />
      </FormGrid>
    </>
  );
}
