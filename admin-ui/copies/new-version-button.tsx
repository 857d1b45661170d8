import { only } from '../api/changes.ts';
import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { LANGUAGES } from '../words/choices.ts';
import type { Copy } from './types.ts';

export const NewVersionButton = ({ copy }: { copy: Copy }) => (
  <CommandButton
    label="New version"
    title={`New version of ${copy.title}`}
    explains="The version before stays in use until this one is approved."
    path={`/copies/${copy.id}/versions`}
    defaults={{ language: 'en', text: copy.versions.at(-1)?.text ?? '' }}
    body={(values) => only(values, 'text', 'startsOn', 'endsOn', 'language')}
    success="The version is added and waits for approval."
    wide
  >
    <WordsInput source="text" label="Words to be read" longest={2000} lines={4} required />
    <FormGrid columns={3}>
      <ChoiceInput source="language" label="Language" choices={LANGUAGES} required />
      <DayInput source="startsOn" label="From" />
      <DayInput source="endsOn" label="To" />
    </FormGrid>
  </CommandButton>
);
