import { Box, Table, TableBody, TableCell, TableContainer, TableHead, TableRow } from '@mui/material';
import { moneyText } from '../../format/money.ts';
import type { ExplainedSum } from './types.ts';

/** Rows that visibly make their total; how an amount comes about stands below its words. */
export function SumTable({ sum }: { sum: ExplainedSum }) {
  return (
    <TableContainer tabIndex={0} role="region" aria-label={sum.title}>
      <Table size="small" sx={{ maxWidth: 760, '& th, & td': { px: { xs: 0.75, sm: 1.5 }, verticalAlign: 'top' } }}>
        <TableHead>
          <TableRow>
            <TableCell>What</TableCell>
            <TableCell align="right">Amount</TableCell>
          </TableRow>
        </TableHead>
        <TableBody>
          {sum.rows.map(({ words, amountCents, detail }) => (
            <TableRow key={words}>
              <TableCell component="th" scope="row" sx={{ fontWeight: 400 }}>
                {words}
                {detail && <Box component="span" className="tabular" sx={{ display: 'block', color: 'text.secondary' }}>{detail}</Box>}
              </TableCell>
              <TableCell align="right" className="tabular">{moneyText(amountCents)}</TableCell>
            </TableRow>
          ))}
          <TableRow sx={{ '& th, & td': { borderTop: 2, borderColor: 'text.primary', borderBottom: 0, fontWeight: 700 } }}>
            <TableCell component="th" scope="row">{sum.total.words}</TableCell>
            <TableCell align="right" className="tabular">{moneyText(sum.total.amountCents)}</TableCell>
          </TableRow>
        </TableBody>
      </Table>
    </TableContainer>
  );
}
