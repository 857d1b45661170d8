import { Alert, Box, Typography } from '@mui/material';
import { monthText } from '../format/day.ts';
import { ReportTable } from '../books/report-table.tsx';
import { COUNTING_WORDS } from '../words/choices.ts';
import { numberText } from '../words/count.ts';
import type { CheckedLine, CheckedMonth, PromiseCheck } from './types.ts';

const HOW = {
  yes: { word: 'Yes', severity: 'success' },
  no: { word: 'No', severity: 'error' },
  between: { word: 'Perhaps', severity: 'warning' },
} as const;

/** The plain word and its sentence, then why. */
export function AnswerSentence({ check }: { check: PromiseCheck }) {
  const { word, severity } = HOW[check.can];
  return (
    <Alert severity={severity} icon={false} sx={{ mb: 2 }}>
      <Typography component="p" sx={{ fontSize: '1.5rem', fontWeight: 700, lineHeight: 1.2, mb: 0.5 }}>{word}</Typography>
      <Box component="p" sx={{ m: 0 }}>{check.sentence.replace(/^(Yes|No): (.)/, (_, __, first: string) => first.toUpperCase())}</Box>
      {check.because.map((sentence) => <Box component="p" key={sentence} sx={{ m: 0, mt: 1 }}>{sentence}</Box>)}
    </Alert>
  );
}

function LineSentence({ line }: { line: CheckedLine }) {
  return (
    <li>
      <strong>{line.readKindName}</strong>, {(COUNTING_WORDS[line.counting] ?? '').toLowerCase()}. {line.sentence}
      {line.shortGamesSentence && <> {line.shortGamesSentence}</>}
    </li>
  );
}

/** The lines that are planned, each once; two of one kind are told apart by their place. */
function headings(lines: readonly CheckedLine[]): { id: string; label: string }[] {
  return lines.filter((line) => line.counting !== 'onOccurrence').map((line, place, all) => {
    const isTwice = all.filter((one) => one.readKindName === line.readKindName).length > 1;
    return { id: line.id, label: isTwice ? `${line.readKindName}, line ${place + 1}` : line.readKindName };
  });
}

/** The plan behind the answer, month by month. */
export function MonthTable({ check }: { check: PromiseCheck }) {
  const lines = headings(check.lines);
  if (lines.length === 0 || check.months.length === 0) return null;
  const sum = (id: string) => check.months.reduce((reads, month) => reads + (month.reads[id] ?? 0), 0);
  return (
    <ReportTable<CheckedMonth>
      label="The plan month by month"
      rows={check.months}
      keyOf={(row) => row.month}
      columns={[
        { label: 'Month', show: (row) => monthText(row.month) },
        { label: 'Home games', numeric: true, show: (row) => numberText(row.games), sum: numberText(check.months.reduce((games, month) => games + month.games, 0)) },
        ...lines.map(({ id, label }) => ({ label, numeric: true, show: (row: CheckedMonth) => numberText(row.reads[id] ?? 0), sum: numberText(sum(id)) })),
      ]}
    />
  );
}

/** The whole answer. */
export function Answer({ check }: { check: PromiseCheck }) {
  return (
    <>
      <AnswerSentence check={check} />
      <Typography variant="h3" sx={{ mb: 0.5 }}>The most of each line</Typography>
      <Box component="ul" sx={{ mt: 0, pl: 2.5 }}>{check.lines.map((line) => <LineSentence key={line.id} line={line} />)}</Box>
      <Typography variant="h3" sx={{ mb: 1 }}>{check.can === 'yes' ? 'The plan' : 'The plan for what fits'}</Typography>
      <MonthTable check={check} />
      <Typography variant="body2" sx={{ color: 'text.secondary', mt: 1 }}>
        {check.by === 'company' ? 'Planned in places, with the seconds of each window and with competitors kept apart.' : 'Planned in places; seconds and competitors stand in the way of nothing in this plan.'} Places count only in announced home games still to come.
      </Typography>
    </>
  );
}
