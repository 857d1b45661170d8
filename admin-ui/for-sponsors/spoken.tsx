import { Box, Typography } from '@mui/material';
import type { WordsOfSponsor } from './types.ts';
import type { Written } from './written.tsx';

const NAMES: Record<string, string> = { en: 'In English', es: 'In Spanish' };

export function daysWords({ startsOn, endsOn }: WordsOfSponsor, { day }: Written): string {
  if (startsOn && endsOn) return `Read from ${day(startsOn)} to ${day(endsOn)}.`;
  if (startsOn) return `Read from ${day(startsOn)} on.`;
  return endsOn ? `Read until ${day(endsOn)}.` : 'Read all season.';
}

/** The words as the crowd hears them, one language after the other. */
export function Spoken({ texts }: { texts: WordsOfSponsor['texts'] }) {
  return (
    <>
      {texts.map(({ language, text }) => (
        <Box key={language}>
          {texts.length > 1 && <Typography sx={{ color: 'text.secondary', mt: 1 }}>{NAMES[language]}</Typography>}
          <Box component="blockquote" lang={language} sx={{ m: 0, my: 1, pl: 2, borderLeft: '5px solid #f2b134', fontSize: '1.25rem', lineHeight: 1.5, whiteSpace: 'pre-line', overflowWrap: 'anywhere' }}>{text}</Box>
        </Box>
      ))}
    </>
  );
}
