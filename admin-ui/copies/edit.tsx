import { EditPage } from '../forms/record-form.tsx';
import { FlagInput } from '../inputs/flag-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { ROTATES } from './rotates.ts';
import type { Copy } from './types.ts';

export const CopyEdit = () => (
  <EditPage title={(copy: Copy) => `Change ${copy.title}`}>
    <WordsInput source="title" label="Title" longest={120} required />
    <WordsInput source="fallbackText" label="Neutral line" longest={500} lines={2} required helperText="The words themselves are never changed: add a new version." />
    <FlagInput source="rotates" {...ROTATES} />
  </EditPage>
);
