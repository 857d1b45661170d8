import { Box } from '@mui/material';
import { Go } from '../fields/go.tsx';
import { instantText } from '../format/instant.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Section } from '../show/section.tsx';
import type { RecentLine } from './types.ts';

export function RecentSheet({ lines }: { lines: readonly RecentLine[] }) {
  return (
    <Section title="What changed lately?">
      {lines.length === 0 ? (
        <EmptyList>Nothing yet. What people sign, log, bill and change appears here.</EmptyList>
      ) : (
        <Box component="ol" sx={{ listStyle: 'none', m: 0, p: 0 }}>
          {lines.map((line, place) => (
            <Box component="li" key={place} sx={{ py: 1, borderTop: place === 0 ? 0 : 1, borderColor: 'divider' }}>
              <div>{line.link ? <Go resource={line.link.resource} id={line.link.id}>{line.sentence}</Go> : line.sentence}</div>
              <Box sx={{ color: 'text.secondary', fontSize: '0.95rem' }}>{instantText(line.at)}</Box>
            </Box>
          ))}
        </Box>
      )}
    </Section>
  );
}
