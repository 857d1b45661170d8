import { only } from '../api/changes.ts';
import { CommandButton } from '../forms/command-button.tsx';
import { today } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { MoneyInput } from '../inputs/money-input.tsx';
import { useUnpaid } from '../payments/applications-fields.tsx';
import type { CreditMemo } from './types.ts';

/** Uses what is left of a memo on another open invoice of the same payer. */
export function ApplyMemoButton({ memo }: { memo: CreditMemo }) {
  const unpaid = useUnpaid(memo.payerId, memo.sellerId);
  return (
    <CommandButton
      label="Apply the rest"
      title={`Apply ${memo.number} to an invoice`}
      explains={unpaid.length === 0 ? 'This payer has no unpaid invoice with this seller. The rest waits, or is refunded.' : `${moneyText(memo.unappliedCents)} can be applied.`}
      path={`/credit-memos/${memo.id}/applications`}
      defaults={{ amountCents: memo.unappliedCents, appliedOn: today() }}
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
