import { useWatch } from 'react-hook-form';
import { FormGrid } from '../forms/form-grid.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { LANGUAGES } from '../words/choices.ts';
import { LiveCheck } from './live-check.tsx';

/** The words of a version in one language or two, and the days on which they are read. */
export function WordsFields({ sponsorId }: { sponsorId?: string }) {
  const language = useWatch({ name: 'language' }) as string | undefined;
  const second = language === 'es' ? 'English' : 'Spanish';
  return (
    <>
      <WordsInput source="text" label="Words to be read" longest={2000} lines={4} required />
      <WordsInput source="secondText" label={`The same in ${second}`} longest={2000} lines={2} helperText="Read after the first; both together are one read. Leave empty for one language." />
      <LiveCheck {...(sponsorId ? { sponsorId } : {})} />
      <FormGrid columns={3}>
        <ChoiceInput source="language" label="Language" choices={LANGUAGES} defaultValue="en" required />
        <DayInput source="startsOn" label="From" />
        <DayInput source="endsOn" label="To" />
      </FormGrid>
    </>
  );
}
