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
  const firsts = check.texts.map((_, place) => 1 + check.texts.slice(0, place).reduce((sum, text) => sum + text.marks.length, 0));
  return (
    <>
      {check.texts.map((text, place) => (
        <MarkedText key={place} text={texts[place] ?? ''} language={text.language} marks={text.marks} slogans={text.slogans} from={firsts[place]!} />
      ))}
      <Typography sx={{ mt: 1 }}><Tag mood={MOODS[check.verdict]}>{title}</Tag> ({paragraph}). {sentence}</Typography>
      {marks.length > 0 && (
        <Box component="ol" aria-label="What is marked, and why" sx={{ my: 1, pl: 3, maxWidth: '70ch', '& li': { mb: 1 } }}>
          {marks.map((mark, place) => {
            const why = MARKS_EXPLAINED[mark.kind];
            return (
              <li key={place}>
                <strong>“{mark.words}”: {why.title.toLowerCase()}.</strong> {why.sentence} <Box component="span" sx={{ color: 'text.secondary', whiteSpace: 'nowrap' }}>{why.paragraph}</Box>
              </li>
            );
          })}
        </Box>
      )}
      {check.texts.some((text) => text.slogans.length > 0) && <Typography sx={{ color: 'text.secondary' }}>The dotted words are a registered slogan; they pass.</Typography>}
      <Typography sx={{ color: 'text.secondary', mt: 0.5 }}>{NOT_TAX_ADVICE}</Typography>
    </>
  );
}
