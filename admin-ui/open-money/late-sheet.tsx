import { Box, Link, Typography } from '@mui/material';
import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import { count } from '../words/count.ts';
import type { LateGroup, LateInvoice } from './types.ts';

function Contact({ of: { contactName, contactEmail, contactPhone } }: { of: LateInvoice }) {
  if (!contactName && !contactEmail && !contactPhone) return <>–</>;
  return (
    <>
      {contactName && <Box>{contactName}</Box>}
      {contactEmail && <Box sx={{ overflowWrap: 'anywhere' }}><Link href={`mailto:${contactEmail}`} sx={{ display: 'inline-block', py: 0.25 }}>{contactEmail}</Link></Box>}
      {contactPhone && <Box><Link href={`tel:${contactPhone.replace(/[^+\d]/g, '')}`} sx={{ display: 'inline-block', py: 0.25 }}>{contactPhone}</Link></Box>}
    </>
  );
}

const Sponsor = ({ of: one }: { of: LateInvoice }) => (
  <>
    <Go resource="sponsors" id={one.sponsorId}>{one.sponsorName}</Go>
    {one.payerName !== one.sponsorName && <Box sx={{ color: 'text.secondary' }}>paid by {one.payerName}</Box>}
  </>
);

/** Invoices past due, the oldest group first. */
export function LateSheet({ groups }: { groups: LateGroup[] }) {
  return (
    <Section title="Late" lead="Days are counted from the day after the due day.">
      {groups.length === 0 && <EmptyList>Nothing is late. Every invoice that fell due is paid.</EmptyList>}
      {groups.map((group) => (
        <Box key={group.name} sx={{ mb: 2 }}>
          <Typography variant="h3" sx={{ mb: 1 }}>
            {group.name}: <span className="tabular">{moneyText(group.totalCents)}</span>
          </Typography>
          {group.invoices.length > 0 && <Rows<LateInvoice>
            label={group.name}
            rows={group.invoices}
            keyOf={(one) => one.invoiceId}
            columns={[
              { label: 'Invoice', show: (one) => <Go resource="invoices" id={one.invoiceId}>{one.number}</Go> },
              { label: 'Sponsor', show: (one) => <Sponsor of={one} /> },
              { label: 'Contact', show: (one) => <Contact of={one} /> },
              { label: 'To', show: (one) => one.sellerName },
              { label: 'Due', show: (one) => `${dayText(one.dueOn)}, ${count(one.daysPastDue, 'day')} late` },
              { label: 'Unpaid', numeric: true, show: (one) => moneyText(one.balanceCents) },
            ]}
          />}
          {group.count > group.invoices.length && <Typography sx={{ mt: 1 }}>… {count(group.count - group.invoices.length, 'invoice')} more; the sum is of all of them.</Typography>}
        </Box>
      ))}
    </Section>
  );
}
