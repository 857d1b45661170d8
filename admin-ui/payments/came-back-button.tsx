import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { ReasonInput } from '../forms/reason-input.tsx';
import { today } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { DayInput } from '../inputs/day-input.tsx';
import { MoneyInput } from '../inputs/money-input.tsx';
import { department } from '../session/me.ts';
import { opensAgain } from './opens-again.ts';
import type { Payment } from './types.ts';

const amountOr0 = (value: unknown): unknown => value ?? 0;

/** The bank sent a check or a transfer back: what it paid is open again, and its fee may be passed on. */
export function CameBackButton({ payment }: { payment: Payment }) {
  const chargeCents = department().settings?.returnedCheckFeeCents ?? 0;
  return (
    <CommandButton
      label="It came back"
      title={`Payment ${payment.number} came back?`}
      explains={`${moneyText(payment.amountCents)} leaves the bank again, and the invoices it paid are open again. What the payer is charged becomes an invoice of its own.${opensAgain(payment.applications)}`}
      path={`/payments/${payment.id}/return`}
      defaults={{ returnedOn: today(), bankFeeCents: 0, chargeCents }}
      body={({ returnedOn, bankFeeCents, chargeCents: charged, reason }) => ({ kind: 'returned', returnedOn, bankFeeCents: amountOr0(bankFeeCents), chargeCents: amountOr0(charged), reason })}
      confirmLabel="It came back"
      color="error"
      success="The payment came back. What it paid is open again."
    >
      <FormGrid>
        <DayInput source="returnedOn" label="Came back on" required />
        <MoneyInput source="bankFeeCents" label="The bank took" helperText="A charge of your bank, 0 for none" />
        <MoneyInput source="chargeCents" label="Charge the payer" helperText="0 for nothing. State law may limit it." />
      </FormGrid>
      <ReasonInput />
    </CommandButton>
  );
}

/** It never was a payment: typed twice, or for the wrong payer. */
export const MistakeButton = ({ payment }: { payment: Payment }) => (
  <CommandButton
    label="It was a mistake"
    title={`Was payment ${payment.number} recorded by mistake?`}
    explains={`It stays in the books with its number, and beside it stands that it was a mistake. What it paid is open again.${opensAgain(payment.applications)}`}
    path={`/payments/${payment.id}/return`}
    defaults={{ returnedOn: today() }}
    body={({ returnedOn, reason }) => ({ kind: 'mistake', returnedOn, reason })}
    confirmLabel="Undo the payment"
    color="error"
    success="The payment is undone."
  >
    <DayInput source="returnedOn" label="On" required />
    <ReasonInput />
  </CommandButton>
);
