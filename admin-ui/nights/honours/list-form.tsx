import { only } from '../../api/changes.ts';
import { CommandButton } from '../../forms/command-button.tsx';
import { FormGrid } from '../../forms/form-grid.tsx';
import { ChoiceInput } from '../../inputs/choice-input.tsx';
import { CountInput } from '../../inputs/count-input.tsx';
import { WordsInput } from '../../inputs/words-input.tsx';
import type { HonoursList } from './types.ts';

export const WINDOW_WORDS: Record<HonoursList['windowKind'], string> = { pregame: 'Before the game', halftime: 'At halftime', postgame: 'After the game' };
const KINDS = [{ id: 'seniors', name: 'Seniors, with their families' }, { id: 'honours', name: 'Honors' }];
const WINDOWS = Object.entries(WINDOW_WORDS).map(([id, name]) => ({ id, name }));

/** Makes a list, or changes what is said of it. */
export function ListButton({ nightId, list }: { nightId: string; list?: HonoursList }) {
  return (
    <CommandButton
      label={list ? 'Change the list' : 'Add a list'}
      title={list ? `Change ${list.title}` : 'Add a list of students'}
      explains="Students are read one after the other, each with as many seconds. The opening comes from the script library unless you write one here."
      path={list ? `/honours-lists/${list.id}` : `/nights/${nightId}/honours-lists`}
      method={list ? 'PATCH' : 'POST'}
      {...(list ? { version: list.version } : {})}
      defaults={list ? { ...list } : { title: 'Senior night', kind: 'seniors', windowKind: 'pregame', secondsEach: 20 }}
      body={(values) => ({ ...only(values, 'title', 'kind', 'windowKind', 'secondsEach'), openingText: values.openingText || null })}
      success={list ? 'The list is changed.' : 'The list is made. Add its students from a file.'}
      variant={list ? 'outlined' : 'contained'}
    >
      <WordsInput source="title" label="Title" longest={120} required />
      <FormGrid>
        <ChoiceInput source="kind" label="Who" choices={KINDS} required />
        <ChoiceInput source="windowKind" label="When" choices={WINDOWS} required />
        <CountInput source="secondsEach" label="Seconds each" min={5} max={300} required />
      </FormGrid>
      <WordsInput source="openingText" label="Opening of its own" longest={2000} lines={3} />
    </CommandButton>
  );
}
