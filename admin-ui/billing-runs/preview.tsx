import { Box } from '@mui/material';
import { Go } from '../fields/go.tsx';
import { moneyText } from '../format/money.ts';
import { sentenceText } from '../format/sentence.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import { SellerTotals } from './seller-totals.tsx';
import type { Preview, PreviewLine } from './types.ts';

const contractName = (line: PreviewLine) => [line.contractNumber, line.contractTitle].filter(Boolean).join(', ');

function What({ line }: { line: PreviewLine }) {
  return (
    <Box component="ul" sx={{ m: 0, pl: 2 }}>
      {line.lines.map((one, place) => (
        <li key={place}>{one.quantity > 1 ? `${one.quantity} × ` : ''}{one.description}, {moneyText(one.amountCents)}</li>
      ))}
    </Box>
  );
}

/** Who is billed for what and how much, and who is skipped and why. */
export function PreviewSheets({ preview }: { preview: Preview }) {
  const billed = preview.contracts.filter((one) => !one.isSkipped);
  const skipped = preview.contracts.filter((one) => one.isSkipped);
  return (
    <>
      <Section title="What would be billed">
        {billed.length === 0 ? (
          <EmptyList>Nothing is due through this day.</EmptyList>
        ) : (
          <>
            <Rows<PreviewLine>
              label="Contracts that would be billed"
              rows={billed}
              keyOf={(line) => line.contractId}
              columns={[
                { label: 'Sponsor', show: (line) => line.sponsorName },
                { label: 'Contract', show: (line) => <Go resource="contracts" id={line.contractId}>{contractName(line)}</Go> },
                { label: 'Invoice to', show: (line) => line.payerName },
                { label: 'For', show: (line) => <What line={line} /> },
                { label: 'Tax', numeric: true, show: (line) => moneyText(line.taxCents) },
                { label: 'To pay', numeric: true, show: (line) => moneyText(line.grossCents) },
              ]}
            />
            <Box sx={{ mt: 2 }}><SellerTotals totals={preview.totals} /></Box>
          </>
        )}
      </Section>
      {skipped.length > 0 && (
        <Section title="What would be skipped">
          <Rows<PreviewLine>
            label="Contracts that would be skipped"
            rows={skipped}
            keyOf={(line) => line.contractId}
            columns={[
              { label: 'Sponsor', show: (line) => line.sponsorName },
              { label: 'Contract', show: (line) => <Go resource="contracts" id={line.contractId}>{contractName(line)}</Go> },
              { label: 'Why', show: (line) => sentenceText(line.why) },
            ]}
          />
        </Section>
      )}
    </>
  );
}
