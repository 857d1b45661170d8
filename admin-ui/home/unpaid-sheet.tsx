import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import { count } from '../words/count.ts';
import type { UnpaidLine } from './types.ts';

export function UnpaidSheet({ lines }: { lines: readonly UnpaidLine[] }) {
  return (
    <Section title="What is unpaid?">
      {lines.length === 0 ? (
        <EmptyList>Nothing. Every invoice that was issued is paid. Open a contract to see what is due next.</EmptyList>
      ) : (
        <Rows<UnpaidLine>
          label="Unpaid invoices"
          rows={lines}
          keyOf={(line) => line.invoiceId}
          columns={[
            { label: 'Invoice', show: (line) => <Go resource="invoices" id={line.invoiceId}>{line.number}</Go> },
            { label: 'Sponsor', show: (line) => line.sponsorName },
            { label: 'Unpaid', numeric: true, show: (line) => moneyText(line.balanceCents) },
            { label: 'Due', show: (line) => (line.daysPastDue > 0 ? <Tag mood="bad">{count(line.daysPastDue, 'day')} late</Tag> : dayText(line.dueOn)) },
          ]}
        />
      )}
    </Section>
  );
}
