import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import { numberText } from '../words/count.ts';
import type { HeldLine } from './types.ts';

export function HeldSheet({ lines }: { lines: readonly HeldLine[] }) {
  if (lines.length === 0) return null;
  return (
    <Section title="Which contracts are on hold?" lead="Their reads stay owed; none is planned or printed.">
      <Rows<HeldLine>
        label="Contracts on hold"
        rows={lines}
        keyOf={(line) => line.contractId}
        columns={[
          { label: 'Sponsor', show: (line) => <Go resource="contracts" id={line.contractId}>{line.sponsorName}</Go> },
          { label: 'Held since', show: (line) => dayText(line.heldOn) },
          { label: 'Why', show: (line) => line.reason },
          { label: 'Still owed', numeric: true, show: (line) => numberText(line.owed) },
        ]}
      />
    </Section>
  );
}
