import { Go } from '../fields/go.tsx';
import { instantText } from '../format/instant.ts';
import { choiceFilter, findFilter, pickFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { wordFor } from '../words/choices.ts';
import { RemindersToday } from './reminders-today.tsx';
import { LetterState } from './state.tsx';
import type { MessageView } from './types.ts';
import { LETTER_KINDS, LETTER_KIND_WORDS, LETTER_STATES } from './words.ts';

export const LetterList = () => (
  <ListPage<MessageView>
    title="Letters"
    lead={<RemindersToday />}
    sort={{ field: 'recordedAt', order: 'DESC' }}
    filters={[findFilter(), choiceFilter('kind', 'Kind', LETTER_KINDS), choiceFilter('state', 'State', LETTER_STATES), pickFilter('sponsorId', 'sponsors', 'Sponsor')]}
    empty="No letter yet. Open an invoice and press “Send…”: it shows the letter before anything leaves."
    columns={[
      { label: 'Letter', sortBy: 'subject', show: (letter) => <Go resource="messages" id={letter.id}>{letter.subject}</Go> },
      { label: 'Kind', show: (letter) => wordFor(LETTER_KIND_WORDS, letter.kind) },
      { label: 'To', sortBy: 'toAddress', show: (letter) => letter.toAddress },
      { label: 'Written', sortBy: 'recordedAt', show: (letter) => instantText(letter.recordedAt) },
      { label: 'By', show: (letter) => letter.writtenByName ?? 'The schedule' },
      { label: 'State', sortBy: 'state', show: (letter) => <LetterState state={letter.state} /> },
    ]}
  />
);
