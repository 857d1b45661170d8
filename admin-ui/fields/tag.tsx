import { Box } from '@mui/material';
import type { ReactNode } from 'react';

export type Mood = 'good' | 'care' | 'bad' | 'plain';

const MARKS: Record<Mood, string> = { good: '✓', care: '!', bad: '✕', plain: '' };
const COLOURS: Record<Mood, string> = { good: 'success.main', care: 'warning.main', bad: 'error.main', plain: 'text.secondary' };

/** A state in words with a mark, so that it can be read without colours. */
export function Tag({ mood, children }: { mood: Mood; children: ReactNode }) {
  return (
    <Box component="span" sx={{ color: COLOURS[mood], fontWeight: 600 }}>
      {MARKS[mood] && <span aria-hidden="true">{MARKS[mood]}&nbsp;</span>}
      {children}
    </Box>
  );
}
