import { Box } from '@mui/material';
import { FormDataConsumer } from 'react-admin';
import { useServer } from '../../api/use-server.ts';
import { CommandButton } from '../../forms/command-button.tsx';
import { instantText } from '../../format/instant.ts';
import { ChoiceInput } from '../../inputs/choice-input.tsx';
import { CountInput } from '../../inputs/count-input.tsx';
import { EmptyList } from '../../lists/empty-list.tsx';
import { iMay } from '../../session/rights.ts';
import { Reading } from '../../show/reading.tsx';
import { Section } from '../../show/section.tsx';
import { ATTENDANCE_HOW_WORDS, wordFor } from '../../words/choices.ts';
import { numberText } from '../../words/count.ts';
import type { Night, NightAttendance } from '../types.ts';

type Known = Pick<NightAttendance, 'attendance' | 'how'>;

const KNOWN_FROM = ['tickets', 'counted', 'estimated'].map((id) => ({ id, name: wordFor(ATTENDANCE_HOW_WORDS, id) }));
const NOBODY = { id: 'nobody', name: 'Nobody knows' };

const inWords = ({ attendance, how }: Known): string =>
  attendance === null ? 'Not known' : `${numberText(attendance)}${how ? `, ${wordFor(ATTENDANCE_HOW_WORDS, how).toLowerCase()}` : ''}`;

function RecordButton({ night, known, onDone }: { night: Night; known: Known; onDone: () => void }) {
  return (
    <CommandButton
      label={known.attendance === null ? 'Record how many came' : 'Correct how many came'}
      title={`How many came to ${night.title}?`}
      explains="The number stands in statements to sponsors from now on. What was recorded before stays in the list."
      path={`/nights/${night.id}/attendance`}
      defaults={{ how: known.how === 'signOff' ? null : (known.how ?? null), attendance: known.attendance }}
      body={({ how, attendance }) => (how === NOBODY.id ? { attendance: null } : { attendance, how })}
      success="Recorded."
      confirmLabel="Record"
      onDone={onDone}
    >
      <ChoiceInput source="how" label="How that is known" choices={known.attendance === null ? KNOWN_FROM : [...KNOWN_FROM, NOBODY]} required />
      <FormDataConsumer>{({ formData }) => formData.how !== NOBODY.id && <CountInput source="attendance" label="People who came" max={200_000} required />}</FormDataConsumer>
    </CommandButton>
  );
}

/** How many came, once the night is signed off: what was said then, and what the director recorded since. */
export function Attendance({ night }: { night: Night }) {
  const found = useServer<NightAttendance>(`/nights/${night.id}/attendance`);
  return (
    <Reading of={found}>
      {(known) => (
        <Section title="How many came" actions={iMay('amendments', 'edit') && <RecordButton night={night} known={known} onDone={() => void found.refetch()} />}>
          {known.records.length === 0 && <EmptyList>Nobody has recorded it. Statements then say that it is not known.</EmptyList>}
          {known.records.map((one) => (
            <Box key={one.at} sx={{ py: 0.75, borderTop: 1, borderColor: 'divider' }}>
              {inWords(one)}
              <Box sx={{ color: 'text.secondary' }}>{[one.byName, instantText(one.at)].filter(Boolean).join(' · ')}</Box>
            </Box>
          ))}
        </Section>
      )}
    </Reading>
  );
}
