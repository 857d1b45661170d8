import { Go } from '../fields/go.tsx';
import { findFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { LANGUAGE_WORDS, wordFor } from '../words/choices.ts';
import { momentName } from './moments.ts';
import type { Script } from './types.ts';

export const ScriptList = () => (
  <ListPage<Script>
    title="Scripts"
    addLabel="Add a script"
    sort={{ field: 'moment', order: 'ASC' }}
    filters={[findFilter()]}
    empty="The library holds what is read every night: the welcome, the anthem, the line-ups, the words after the game. Packets are composed from it."
    columns={[
      { label: 'Script', sortBy: 'title', show: (script) => <Go resource="scripts" id={script.id}>{script.title}</Go> },
      { label: 'Moment', sortBy: 'moment', show: (script) => momentName(script.moment) },
      { label: 'Sport', show: (script) => (script.sport ? wordFor({}, script.sport) : 'Every sport') },
      { label: 'Language', show: (script) => wordFor(LANGUAGE_WORDS, script.language) },
      { label: 'In packets', show: (script) => (script.isOn ? 'Yes' : 'Left out') },
    ]}
  />
);
