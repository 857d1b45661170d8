import { Alert, Box } from '@mui/material';
import { useServer } from '../../api/use-server.ts';
import { Reading } from '../../show/reading.tsx';
import { Section } from '../../show/section.tsx';
import { count, numberText } from '../../words/count.ts';
import type { Contract } from '../types.ts';
import { SumTable } from './sum-table.tsx';
import type { ExplainedReads, Explanation } from './types.ts';

/** Beside what is revenue stands who decides about it. */
const REVENUE = new Set(['earned', 'balance']);

/** How many days of a banner or a sign have passed, and what became of the rest. */
function daysText({ promised, parts }: ExplainedReads): string {
  const [passed, rest] = [parts.find(({ words }) => words === 'given')?.count ?? 0, parts.filter((part) => part.words !== 'given' && part.count !== 0)];
  const others = rest.map((part) => `, ${numberText(part.count)} ${part.words === 'still owed' ? 'to come' : part.words}`).join('');
  return `${numberText(passed)} of its ${count(promised, 'day')} ${passed === 1 ? 'has' : 'have'} passed${others}.`;
}

function ReadsLine(line: ExplainedReads) {
  const { name, promised, parts, extra, isOverDays } = line;
  if (isOverDays) return <Box component="li" sx={{ mb: 0.5 }}><strong>{name}</strong>: {daysText(line)}</Box>;
  const sum = parts.map((part, place) => `${place === 0 ? '' : part.count < 0 ? ' − ' : ' + '}${numberText(place === 0 ? part.count : Math.abs(part.count))} ${part.words}`).join('');
  return (
    <Box component="li" sx={{ mb: 0.5 }}>
      <strong>{name}</strong>: {numberText(promised)} promised = {sum}.{extra > 0 ? ` ${numberText(extra)} more ${extra === 1 ? 'was' : 'were'} read than promised; that moves no money.` : ''}
    </Box>
  );
}

/** Each figure of the contract as a sum that adds up. */
export function ExplanationSheet({ contract }: { contract: Contract }) {
  const asked = useServer<Explanation>(`/contracts/${contract.id}/explanation`);
  return (
    <Reading of={asked}>
      {({ reads, sums, consult }) => (
        <>
          <Section title="The reads" lead="What was promised, and where each of it stands.">
            <Box component="ul" sx={{ m: 0, pl: 2.5 }}>{reads.map((line) => <ReadsLine key={line.lineId} {...line} />)}</Box>
          </Section>
          {sums.map((sum) => (
            <Section key={sum.key} title={sum.title} lead={sum.lead}>
              <SumTable sum={sum} />
              {REVENUE.has(sum.key) && <Alert severity="info" icon={false} sx={{ mt: 1.5, maxWidth: 760 }}>{consult}</Alert>}
            </Section>
          ))}
        </>
      )}
    </Reading>
  );
}
