import { Table, TableBody, TableCell, TableContainer, TableHead, TableRow } from '@mui/material';

export interface Compared {
  name: string;
  before: string;
  after: string;
}

/** Figures before and after, side by side; what changes is set in bold. */
export function BeforeAfter({ label, first, rows }: { label: string; first: string; rows: readonly Compared[] }) {
  return (
    <TableContainer tabIndex={0} role="region" aria-label={label} sx={{ mb: 2 }}>
      <Table size="small" sx={{ '& th, & td': { px: { xs: 0.75, sm: 1.5 } } }}>
        <TableHead>
          <TableRow>
            <TableCell>{first}</TableCell>
            <TableCell align="right">Before</TableCell>
            <TableCell align="right">After</TableCell>
          </TableRow>
        </TableHead>
        <TableBody>
          {rows.map(({ name, before, after }) => (
            <TableRow key={name}>
              <TableCell component="th" scope="row">{name}</TableCell>
              <TableCell align="right" className="tabular">{before}</TableCell>
              <TableCell align="right" className="tabular" sx={{ fontWeight: before === after ? 400 : 700 }}>{after}</TableCell>
            </TableRow>
          ))}
        </TableBody>
      </Table>
    </TableContainer>
  );
}
