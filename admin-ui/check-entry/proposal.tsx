import { Alert, Box, Button, Checkbox, FormControlLabel } from '@mui/material';
import type { RefObject } from 'react';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import type { OpenInvoice, Proposed } from './proposed.ts';

interface Props {
  proposed: Proposed;
  recordRef: RefObject<HTMLButtonElement | null>;
  onTurn: (invoiceId: string) => void;
  onRecord: () => void;
  onBack: () => void;
}

function Invoice({ invoice, proposed, onTurn }: { invoice: OpenInvoice } & Pick<Props, 'proposed' | 'onTurn'>) {
  const part = proposed.parts.find((one) => one.invoiceId === invoice.invoiceId);
  const words = `${invoice.invoiceNumber}, due ${dayText(invoice.dueOn)}: ${moneyText(invoice.balanceCents)} open${part ? `, pays ${moneyText(part.amountCents)}` : ''}`;
  return <FormControlLabel control={<Checkbox checked={!proposed.leftOut.has(invoice.invoiceId)} onChange={() => onTurn(invoice.invoiceId)} />} label={words} sx={{ display: 'flex', '& .MuiFormControlLabel-label': { fontWeight: part ? 600 : 400 } }} />;
}

/** Which invoices the check would pay; Enter records it, Escape goes back to the amount. */
export function Proposal({ proposed, recordRef, onTurn, onRecord, onBack }: Props) {
  const { open, leftCents, warning } = proposed;
  return (
    <Box component="section" aria-label="What the check pays" onKeyDown={(event) => event.key === 'Escape' && onBack()} sx={{ mt: 1, p: 1.5, border: 1, borderColor: 'divider', borderRadius: 1 }}>
      {warning && <Alert severity="warning" icon={false} sx={{ mb: 1 }}>{warning}</Alert>}
      {open.length === 0 ? <p>No open invoice of this payer with this seller.</p> : open.map((invoice) => <Invoice key={invoice.invoiceId} invoice={invoice} proposed={proposed} onTurn={onTurn} />)}
      <Box role="status">{leftCents > 0 && `${moneyText(leftCents)} stays as the payer’s credit.`}</Box>
      <Box sx={{ display: 'flex', gap: 1, flexWrap: 'wrap', mt: 1 }}>
        <Button ref={recordRef} variant="contained" onClick={onRecord}>Record the check (Enter)</Button>
        <Button variant="text" onClick={onBack}>Back (Esc)</Button>
      </Box>
    </Box>
  );
}
