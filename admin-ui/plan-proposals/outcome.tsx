import { Alert, Box } from '@mui/material';
import { Figures } from '../show/figures.tsx';
import { Section } from '../show/section.tsx';
import { numberText } from '../words/count.ts';
import { Missing } from './before-after.tsx';
import type { PlanProposal, ProposalResult } from './types.ts';

const MOST_CAUTIONS = 12;

function Cautions({ cautions }: { cautions: readonly string[] }) {
  if (cautions.length === 0) return null;
  const more = cautions.length - MOST_CAUTIONS;
  return (
    <Alert severity="warning" icon={false} sx={{ mb: 2 }}>
      What this plan does not keep:
      <Box component="ul" sx={{ m: 0, pl: 2.5 }}>
        {cautions.slice(0, MOST_CAUTIONS).map((sentence) => <li key={sentence}>{sentence}</li>)}
        {more > 0 && <li>and {numberText(more)} more like these.</li>}
      </Box>
    </Alert>
  );
}

/** What the plan achieves, in one sentence and a few figures; what is missing and why. */
export function Outcome({ proposal, result }: { proposal: PlanProposal; result: ProposalResult }) {
  const { totals } = result;
  const isBeyondPlaces = result.by === 'company';
  return (
    <>
      <Section title={result.headline} lead={isBeyondPlaces ? 'Read lengths and competitors are looked at, not only places.' : proposal.withSeconds ? 'Every read fits its window, and no competitors stand together.' : 'Worked out in places alone: read lengths and competitors are not looked at.'}>
        <Figures
          figures={[
            { label: 'Still to give', value: numberText(totals.owed) },
            { label: 'Placed by the plan', value: numberText(totals.after), ...(totals.held > 0 ? { note: `${numberText(totals.held)} held for open offers` } : {}) },
            { label: 'Without a place', value: numberText(result.shortfallReads) },
            { label: 'New places', value: numberText(totals.added) },
            { label: 'Moved', value: numberText(totals.moved), ...(totals.movedWithinGame > 0 ? { note: `${numberText(totals.movedWithinGame)} within their game` } : {}) },
            ...(totals.gone > 0 ? [{ label: 'Taken out', value: numberText(totals.gone) }] : []),
          ]}
        />
      </Section>
      <Cautions cautions={result.cautions} />
      {result.shortfallReads > 0 && (
        <Section title="What finds no place, and why">
          {result.bottlenecks.length > 0 && <Box component="ul" sx={{ mt: 0, pl: 2.5 }}>{result.bottlenecks.map((sentence) => <li key={sentence}>{sentence}</li>)}</Box>}
          <Missing result={result} />
        </Section>
      )}
    </>
  );
}
