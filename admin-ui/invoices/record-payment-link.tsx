import { Button } from '@mui/material';
import { Link } from 'react-router';
import type { Invoice } from './types.ts';

/** Opens the payment form with this invoice filled in. */
export function RecordPaymentLink({ invoice }: { invoice: Invoice }) {
  const source = {
    sellerId: invoice.sellerId,
    payerId: invoice.payerId,
    amountCents: invoice.balanceCents,
    applications: [{ invoiceId: invoice.id, amountCents: invoice.balanceCents }],
  };
  return (
    <Button component={Link} to={`/payments/create?source=${encodeURIComponent(JSON.stringify(source))}`} variant="contained">
      Record a payment
    </Button>
  );
}
