import { Typography } from '@mui/material';
import { mixInWords } from '../../server/domain/planning/promise/best-extra.ts';
import { moneyText } from '../format/money.ts';
import { Go } from '../fields/go.tsx';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import { numberText } from '../words/count.ts';
import type { LeftToSell } from './types.ts';

type Extra = LeftToSell['extras'][number];

/** Which further promise earns the most, and the mix of kinds that earns the most together. */
export function BestExtra({ left }: { left: LeftToSell }) {
  return (
    <Section title="What would earn the most" lead="Prices are the rate card’s, not what a sponsor agreed to pay. Each row as if nothing else were sold any more.">
      <Typography sx={{ mb: 1.5 }}><strong>Best mix:</strong> {left.isMixWhole ? mixInWords(left.mix, moneyText) : 'Not worked out in the time there was.'}</Typography>
      <Rows<Extra>
        label="What further reads would earn"
        rows={left.extras}
        keyOf={(row) => row.readKindId}
        columns={[
          { label: 'Read kind', show: (row) => <Go resource="read-kinds" id={row.readKindId}>{row.readKindName}</Go> },
          { label: 'The most that fits', numeric: true, show: (row) => numberText(row.most) },
          { label: 'Price of one', numeric: true, show: (row) => (row.priceCents === null ? 'Not on the rate card' : moneyText(row.priceCents)) },
          { label: 'Earns', numeric: true, show: (row) => (row.priceCents === null ? '–' : moneyText(row.earnsCents)) },
        ]}
      />
    </Section>
  );
}
