import { Alert, Box } from '@mui/material';
import { Go } from '../fields/go.tsx';
import { dayText, today } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { Rows } from '../lists/rows.tsx';
import { SendButton } from '../letters/send-button.tsx';
import { LettersAbout } from '../letters/letters-about.tsx';
import { iMay } from '../session/rights.ts';
import { Facts } from '../show/facts.tsx';
import { Figures } from '../show/figures.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { numberText } from '../words/count.ts';
import { DiscountButton } from './discount-button.tsx';
import { InvoicePdf } from './pdf-link.tsx';
import { RecordPaymentLink } from './record-payment-link.tsx';
import { LineText } from './line-text.tsx';
import { PaidBy } from './paid-by.tsx';
import { StorySheet } from './story.tsx';
import { InvoiceState } from './state.tsx';
import type { Invoice, InvoiceLine } from './types.ts';
import { VoidButton } from './void-button.tsx';
import { ApproveWriteOffButton, AskWriteOffButton, DeclineWriteOffButton, RecoverButton } from './write-off-buttons.tsx';

const titleOf = ({ kind, number }: Invoice): string => `${kind === 'charge' ? 'Charge' : 'Invoice'} ${number}`;

const isUntouched = (invoice: Invoice): boolean => invoice.appliedCents + invoice.discountCents + invoice.writtenOffCents === 0 && invoice.state !== 'void' && invoice.kind !== 'opening';

const isPartlyCredited = (invoice: Invoice): boolean => (invoice.applications ?? []).some((one) => one.creditMemoId !== null && !one.takenBack);

function Actions({ invoice }: { invoice: Invoice }) {
  const bills = iMay('invoices', 'edit');
  const isOpen = invoice.balanceCents > 0 && invoice.state !== 'void';
  return (
    <>
      <InvoicePdf invoice={invoice} />
      {invoice.kind !== 'opening' && invoice.state !== 'void' && <SendButton label="Send…" which={{ kind: 'invoice', aboutId: invoice.id }} />}
      {invoice.state === 'overdue' && <SendButton label="Remind…" which={{ kind: 'reminder', aboutId: invoice.id }} />}
      {iMay('payments', 'create') && isOpen && <RecordPaymentLink invoice={invoice} />}
      {bills && isOpen && invoice.kind === 'invoice' && invoice.dueOn >= today() && !isPartlyCredited(invoice) && <DiscountButton invoice={invoice} />}
      {bills && isOpen && !invoice.waitingWriteOff && <AskWriteOffButton invoice={invoice} />}
      {iMay('payments', 'create') && invoice.writtenOffCents > 0 && <RecoverButton invoice={invoice} />}
      {bills && isUntouched(invoice) && <VoidButton invoice={invoice} />}
    </>
  );
}

function WaitingNote({ invoice: { waitingWriteOff: request } }: { invoice: Invoice }) {
  if (!request) return null;
  return (
    <Alert severity="info" icon={false} sx={{ mb: 2 }}>
      <Box component="p" sx={{ m: 0, mb: 1 }}>
        {request.askedBy ?? 'Somebody'} asked on {dayText(request.askedOn)} to write off {moneyText(request.amountCents)}: {request.reason}
      </Box>
      {iMay('write-offs', 'edit') ? (
        <Box sx={{ display: 'flex', gap: 1, flexWrap: 'wrap' }}><ApproveWriteOffButton request={request} /><DeclineWriteOffButton request={request} /></Box>
      ) : (
        'The athletic director decides.'
      )}
    </Alert>
  );
}

export const InvoiceShow = () => (
  <ShowPage<Invoice> title={titleOf} canEdit={false} actions={(invoice) => <Actions invoice={invoice} />}>
    {(invoice) => (
      <>
        <WaitingNote invoice={invoice} />
        <Section title={invoice.kind === 'charge' ? 'Charge' : 'Invoice'}>
          <Figures
            figures={[
              { label: 'To pay', value: moneyText(invoice.grossCents) },
              { label: 'Paid and credited', value: moneyText(invoice.appliedCents) },
              ...(invoice.discountCents > 0 ? [{ label: 'Discount', value: moneyText(invoice.discountCents) }] : []),
              ...(invoice.writtenOffCents > 0 ? [{ label: 'Written off', value: moneyText(invoice.writtenOffCents) }] : []),
              { label: 'Unpaid', value: moneyText(invoice.balanceCents) },
            ]}
          />
          <Facts
            facts={[
              ['State', <InvoiceState key="state" state={invoice.state} />],
              ['Seller of record', <Go key="seller" resource="sellers" id={invoice.sellerId}>{invoice.sellerName}</Go>],
              ['Payer', <Go key="payer" resource="payers" id={invoice.payerId}>{invoice.payerName}</Go>],
              ['Sponsor', invoice.sponsorId && <Go key="sponsor" resource="sponsors" id={invoice.sponsorId}>{invoice.sponsorName}</Go>],
              ['Contract', invoice.contractId && <Go key="contract" resource="contracts" id={invoice.contractId}>{[invoice.contractNumber, invoice.contractTitle].filter(Boolean).join(', ') || 'Contract'}</Go>],
              ['Purchase order', invoice.purchaseOrderNumber],
              ['Issued', dayText(invoice.issuedOn)],
              ['Due', dayText(invoice.dueOn)],
              ['Voided', invoice.voidedOn && `${dayText(invoice.voidedOn)}: ${invoice.voidReason}`],
            ]}
          />
        </Section>
        <Section title="Lines">
          <Rows<InvoiceLine>
            label="Lines of the invoice"
            rows={invoice.lines ?? []}
            columns={[
              { label: 'For', show: (line) => <LineText line={line} /> },
              { label: 'Count', numeric: true, show: (line) => numberText(line.quantity) },
              { label: 'Each', numeric: true, show: (line) => moneyText(line.unitCents) },
              { label: 'Amount', numeric: true, show: (line) => moneyText(line.amountCents) },
              ...(invoice.taxBasisPoints > 0 ? [{ label: 'Tax', numeric: true, show: (line: InvoiceLine) => moneyText(line.taxCents) }] : []),
            ]}
          />
          <Box component="p" className="tabular" sx={{ textAlign: { sm: 'right' } }}>
            Net {moneyText(invoice.netCents)}, {invoice.taxCents === 0 ? 'no tax charged' : `tax ${moneyText(invoice.taxCents)} at ${invoice.taxBasisPoints / 100}%`}, <strong>to pay {moneyText(invoice.grossCents)}</strong>
          </Box>
          <Box component="p" sx={{ color: 'text.secondary' }}>Local rules and the business office decide about sales tax.</Box>
        </Section>
        <PaidBy invoice={invoice} />
        <LettersAbout aboutId={invoice.id} />
        <StorySheet invoice={invoice} />
      </>
    )}
  </ShowPage>
);
