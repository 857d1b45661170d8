import { Box, Button } from '@mui/material';
import type { TidyMatter } from '../../../server/domain/night/tidy.ts';
import { Tag } from '../../fields/tag.tsx';
import { Section } from '../../show/section.tsx';
import type { Answer, Settling } from './use-tidy.ts';

interface Choice {
  label: string;
  answer: Answer;
  /** this is how it stands */
  isChosen?: boolean;
}

interface Props<Matter extends TidyMatter> {
  title: string;
  lead: string;
  matters: readonly Matter[];
  settling: Settling;
  stateOf?: (matter: Matter) => string;
  choicesOf: (matter: Matter) => readonly Choice[];
}

/** Things of one kind that a person may settle, each with its answers; the answer that holds is shown, not offered. */
export function Matters<Matter extends TidyMatter>({ title, lead, matters, settling: { settle, isBusy }, stateOf, choicesOf }: Props<Matter>) {
  if (matters.length === 0) return null;
  return (
    <Section title={title} lead={lead}>
      {matters.map((matter) => (
        <Box key={matter.entryIds.join(' ')} sx={{ py: 1.25, borderTop: 1, borderColor: 'divider', display: 'flex', gap: 1, flexWrap: 'wrap', alignItems: 'center' }}>
          <Box sx={{ flex: '1 1 320px', minWidth: 0 }}>
            {matter.sentence}
            {stateOf && <Box><Tag mood={matter.counts ? 'good' : 'care'}>{stateOf(matter)}</Tag></Box>}
          </Box>
          {settle && (
            <Box sx={{ display: 'flex', gap: 1, flexWrap: 'wrap' }}>
              {choicesOf(matter).filter((choice) => !choice.isChosen).map(({ label, answer }) => (
                <Button key={label} variant="outlined" disabled={isBusy} aria-label={`${label}: ${matter.sentence}`} onClick={() => settle(matter.entryIds.at(-1)!, answer)}>{label}</Button>
              ))}
            </Box>
          )}
        </Box>
      ))}
    </Section>
  );
}

/** Counts, or does not: for reads cut short and for mentions without a happening. */
export const countOrNot = (matter: TidyMatter): readonly Choice[] => [
  { label: 'It counts', answer: { answer: 'counts' }, isChosen: matter.answer === 'counts' },
  { label: 'It does not count', answer: { answer: 'doesNotCount' }, isChosen: matter.answer === 'doesNotCount' },
];

export const howItStands = (matter: TidyMatter): string =>
  `${matter.counts ? 'Counts' : 'Does not count'}${matter.answer === null ? ', unless somebody says otherwise' : ', as somebody said'}`;
