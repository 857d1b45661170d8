import { Button } from '@mui/material';
import { useNotify } from 'react-admin';
import { openPdf } from '../api/pdf.ts';
import type { JournalBatch } from './types.ts';

export function DownloadButton({ batch }: { batch: JournalBatch }) {
  const notify = useNotify();
  const download = () => openPdf(`/journal-batches/${batch.id}/journal.csv`, `${batch.number}.csv`).catch((error: Error) => notify(error.message, { type: 'error' }));
  return <Button variant="contained" onClick={() => void download()}>Download (CSV)</Button>;
}
