import { Box } from '@mui/material';
import type { CopyMark } from '../../server/domain/sponsorship/copy-check.ts';
import { MARKS_EXPLAINED } from '../../server/domain/sponsorship/copy-mark.ts';

interface Props {
  text: string;
  language: string;
  marks: readonly CopyMark[];
  slogans?: readonly { start: number; end: number }[];
  /** the number of the first mark: a second text of the message counts on */
  from?: number;
}

/** The words as they will be read, marked words underlined and numbered, so that the marks can be seen without colours. */
export function MarkedText({ text, language, marks, slogans = [], from = 1 }: Props) {
  const spans = [...marks.map((mark, place) => ({ ...mark, number: from + place })), ...slogans.map((one) => ({ ...one, number: 0 as const }))].toSorted((a, b) => a.start - b.start);
  let at = 0;
  const pieces = spans.flatMap((span) => {
    if (span.start < at) return [];
    const before = text.slice(at, span.start);
    at = span.end;
    const words = text.slice(span.start, span.end);
    return [before, span.number === 0 ? <Slogan key={`s${span.start}`} words={words} /> : <Marked key={span.start} words={words} number={span.number} title={MARKS_EXPLAINED[(span as CopyMark).kind].title} />];
  });
  return (
    <Box component="blockquote" lang={language} sx={{ m: 0, my: 1, pl: 1.5, borderLeft: '5px solid #f2b134', fontSize: '1.0625rem', lineHeight: 1.7, maxWidth: '68ch', whiteSpace: 'pre-line', overflowWrap: 'anywhere' }}>
      {pieces}
      {text.slice(at)}
    </Box>
  );
}

const Marked = ({ words, number, title }: { words: string; number: number; title: string }) => (
  <Box component="mark" title={title} sx={{ bgcolor: 'transparent', color: 'error.main', fontWeight: 600, textDecoration: 'underline', textDecorationStyle: 'double', textUnderlineOffset: 3 }}>
    {words}
    <Box component="sup" sx={{ fontSize: '0.7em', lineHeight: 0, ml: 0.25 }}>{number}</Box>
  </Box>
);

const Slogan = ({ words }: { words: string }) => (
  <Box component="span" title="Registered slogan" sx={{ textDecoration: 'underline', textDecorationStyle: 'dotted', textUnderlineOffset: 3 }}>{words}</Box>
);
