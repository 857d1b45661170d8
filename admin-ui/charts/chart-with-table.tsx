import { Box, Button, Typography } from '@mui/material';
import { useId, useState, type ReactNode } from 'react';
import { openPdf } from '../api/pdf.ts';
import type { Paper } from '../books/download-buttons.tsx';

interface Props {
  title: string;
  /** what the chart shows, in one sentence with its figures */
  summary: string;
  chart: ReactNode;
  /** the same figures as a table; it is a click away, and always on paper */
  table: ReactNode;
  /** `chartFiles(path, query, name)` of the route that answers `?as=csv|xlsx` */
  files?: readonly Paper[];
  /** what is said where nothing is to be drawn yet; then neither chart nor table is there */
  empty?: ReactNode;
  /** of which order the heading is; its section has the one above */
  level?: 'h2' | 'h3';
}

/** A figure: heading, one sentence, the chart, the table behind it and its files. */
export function ChartWithTable({ title, summary, chart, table, files = [], empty, level = 'h2' }: Props) {
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  if (empty) return <Box component="section" sx={{ mb: 3 }}><Typography variant={level} sx={{ mb: 1 }}>{title}</Typography>{empty}</Box>;
  return (
    <Box component="figure" aria-labelledby={`${id}-title`} sx={{ m: 0, mb: 3, minWidth: 0, breakInside: 'avoid' }}>
      <Typography id={`${id}-title`} variant={level}>{title}</Typography>
      <Typography sx={{ maxWidth: '70ch', mb: 1.5 }}>{summary}</Typography>
      <Box role="img" aria-label={`Chart: ${title}. ${summary}`} sx={{ width: '100%', maxWidth: 960, minWidth: 0 }}>{chart}</Box>
      <Box sx={{ display: 'flex', gap: 1, flexWrap: 'wrap', my: 1, '@media print': { display: 'none' } }}>
        <Button variant="outlined" aria-expanded={isOpen} aria-controls={`${id}-table`} onClick={() => setOpen(!isOpen)}>{isOpen ? 'Hide the table' : 'Show as a table'}</Button>
        <FileButtons files={files} />
      </Box>
      <Box id={`${id}-table`} sx={{ display: isOpen ? 'block' : 'none', '@media print': { display: 'block' } }}>{table}</Box>
    </Box>
  );
}

/** They work on a sponsor's page too, where there is no office around them. */
function FileButtons({ files }: { files: readonly Paper[] }) {
  const [told, setTold] = useState<string | null>(null);
  const fetchFile = ({ path, fileName }: Paper) => {
    setTold(null);
    openPdf(path, fileName).catch((error: Error) => setTold(error.message));
  };
  return (
    <>
      {files.map((file) => <Button key={file.label} variant="outlined" onClick={() => fetchFile(file)}>{file.label}</Button>)}
      {told && <Typography role="alert" color="error" sx={{ alignSelf: 'center' }}>{told}</Typography>}
    </>
  );
}

/** CSV and Excel of a board. */
export function chartFiles(path: string, query: string, fileName: string): Paper[] {
  return (['csv', 'xlsx'] as const).map((as) => ({ label: as === 'csv' ? 'CSV file' : 'Excel file', path: `${path}?${query ? `${query}&` : ''}as=${as}`, fileName: `${fileName}.${as}` }));
}
