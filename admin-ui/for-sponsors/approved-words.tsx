import { Box, Typography } from '@mui/material';
import { Tag } from '../fields/tag.tsx';
import { daysWords, Spoken } from './spoken.tsx';
import type { WordsOfSponsor } from './types.ts';
import { useWritten } from './written.tsx';

export function ApprovedWords({ title, isStopped, words }: { title: string; isStopped: boolean; words: WordsOfSponsor }) {
  const written = useWritten();
  return (
    <Box component="article" sx={{ borderTop: 1, borderColor: 'divider', py: 2, breakInside: 'avoid' }}>
      <Typography variant="h3" sx={{ overflowWrap: 'anywhere' }}>{title}</Typography>
      <Spoken texts={words.texts} />
      <Typography>
        {isStopped ? <Tag mood="bad">Stopped: not read any more</Tag> : <Tag mood="good">Approved by {words.approvedByName} on {written.day(words.approvedOn!)}</Tag>}
      </Typography>
      <Typography sx={{ color: 'text.secondary' }}>{daysWords(words, written)}</Typography>
    </Box>
  );
}
