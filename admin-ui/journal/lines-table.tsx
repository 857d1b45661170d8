import { Box } from '@mui/material';

/** Lines of the journal cell by cell, as the file will hold them; wide ones are moved sideways. */
export function LinesTable({ label, headings, rows }: { label: string; headings: readonly string[]; rows: readonly (readonly string[])[] }) {
  return (
    <Box role="region" aria-label={label} tabIndex={0} sx={{ overflowX: 'auto', border: 1, borderColor: 'divider', borderRadius: 1 }}>
      <Box component="table" className="tabular" sx={{ borderCollapse: 'collapse', width: '100%', '& th, & td': { px: 1, py: 0.5, textAlign: 'left', whiteSpace: 'nowrap', borderBottom: 1, borderColor: 'divider' } }}>
        <thead>
          <tr>{headings.map((heading, place) => <th key={place} scope="col">{heading || `Column ${place + 1}`}</th>)}</tr>
        </thead>
        <tbody>
          {rows.map((row, line) => <tr key={line}>{row.map((cell, place) => <td key={place}>{cell}</td>)}</tr>)}
        </tbody>
      </Box>
    </Box>
  );
}
