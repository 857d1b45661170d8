import { Box } from '@mui/material';
import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import type { WaitingWriteOff } from '../invoices/types.ts';
import { ApproveWriteOffButton, DeclineWriteOffButton, OWN_REQUEST } from '../invoices/write-off-buttons.tsx';
import { Rows } from '../lists/rows.tsx';
import { knownMe } from '../session/me.ts';
import { iMay } from '../session/rights.ts';
import { Section } from '../show/section.tsx';

/** Requests that wait for the director; nothing is drawn where none waits. */
export function WriteOffSheet({ requests }: { requests: WaitingWriteOff[] }) {
  if (requests.length === 0) return null;
  const decides = iMay('write-offs', 'edit');
  return (
    <Section title="Write-offs to decide" lead={decides ? `${requests.some((one) => one.askedByPersonId === knownMe()?.person.id) ? OWN_REQUEST : 'One asks and the director decides.'} What is written off becomes a bad debt and can be recovered if money comes after all.` : 'The athletic director decides.'}>
      <Rows<WaitingWriteOff>
        label="Requests for a write-off"
        rows={requests}
        columns={[
          { label: 'Invoice', show: (one) => <Go resource="invoices" id={one.invoiceId}>{one.invoiceNumber}</Go> },
          { label: 'Sponsor', show: (one) => one.sponsorName },
          { label: 'Asked', show: (one) => `${dayText(one.askedOn)}, ${one.askedBy ?? 'somebody'}` },
          { label: 'Why', show: (one) => one.reason },
          { label: 'Amount', numeric: true, show: (one) => moneyText(one.amountCents) },
          { label: 'Unpaid', numeric: true, show: (one) => moneyText(one.balanceCents) },
          ...(decides ? [{ label: 'Decide', show: (one: WaitingWriteOff) => <Box sx={{ display: 'flex', gap: 1, flexWrap: 'wrap' }}><ApproveWriteOffButton request={one} /><DeclineWriteOffButton request={one} /></Box> }] : []),
        ]}
      />
    </Section>
  );
}
