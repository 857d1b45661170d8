import { Box, Typography } from '@mui/material';
import { Tag } from '../fields/tag.tsx';
import { dayWords, daysWords, Spoken } from './spoken.tsx';
import type { WordsOfSponsor } from './types.ts';

export function ApprovedWords({ title, isStopped, words, locale }: { title: string; isStopped: boolean; words: WordsOfSponsor; locale: string }) {
  return (
    <Box component="article" sx={{ borderTop: 1, borderColor: 'divider', py: 2 }}>
      <Typography variant="h3">{title}</Typography>
      <Spoken texts={words.texts} />
      <Typography>
        {isStopped ? <Tag mood="bad">Stopped: not read any more</Tag> : <Tag mood="good">Approved by {words.approvedByName} on {dayWords(words.approvedOn!, locale)}</Tag>}
      </Typography>
      <Typography sx={{ color: 'text.secondary' }}>{daysWords(words, locale)}</Typography>
    </Box>
  );
}
