import { only } from '../api/changes.ts';
import { useServer } from '../api/use-server.ts';
import type { Contract } from '../contracts/types.ts';
import { Go } from '../fields/go.tsx';
import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { ReasonInput } from '../forms/reason-input.tsx';
import { dayText, today } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { MoneyInput } from '../inputs/money-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { knownMe } from '../session/me.ts';
import { iMay } from '../session/rights.ts';
import { METHODS } from '../words/choices.ts';
import type { Invoice, WaitingWriteOff } from './types.ts';

/** What of the contract is not earned yet cannot become a bad debt: it is taken off by ending the contract early. */
function BeforeAsking({ invoice: { contractId } }: { invoice: Invoice }) {
  const { data } = useServer<Contract>(contractId ? `/contracts/${contractId}` : null);
  const unearned = Math.max(0, -(data?.standing?.contractBalanceCents ?? 0));
  if (!contractId || unearned === 0 || data?.term.state !== 'signed') return null;
  return (
    <>
      <strong>{moneyText(unearned)} of this contract is not earned yet</strong>; that part is no bad debt.{' '}
      {iMay('contract-changes', 'edit') ? <Go to={`/contracts/${contractId}/end`}>End the contract early</Go> : 'To end the contract early, ask the director.'}
    </>
  );
}

/** The bookkeeper asks, the director decides. */
export const AskWriteOffButton = ({ invoice }: { invoice: Invoice }) => (
  <CommandButton
    label="Ask to write off"
    title={`Give up what is open on invoice ${invoice.number}?`}
    explains={<>The athletic director is asked. Until the director approves, nothing is written off and the invoice stays open. <BeforeAsking invoice={invoice} /></>}
    path={`/invoices/${invoice.id}/write-off-requests`}
    defaults={{ amountCents: invoice.balanceCents }}
    body={(values) => only(values, 'amountCents', 'reason')}
    confirmLabel="Ask the director"
    success="The director is asked. The request waits under Open money."
  >
    <MoneyInput source="amountCents" label="Amount" required />
    <ReasonInput />
  </CommandButton>
);

/** One person may be the whole office. */
export const OWN_REQUEST = 'You asked for this yourself; as director and bookkeeper in one you may decide, and the record says so.';

export const ApproveWriteOffButton = ({ request }: { request: WaitingWriteOff }) => (
  <CommandButton
    label="Approve"
    title={`Write off ${moneyText(request.amountCents)} of invoice ${request.invoiceNumber}?`}
    explains={`${request.askedByPersonId !== null && request.askedByPersonId === knownMe()?.person.id ? `${OWN_REQUEST} Asked` : `${request.askedBy ?? 'Somebody'} asked`} on ${dayText(request.askedOn)}: ${request.reason.replace(/\.*$/, '.')} The amount becomes a bad debt. If money comes after all, it can be recovered.`}
    path={`/write-off-requests/${request.id}/approve`}
    defaults={{ on: today() }}
    body={(values) => only(values, 'on')}
    confirmLabel="Write it off"
    color="error"
    success="It is written off."
  >
    <DayInput source="on" label="On" required />
  </CommandButton>
);

export const DeclineWriteOffButton = ({ request }: { request: WaitingWriteOff }) => (
  <CommandButton
    label="Decline"
    title={`Keep invoice ${request.invoiceNumber} open?`}
    explains="The request is answered with no, and the invoice stays open."
    path={`/write-off-requests/${request.id}/decline`}
    body={(values) => only(values, 'reason')}
    confirmLabel="Decline"
    success="The request is declined."
  >
    <ReasonInput />
  </CommandButton>
);

/** Money comes after all: as much is open again, and the payment pays it. */
export const RecoverButton = ({ invoice }: { invoice: Invoice }) => (
  <CommandButton
    label="Money came after all"
    title={`Was something paid on invoice ${invoice.number} after all?`}
    explains={`${moneyText(invoice.writtenOffCents)} of it was written off. As much as came in is taken out of the bad debts again and recorded as a payment of this invoice.`}
    path={`/invoices/${invoice.id}/recoveries`}
    defaults={{ amountCents: invoice.writtenOffCents, recoveredOn: today(), method: 'check' }}
    body={(values) => only(values, 'amountCents', 'recoveredOn', 'method', 'reference', 'reason')}
    confirmLabel="Record it"
    success="It is recorded, and the invoice is paid by as much."
  >
    <FormGrid>
      <MoneyInput source="amountCents" label="Amount" required />
      <DayInput source="recoveredOn" label="Received on" required />
      <ChoiceInput source="method" label="By" choices={METHODS} required />
      <WordsInput source="reference" label="Check number or reference" longest={80} />
    </FormGrid>
    <ReasonInput />
  </CommandButton>
);
