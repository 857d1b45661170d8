import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import type { AskedLine } from './types.ts';

export function AskedSheet({ lines }: { lines: readonly AskedLine[] }) {
  if (lines.length === 0) return null;
  return (
    <Section title="What do sponsors ask?" lead="Questions about single reads that wait for an answer.">
      <Rows<AskedLine>
        label="Questions about reads"
        rows={lines}
        keyOf={(line) => line.disputeId}
        columns={[
          { label: 'Sponsor', show: (line) => <Go resource="read-disputes" id={line.disputeId}>{line.sponsorName}</Go> },
          { label: 'Read', show: (line) => `${line.readKindName}, ${dayText(line.heldOn)}` },
          { label: 'Question', show: (line) => line.what },
        ]}
      />
    </Section>
  );
}
