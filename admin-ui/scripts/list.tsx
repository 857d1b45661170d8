import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { dayText } from '../format/day.ts';
import { findFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { LANGUAGE_WORDS, wordFor } from '../words/choices.ts';
import { momentName } from './moments.ts';
import type { Script } from './types.ts';

const languages = ({ language, secondLanguage }: Script): string => [language, secondLanguage].filter(Boolean).map((one) => wordFor(LANGUAGE_WORDS, one)).join(', ');

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
      { label: 'Language', show: languages },
      { label: 'Approved', show: (script) => (script.approvedOn ? dayText(script.approvedOn) : '–') },
      { label: 'In packets', show: (script) => (script.isLocked ? <Tag mood="plain">The district’s own</Tag> : script.isOn ? 'Yes' : 'Left out') },
    ]}
  />
);
