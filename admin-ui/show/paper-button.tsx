import { Button } from '@mui/material';
import { useState } from 'react';
import { useNotify } from 'react-admin';
import { openPdf } from '../api/pdf.ts';

/** Hands out a paper; a refusal is told. */
export function PaperButton({ path, name, label = 'Download (PDF)', isFirst = false }: { path: string; name: string; label?: string; isFirst?: boolean }) {
  const [working, setWorking] = useState(false);
  const notify = useNotify();
  const open = async () => {
    setWorking(true);
    await openPdf(path, `${name}.pdf`).catch((error: Error) => notify(error.message, { type: 'error' }));
    setWorking(false);
  };
  return (
    <Button variant={isFirst ? 'contained' : 'outlined'} disabled={working} onClick={() => void open()}>
      {working ? 'Setting the page…' : label}
    </Button>
  );
}
