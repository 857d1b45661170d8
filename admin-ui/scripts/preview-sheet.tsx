import { Alert, Box, Button, Typography } from '@mui/material';
import type { Segment } from '../../server/domain/packet/segment.ts';
import { secondsText } from '../nights/packet/seconds-text.ts';
import { LANGUAGE_WORDS, wordFor } from '../words/choices.ts';
import type { Preview, PreviewedText } from './types.ts';

/** What is said stands upright and large, what is done in brackets between. */
export function Said({ segments, language }: { segments: readonly Segment[]; language: string }) {
  return (
    <>
      {segments.map((segment, place) =>
        segment.kind === 'direction' ? (
          <Box component="p" key={place} sx={{ m: 0, color: 'text.secondary', fontStyle: 'italic' }}>[{segment.text}{segment.seconds > 0 && !/\d seconds$/.test(segment.text) ? `, ${secondsText(segment.seconds)}` : ''}]</Box>
        ) : (
          <Box component="p" key={place} lang={language} sx={{ my: 0.5, fontSize: '1.0625rem', maxWidth: '68ch', whiteSpace: 'pre-line', overflowWrap: 'anywhere' }}>{segment.text}</Box>
        ))}
    </>
  );
}

type Notes = PreviewedText['problems'];

function Lines({ lines, severity, title, onLine }: { lines: Notes; severity: 'error' | 'info'; title: string; onLine: ((line: number) => void) | undefined }) {
  if (lines.length === 0) return null;
  return (
    <Alert severity={severity} icon={false} sx={{ my: 1 }}>
      <strong>{title}</strong>
      <Box component="ul" sx={{ m: 0, pl: 2.5 }}>
        {lines.map(({ line, sentence }, place) => (
          <li key={place}>
            {line !== null && (onLine ? <Button size="small" color="inherit" onClick={() => onLine(line)} sx={{ minWidth: 0, px: 0.5, textDecoration: 'underline' }}>Line {line}</Button> : <>Line {line}</>)}
            {line !== null && ': '}{sentence.split('`').map((part, at) => (at % 2 === 1 ? <code key={at}>{part}</code> : part))}
          </li>
        ))}
      </Box>
    </Alert>
  );
}

function One({ text, language, title, onLine }: { text: PreviewedText; language: string; title: string; onLine: ((line: number) => void) | undefined }) {
  return (
    <Box sx={{ mt: 1 }}>
      <Typography variant="h3">{title}{text.seconds > 0 ? ` · ${secondsText(text.seconds)}` : ''}</Typography>
      <Lines lines={text.problems} severity="error" title="This cannot be read yet" onLine={onLine} />
      <Lines lines={text.notes} severity="info" title="Worth knowing" onLine={onLine} />
      <Said segments={text.segments} language={language} />
    </Box>
  );
}

interface Props {
  preview: Preview | null;
  failed: string | null;
  language: string;
  secondLanguage: string | null;
  onLine?: (box: 'first' | 'second', line: number) => void;
}

/** The script as it comes out on the night, with the seconds it takes. */
export function PreviewSheet({ preview, failed, language, secondLanguage, onLine }: Props) {
  const problems = preview ? preview.first.problems.length + (preview.second?.problems.length ?? 0) : 0;
  return (
    <Box>
      <Box role="status" sx={{ fontWeight: 700 }}>
        {failed ?? (preview === null ? 'Reading…' : problems > 0 ? `${problems === 1 ? 'One thing' : `${problems} things`} to mend` : `${secondsText(preview.seconds)} in all, at ${preview.wordsPerMinute} words a minute`)}
      </Box>
      {preview && <One text={preview.first} language={language} title={wordFor(LANGUAGE_WORDS, language)} onLine={onLine && ((line) => onLine('first', line))} />}
      {preview?.second && secondLanguage && <One text={preview.second} language={secondLanguage} title={`${wordFor(LANGUAGE_WORDS, secondLanguage)}, read with it`} onLine={onLine && ((line) => onLine('second', line))} />}
    </Box>
  );
}
