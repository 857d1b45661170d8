import { Box } from '@mui/material';
import { useServer } from '../api/use-server.ts';
import { dayText } from '../format/day.ts';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import type { Invoice, Story } from './types.ts';

const byDay = (lines: Story['lines']): [string, Story['lines']][] => {
  const days = new Map<string, Story['lines']>();
  for (const line of lines) days.set(line.on, [...(days.get(line.on) ?? []), line]);
  return [...days];
};

const booked = ({ on, bookedOn }: Story['lines'][number]): string => (bookedOn !== null && bookedOn !== on ? ` Booked on ${dayText(bookedOn)}, because its own month was closed.` : '');

/** Everything that happened to the invoice, day by day. */
export function StorySheet({ invoice }: { invoice: Invoice }) {
  const asked = useServer<Story>(`/invoices/${invoice.id}/story`);
  return (
    <Section title="What happened">
      <Reading of={asked}>
        {({ lines }) => (
          <Box component="ol" sx={{ listStyle: 'none', p: 0, m: 0 }}>
            {byDay(lines).map(([day, told]) => (
              <Box component="li" key={day} sx={{ display: { sm: 'flex' }, gap: 2, py: 0.75, borderTop: 1, borderColor: 'divider' }}>
                <Box sx={{ fontWeight: 600, minWidth: 128 }}>{dayText(day)}</Box>
                <Box sx={{ minWidth: 0 }}>
                  {told.map((line) => (
                    <Box key={line.id} component="p" sx={{ m: 0, mb: 0.5 }}>
                      {line.sentence}
                      {booked(line)} {line.who && <Box component="span" sx={{ color: 'text.secondary' }}>Recorded by {line.who}.</Box>}
                    </Box>
                  ))}
                </Box>
              </Box>
            ))}
          </Box>
        )}
      </Reading>
    </Section>
  );
}
