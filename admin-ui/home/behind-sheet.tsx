import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import { numberText } from '../words/count.ts';
import type { BehindLine } from './types.ts';

export function BehindSheet({ lines }: { lines: readonly BehindLine[] }) {
  return (
    <Section title="Which promises are behind?" actions={lines.length > 0 && <Go to="/at-risk">What can be done about it</Go>}>
      {lines.length === 0 ? (
        <EmptyList>None. Every sponsor has had at least what should be given by now.</EmptyList>
      ) : (
        <Rows<BehindLine>
          label="Commitments behind"
          rows={lines}
          keyOf={(line) => line.commitmentId}
          columns={[
            { label: 'Sponsor', show: (line) => <Go resource="contracts" id={line.contractId}>{line.sponsorName}</Go> },
            { label: 'Read kind', show: (line) => line.readKindName },
            { label: 'Given', numeric: true, show: (line) => `${numberText(line.given)} of ${numberText(line.promised)}` },
            { label: 'Behind', numeric: true, show: (line) => <Tag mood="care">{numberText(line.behindBy)} behind</Tag> },
          ]}
        />
      )}
    </Section>
  );
}
