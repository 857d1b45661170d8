import { Go } from '../fields/go.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { windowName } from '../seasons/sports.ts';
import { TIMING_WORDS, wordFor } from '../words/choices.ts';
import { count } from '../words/count.ts';
import type { ReadKind } from './types.ts';

export const ReadKindList = () => (
  <ListPage<ReadKind>
    title="Read kinds"
    addLabel="Add a read kind"
    sort={{ field: 'name', order: 'ASC' }}
    empty="A read kind is something you can sell to be read: a game ball before tip-off, a mention when a bank shot drops, a concession read at the half. Add the ones you sell, then give them prices on the rate card."
    columns={[
      { label: 'Read kind', sortBy: 'name', show: (kind) => <Go resource="read-kinds" id={kind.id}>{kind.name}</Go> },
      { label: 'Read', show: (kind) => wordFor(TIMING_WORDS, kind.timing) },
      { label: 'Windows', show: (kind) => kind.windows.map(windowName).join(', ') },
      { label: 'Length', show: (kind) => count(kind.defaultSeconds, 'second') },
      { label: 'In one game', show: (kind) => count(kind.sponsorsPerGame, 'sponsor') },
    ]}
  />
);
