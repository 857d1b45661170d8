import { Button } from '@mui/material';
import { useState } from 'react';
import { useNotify } from 'react-admin';
import { openPdf } from '../api/pdf.ts';

export interface Paper {
  label: string;
  path: string;
  fileName: string;
}

/** The same report as a file, for a spreadsheet or on paper. */
export function DownloadButtons({ papers }: { papers: readonly Paper[] }) {
  const [working, setWorking] = useState<string | null>(null);
  const notify = useNotify();
  const fetchPaper = async ({ label, path, fileName }: Paper) => {
    setWorking(label);
    try {
      await openPdf(path, fileName);
    } catch (error) {
      notify((error as Error).message, { type: 'error' });
    } finally {
      setWorking(null);
    }
  };
  return (
    <>
      {papers.map((paper) => (
        <Button key={paper.label} variant="outlined" disabled={working !== null} onClick={() => void fetchPaper(paper)}>
          {working === paper.label ? 'One moment' : paper.label}
        </Button>
      ))}
    </>
  );
}

/** CSV and Excel of a report, as it is asked for now. */
export function spreadsheets(path: string, query: string, fileName: string): Paper[] {
  const asked = query ? `${query}&` : '';
  return (['csv', 'xlsx'] as const).map((format) => ({ label: format === 'csv' ? 'CSV file' : 'Excel file', path: `${path}?${asked}format=${format}`, fileName: `${fileName}.${format}` }));
}
