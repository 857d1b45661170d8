import { Box } from '@mui/material';
import { useServer } from '../api/use-server.ts';
import { chanceText } from '../boards/risk-words.ts';
import type { AtRiskLine, AtRiskView } from '../boards/types.ts';
import { Go } from '../fields/go.tsx';
import { moneyText } from '../format/money.ts';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import { numberText } from '../words/count.ts';

const SHOWN = 3;

/** The promises with most at stake, and what to do about each. Nothing is shown while nothing is at risk. */
export function AtRiskSheet() {
  const { data } = useServer<AtRiskView>('/boards/at-risk');
  if (!data || data.lines.length === 0) return null;
  return (
    <Section title="What is at risk?" actions={<Go to="/at-risk">All {numberText(data.lines.length)}</Go>}>
      <Rows<AtRiskLine>
        label="Most at stake"
        rows={data.lines.slice(0, SHOWN)}
        keyOf={(line) => line.commitmentId}
        columns={[
          { label: 'Promise', show: (line) => <><Go to={`/contracts/${line.contractId}/show`}>{line.sponsorName}</Go><Box component="span" sx={{ display: 'block', fontWeight: 400 }}>{line.readKindName}</Box></> },
          { label: 'Chance of all', numeric: true, show: (line) => chanceText(line.chanceAllGiven) },
          { label: 'At stake', numeric: true, show: (line) => moneyText(line.atStakeCents) },
          { label: 'Cheapest repair', show: (line) => <Go to={line.to}>{line.repair.words}</Go> },
        ]}
      />
    </Section>
  );
}
