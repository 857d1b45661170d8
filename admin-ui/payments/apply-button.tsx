import { only } from '../api/changes.ts';
import { CommandButton } from '../forms/command-button.tsx';
import { today } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { MoneyInput } from '../inputs/money-input.tsx';
import { useUnpaid } from './applications-fields.tsx';
import type { Payment } from './types.ts';

/** Uses the credit that is left on an invoice. */
export function ApplyButton({ payment }: { payment: Payment }) {
  const unpaid = useUnpaid(payment.payerId, payment.sellerId);
  return (
    <CommandButton
      label="Apply to an invoice"
      title="Apply to an invoice"
      explains={unpaid.length === 0 ? 'This payer has no unpaid invoice with this seller.' : `${moneyText(payment.unappliedCents)} can be applied.`}
      path={`/payments/${payment.id}/applications`}
      defaults={{ amountCents: payment.unappliedCents, appliedOn: today() }}
      body={(values) => only(values, 'invoiceId', 'amountCents', 'appliedOn')}
      confirmLabel="Apply it"
      success="It is applied."
      variant="contained"
    >
      <ChoiceInput source="invoiceId" label="Invoice" choices={unpaid} required />
      <MoneyInput source="amountCents" label="Amount" required />
      <DayInput source="appliedOn" label="Applied on" required />
    </CommandButton>
  );
}
