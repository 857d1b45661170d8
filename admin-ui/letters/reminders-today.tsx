import { Typography } from '@mui/material';
import { useServer } from '../api/use-server.ts';
import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { CommandButton } from '../forms/command-button.tsx';
import { Rows } from '../lists/rows.tsx';
import { iMay } from '../session/rights.ts';
import { Section } from '../show/section.tsx';
import { count } from '../words/count.ts';
import type { Reminder } from './types.ts';

const LEAD = 'Between 8 in the morning and 6 in the evening, each on its day and once. Which days those are stands in the settings of the department.';

/** What the schedule would send today, before it does. */
export function RemindersToday() {
  const { data, refetch } = useServer<{ data: Reminder[] }>('/reminders');
  const due = data?.data ?? [];
  const going = due.filter((reminder) => reminder.why === null);
  if (due.length === 0) return null;
  return (
    <Section
      title="Reminders that go out today"
      lead={LEAD}
      actions={
        iMay('messages', 'create') && going.length > 0 ? (
          <CommandButton
            label="Send them now"
            title={`Send ${count(going.length, 'reminder')} now?`}
            explains={<Typography>Each goes to the payer with a copy of the invoice. What was paid meanwhile is left out.</Typography>}
            path="/reminders"
            success="The reminders are on their way."
            onDone={() => void refetch()}
          />
        ) : null
      }
    >
      <Rows<Reminder>
        label="Reminders that go out today"
        rows={due}
        columns={[
          { label: 'Invoice', show: (one) => <Go resource="invoices" id={one.id}>{one.number}</Go> },
          { label: 'Payer', show: (one) => one.payerName },
          { label: 'Due', show: (one) => `${dayText(one.dueOn)}, ${count(one.daysPastDue, 'day')} ago` },
          { label: 'Open', numeric: true, show: (one) => moneyText(one.balanceCents) },
          { label: 'To', show: (one) => one.why ?? one.toAddress },
        ]}
      />
    </Section>
  );
}
