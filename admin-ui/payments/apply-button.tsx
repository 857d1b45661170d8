import { only } from '../api/changes.ts';
import { CommandButton } from '../forms/command-button.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { MoneyInput } from '../inputs/money-input.tsx';
import { moneyText } from '../format/money.ts';
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
      defaults={{ amountCents: payment.unappliedCents }}
      body={(values) => only(values, 'invoiceId', 'amountCents')}
      confirmLabel="Apply it"
      success="It is applied."
      variant="contained"
    >
      <ChoiceInput source="invoiceId" label="Invoice" choices={unpaid} required />
      <MoneyInput source="amountCents" label="Amount" required />
    </CommandButton>
  );
}
