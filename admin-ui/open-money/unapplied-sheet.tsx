import { Box } from '@mui/material';
import { only } from '../api/changes.ts';
import { Go } from '../fields/go.tsx';
import { CommandButton } from '../forms/command-button.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { MoneyInput } from '../inputs/money-input.tsx';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { RefundButton } from '../payments/refund-button.tsx';
import { iMay } from '../session/rights.ts';
import { takenByMe } from '../session/taken-by-me.ts';
import { Section } from '../show/section.tsx';
import type { Unapplied } from './types.ts';

const pathOf = ({ kind, creditId }: Unapplied): string => `/${kind === 'payment' ? 'payments' : 'credit-memos'}/${creditId}`;

const nameOf = ({ kind, number }: Unapplied): string => `${kind === 'payment' ? 'Payment' : 'Credit memo'} ${number}`;

/** Uses the credit on the oldest open invoice it may pay, or on another of them. */
function ApplyButton({ credit }: { credit: Unapplied }) {
  const [oldest] = credit.openInvoices;
  if (!oldest) return null;
  const choices = credit.openInvoices.map(({ id, number, balanceCents }) => ({ id, name: `${number}: ${moneyText(balanceCents)} unpaid` }));
  return (
    <CommandButton
      label="Apply"
      title={`Apply ${nameOf(credit)}`}
      explains={`${moneyText(credit.leftCents)} of ${credit.payerName} can be applied.`}
      path={`${pathOf(credit)}/applications`}
      defaults={{ invoiceId: oldest.id, amountCents: Math.min(credit.leftCents, oldest.balanceCents) }}
      body={(values) => only(values, 'invoiceId', 'amountCents')}
      confirmLabel="Apply it"
      success="It is applied."
      variant="contained"
    >
      <ChoiceInput source="invoiceId" label="Invoice" choices={choices} required />
      <MoneyInput source="amountCents" label="Amount" required />
    </CommandButton>
  );
}

function Use({ credit }: { credit: Unapplied }) {
  if (!iMay('payments', 'edit')) return <>–</>;
  if (takenByMe(credit)) return <>You took this; another applies it or pays it back.</>;
  return (
    <Box sx={{ display: 'flex', gap: 1, flexWrap: 'wrap' }}>
      <ApplyButton credit={credit} />
      <RefundButton path={`${pathOf(credit)}/refunds`} leftCents={credit.leftCents} payerName={credit.payerName} />
    </Box>
  );
}

/** Payments and credit memos with something left. */
export function UnappliedSheet({ credits }: { credits: Unapplied[] }) {
  return (
    <Section title="Not applied" lead="Money received and credits given that pay no invoice yet. Apply them to an open invoice of the same sponsor with the same seller, or pay them back.">
      {credits.length === 0 ? (
        <EmptyList>Nothing waits. Every payment and every credit is used.</EmptyList>
      ) : (
        <Rows<Unapplied>
          label="Payments and credits not applied"
          rows={credits}
          keyOf={(one) => one.creditId}
          columns={[
            { label: 'Credit', show: (one) => <Go to={`${pathOf(one)}/show`}>{nameOf(one)}</Go> },
            { label: 'Of', show: (one) => one.payerName },
            { label: 'With', show: (one) => one.sellerName },
            { label: 'Since', show: (one) => dayText(one.on) },
            { label: 'Left', numeric: true, show: (one) => moneyText(one.leftCents) },
            { label: 'Use', show: (one) => <Use credit={one} /> },
          ]}
        />
      )}
    </Section>
  );
}
