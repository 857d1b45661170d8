import { Box } from '@mui/material';
import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import { count } from '../words/count.ts';
import type { Home, UnpaidLine } from './types.ts';

/** What waits under Open money, in one sentence; nothing where nothing waits. */
function Waiting({ openMoney }: { openMoney: Home['openMoney'] }) {
  if (!openMoney) return null;
  const { lateCount, lateCents, unappliedCount, unappliedCents, writeOffsWaiting } = openMoney;
  const parts = [
    ...(lateCount > 0 ? [`${count(lateCount, 'invoice')} late, ${moneyText(lateCents)}`] : []),
    ...(unappliedCount > 0 ? [`${count(unappliedCount, 'credit')} not applied, ${moneyText(unappliedCents)}`] : []),
    ...(writeOffsWaiting > 0 ? [`${count(writeOffsWaiting, 'write-off')} to decide`] : []),
  ];
  if (parts.length === 0) return null;
  return <Box component="p" sx={{ mt: 0, mb: 1.5 }}><Go to="/open-money">Open money</Go>: {parts.join('; ')}.</Box>;
}

export function UnpaidSheet({ lines, openMoney }: { lines: readonly UnpaidLine[]; openMoney: Home['openMoney'] }) {
  return (
    <Section title="What is unpaid?">
      <Waiting openMoney={openMoney} />
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
