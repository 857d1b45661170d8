import { Box, Typography } from '@mui/material';
import { Go } from '../fields/go.tsx';
import { instantText } from '../format/instant.ts';
import { Rows } from '../lists/rows.tsx';
import { iMay } from '../session/rights.ts';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { wordFor } from '../words/choices.ts';
import { BouncedButton } from './bounced-button.tsx';
import { AttachmentLink } from './attachment-link.tsx';
import { LetterState } from './state.tsx';
import type { Letter, LetterEvent } from './types.ts';
import { ABOUT_PAGES, LETTER_EVENT_WORDS, LETTER_KIND_WORDS } from './words.ts';

function Actions({ letter }: { letter: Letter }) {
  return (
    <>
      {(letter.attachments ?? []).length > 0 && <AttachmentLink letter={letter} />}
      {letter.state === 'sent' && iMay('messages', 'edit') && <BouncedButton letter={letter} />}
    </>
  );
}

function Became({ letter }: { letter: Letter }) {
  return (
    <Section
      title="What became of it"
      lead="“Handed over” is the mail server’s yes. Mail that comes back later goes to the mailbox of the office, which is not read here: press “It came back” and say why."
    >
      {(letter.events ?? []).length === 0 ? (
        <Typography>It waits for its turn, usually a few seconds.</Typography>
      ) : (
        <Rows<LetterEvent>
          label="What became of the letter"
          rows={letter.events ?? []}
          columns={[
            { label: 'What', show: (event) => wordFor(LETTER_EVENT_WORDS, event.kind) },
            { label: 'When', show: (event) => instantText(event.recordedAt) },
            { label: 'Said', show: (event) => <Box component="span" sx={{ overflowWrap: 'anywhere' }}>{event.detail ?? '–'}</Box> },
          ]}
          keyOf={(event) => event.id}
        />
      )}
    </Section>
  );
}

export const LetterShow = () => (
  <ShowPage<Letter> title={(letter) => letter.subject} canEdit={false} actions={(letter) => <Actions letter={letter} />}>
    {(letter) => (
      <>
        <Section title="Letter">
          <Facts
            facts={[
              ['State', <LetterState key="state" state={letter.state} />],
              ['Kind', wordFor(LETTER_KIND_WORDS, letter.kind)],
              ['To', letter.toAddress],
              ['From', letter.fromName],
              ['Answers go to', letter.replyTo],
              ['About', <Go key="about" resource={ABOUT_PAGES[letter.kind]!.resource} id={letter.aboutId}>{ABOUT_PAGES[letter.kind]!.label}</Go>],
              ['Sponsor', letter.sponsorId && <Go key="sponsor" resource="sponsors" id={letter.sponsorId}>{letter.sponsorName}</Go>],
              ['Written', `${instantText(letter.recordedAt)} by ${letter.writtenByName ?? 'the schedule'}`],
              ['Once more because', letter.againBecause],
              ['Attached', (letter.attachments ?? []).join(', ')],
            ]}
          />
          <Box sx={{ whiteSpace: 'pre-wrap', overflowWrap: 'anywhere', mt: 2, pt: 2, borderTop: 1, borderColor: 'divider', maxWidth: '72ch' }}>{letter.body}</Box>
        </Section>
        <Became letter={letter} />
      </>
    )}
  </ShowPage>
);
