import { CommandButton } from '../forms/command-button.tsx';
import { ReasonInput } from '../forms/reason-input.tsx';
import type { Invoice } from './types.ts';

/** An issued invoice is never edited; it is voided and keeps its number. */
export const VoidButton = ({ invoice }: { invoice: Invoice }) => (
  <CommandButton
    label="Void"
    title={`Void invoice ${invoice.number}?`}
    explains="The invoice keeps its number and says void. What it billed can be billed again. An invoice that was paid in part can no longer be voided."
    path={`/invoices/${invoice.id}/void`}
    confirmLabel="Void the invoice"
    color="error"
    success="The invoice is void."
  >
    <ReasonInput />
  </CommandButton>
);
