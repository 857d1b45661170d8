import { Button } from '@mui/material';
import { useState } from 'react';
import { useNotify } from 'react-admin';
import { openPdf } from '../api/pdf.ts';
import type { CreditMemo } from './types.ts';

export function CreditMemoPdf({ memo }: { memo: CreditMemo }) {
  const [working, setWorking] = useState(false);
  const notify = useNotify();
  const open = async () => {
    setWorking(true);
    await openPdf(`/credit-memos/${memo.id}/credit-memo.pdf`, `credit-memo-${memo.number}.pdf`).catch((error: Error) => notify(error.message, { type: 'error' }));
    setWorking(false);
  };
  return (
    <Button variant="outlined" disabled={working} onClick={() => void open()}>
      {working ? 'Setting the page…' : 'Download (PDF)'}
    </Button>
  );
}
