import { Alert, Box } from '@mui/material';
import type { UseQueryResult } from '@tanstack/react-query';
import { moneyText } from '../format/money.ts';
import { sentenceText } from '../format/sentence.ts';
import { Rows } from '../lists/rows.tsx';
import { Reading } from '../show/reading.tsx';
import { numberText } from '../words/count.ts';
import type { Due } from '../invoices/types.ts';

type DueLine = Due['lines'][number];

/** What an invoice would hold. */
export function DuePreview({ due }: { due: UseQueryResult<Due, Error> }) {
  if (due.fetchStatus === 'idle' && due.data === undefined) return null;
  return (
    <Reading of={due}>
      {({ lines, netCents, taxCents, grossCents, why }) =>
        lines.length === 0 ? (
          <Alert severity="info" icon={false}>{why ? sentenceText(why) : 'Nothing is due through this day.'}</Alert>
        ) : (
          <>
            <Rows<DueLine>
              label="What the invoice would hold"
              rows={lines}
              columns={[
                { label: 'For', show: (line) => line.description },
                { label: 'Count', numeric: true, show: (line) => numberText(line.quantity) },
                { label: 'Amount', numeric: true, show: (line) => moneyText(line.amountCents) },
              ]}
            />
            <Box component="p" className="tabular">Net {moneyText(netCents)}, tax {moneyText(taxCents)}, <strong>to pay {moneyText(grossCents)}</strong></Box>
            {why && <p>{sentenceText(why)}</p>}
          </>
        )
      }
    </Reading>
  );
}
