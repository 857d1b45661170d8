import { Box } from '@mui/material';
import { Go } from '../../fields/go.tsx';
import { instantText } from '../../format/instant.ts';
import { Facts } from '../../show/facts.tsx';
import { Section } from '../../show/section.tsx';
import type { NightTidy } from '../types.ts';

const agreement = (agrees: boolean | null, words: string | null): string =>
  agrees === null ? 'Not said' : agrees ? 'The sheet and the book agree' : `They differ${words ? `: ${words}` : ''}`;

/** Who signed off, what the evening knew, the book period by period and the notes of the log. */
export function EveningKnew({ tidy: { signOff, book, notes } }: { tidy: NightTidy }) {
  if (!signOff && book.length === 0 && notes.length === 0) return null;
  return (
    <Section title="What the evening knew">
      {signOff && (
        <Facts
          facts={[
            ['Signed off', `${instantText(signOff.at)}${signOff.byName ? ` by ${signOff.byName}` : ''}`],
            ['The book', agreement(signOff.bookAgrees, signOff.bookWords)],
            ['Note', signOff.note],
          ]}
        />
      )}
      {[...book, ...notes].map((one) => <Box key={one.entryId} sx={{ py: 0.75, borderTop: 1, borderColor: 'divider' }}>{one.sentence}</Box>)}
    </Section>
  );
}

/** Reads this night still owes, to be made good or credited with the sponsor's yes; nothing is booked for them here. */
export function Shortfalls({ shortfalls }: Pick<NightTidy, 'shortfalls'>) {
  if (shortfalls.length === 0) return null;
  return (
    <Section title="Proposed shortfalls" lead="What this night was to give and did not. Nothing is booked for it: the reads are owed as before. Place them anew, or agree on something else with the sponsor.">
      {shortfalls.map((one) => (
        <Box key={one.commitmentId} sx={{ py: 1, borderTop: 1, borderColor: 'divider' }}>
          {one.sentence} <Go resource="contracts" id={one.contractId}>The contract of {one.sponsorName}</Go>
        </Box>
      ))}
    </Section>
  );
}

/** What was changed after sign-off, the last first. */
export function AmendmentList({ amendments }: Pick<NightTidy, 'amendments'>) {
  if (amendments.length === 0) return null;
  return (
    <Section title="Amendments" lead="Changed after sign-off, each with its reason.">
      {amendments.map((one) => (
        <Box key={one.id} sx={{ py: 1, borderTop: 1, borderColor: 'divider' }}>
          <strong>{one.reason}</strong>
          <Box>{one.sentence}</Box>
          <Box sx={{ color: 'text.secondary' }}>{[one.byName, instantText(one.at)].filter(Boolean).join(' · ')}</Box>
        </Box>
      ))}
    </Section>
  );
}
