import { Button } from '@mui/material';
import { Link } from 'react-router';
import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { moneyText } from '../format/money.ts';
import { Rows } from '../lists/rows.tsx';
import type { ReadKind } from '../read-kinds/types.ts';
import { iMay } from '../session/rights.ts';
import { TIMING_WORDS, wordFor } from '../words/choices.ts';
import type { RateCardLine } from './types.ts';

export interface PriceRow {
  id: string;
  name: string;
  kind: ReadKind | null;
  line: RateCardLine | null;
}

const pricePath = (seasonId: string, readKindId: string): string => `/rate-card-lines/create?source=${encodeURIComponent(JSON.stringify({ seasonId, readKindId }))}`;

/** What has a price, and what lacks one. */
export function PriceRows({ label, rows, seasonId }: { label: string; rows: PriceRow[]; seasonId: string }) {
  const mayPrice = iMay('rate-card-lines', 'create');
  const isOfReads = rows.some((row) => row.kind);
  return (
    <Rows<PriceRow>
      label={label}
      rows={rows}
      columns={[
        { label: 'For', show: (row) => (row.line ? <Go resource="rate-card-lines" id={row.line.id}>{row.name}</Go> : row.name) },
        ...(isOfReads ? [{ label: 'Read', show: (row: PriceRow) => wordFor(TIMING_WORDS, row.kind?.timing) }] : []),
        {
          label: 'Price of one',
          numeric: true,
          show: (row) => {
            if (row.line) return moneyText(row.line.priceCents);
            return mayPrice ? <Button component={Link} to={pricePath(seasonId, row.id)} variant="outlined" aria-label={`Give ${row.name} a price`}>Give it a price</Button> : <Tag mood="care">No price yet</Tag>;
          },
        },
      ]}
    />
  );
}
