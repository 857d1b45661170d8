import { Button } from '@mui/material';
import { useState } from 'react';
import { useNotify } from 'react-admin';
import { openPdf } from '../api/pdf.ts';
import type { Invoice } from './types.ts';

export function InvoicePdf({ invoice }: { invoice: Invoice }) {
  const [working, setWorking] = useState(false);
  const notify = useNotify();
  const open = async () => {
    setWorking(true);
    await openPdf(`/invoices/${invoice.id}/invoice.pdf`, `invoice-${invoice.number}.pdf`).catch((error: Error) => notify(error.message, { type: 'error' }));
    setWorking(false);
  };
  return (
    <Button variant="outlined" disabled={working} onClick={() => void open()}>
      {working ? 'Setting the page…' : 'Download (PDF)'}
    </Button>
  );
}
