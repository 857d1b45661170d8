import { Box, Typography } from '@mui/material';
import type { MessageCheck } from '../../server/domain/sponsorship/copy-check.ts';
import { MARKS_EXPLAINED, NOT_TAX_ADVICE, VERDICTS } from '../../server/domain/sponsorship/copy-mark.ts';
import { Tag, type Mood } from '../fields/tag.tsx';
import { MarkedText } from './marked-text.tsx';

const MOODS: Record<MessageCheck['verdict'], Mood> = { acknowledgment: 'good', advertising: 'care', exclusiveProvider: 'care' };

/** What the copy check says of a message: its words with their marks, the verdict, and why each mark may matter. */
export function CheckSheet({ check, texts }: { check: MessageCheck; texts: readonly string[] }) {
  const { title, paragraph, sentence } = VERDICTS[check.verdict];
  const marks = check.texts.flatMap((text) => text.marks);
  const kinds = [...new Set(marks.map((mark) => mark.kind))];
  const firsts = check.texts.map((_, place) => 1 + check.texts.slice(0, place).reduce((sum, text) => sum + text.marks.length, 0));
  return (
    <>
      {check.texts.map((text, place) => (
        <MarkedText key={place} text={texts[place] ?? ''} language={text.language} marks={text.marks} slogans={text.slogans} from={firsts[place]!} />
      ))}
      <Typography role="status" sx={{ mt: 1 }}><Tag mood={MOODS[check.verdict]}>{title}</Tag> ({paragraph}). {sentence}</Typography>
      {kinds.length > 0 && (
        <Box component="ul" aria-label="What is marked, and why" sx={{ my: 1, pl: 2.5, maxWidth: '72ch', '& li': { mb: 0.75 } }}>
          {kinds.map((kind) => (
            <li key={kind}>
              <strong>{MARKS_EXPLAINED[kind].title}</strong>: {marks.map((mark, place) => ({ ...mark, number: place + 1 })).filter((mark) => mark.kind === kind).map((mark) => `${mark.number} “${mark.words}”`).join(', ')}.{' '}
              {MARKS_EXPLAINED[kind].sentence} <Box component="span" sx={{ color: 'text.secondary' }}>{MARKS_EXPLAINED[kind].paragraph}</Box>
            </li>
          ))}
        </Box>
      )}
      {check.texts.some((text) => text.slogans.length > 0) && <Typography sx={{ color: 'text.secondary' }}>The dotted words are a registered slogan; they pass.</Typography>}
      <Typography sx={{ color: 'text.secondary', mt: 0.5 }}>{NOT_TAX_ADVICE}</Typography>
    </>
  );
}
