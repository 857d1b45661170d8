import { Paper, Table, TableBody, TableCell, TableContainer, TableFooter, TableHead, TableRow, Typography } from '@mui/material';
import { useEffect, useRef, useState } from 'react';
import type { ReactNode } from 'react';
import type { Theme } from '@mui/material';
import { moneyText } from '../format/money.ts';
import type { Column } from '../lists/rows.tsx';

/** A column of a report; a sum stands under it where it has one. */
export interface ReportColumn<T> extends Column<T> {
  sum?: ReactNode;
}

/** Amounts in a report: nothing is a dash, so that what is something stands out. */
export const some = (cents: number): string => (cents === 0 ? '–' : moneyText(cents));

const STAYS = {
  position: 'sticky', left: 0, zIndex: 1, minWidth: { xs: 130, sm: 200 }, maxWidth: { xs: 150, sm: 320 }, overflowWrap: 'anywhere', whiteSpace: 'normal',
  boxShadow: (theme: Theme) => `inset -1px 0 0 ${theme.palette.divider}`,
} as const;

/** A long heading breaks, so that more columns are in sight. */
const HEADING = { whiteSpace: 'normal', minWidth: 88, lineHeight: 1.25 } as const;

/** Figures side by side, which no card can show: the table scrolls in its own box, and its first column stays. */
export function ReportTable<T extends object>({ label, columns, rows, keyOf }: { label: string; columns: readonly ReportColumn<T>[]; rows: readonly T[]; keyOf: (row: T) => string }) {
  const isSummed = columns.some((column) => column.sum !== undefined);
  const side = (column: ReportColumn<T>) => (column.numeric ? ('right' as const) : ('left' as const));
  const figure = (column: ReportColumn<T>) => (column.numeric ? { className: 'tabular', sx: { whiteSpace: 'nowrap' } } : {});
  const box = useRef<HTMLDivElement>(null);
  const [scrolls, setScrolls] = useState(false);
  useEffect(() => {
    const look = () => setScrolls(box.current !== null && box.current.scrollWidth > box.current.clientWidth + 1);
    const watch = new ResizeObserver(look);
    if (box.current) watch.observe(box.current);
    look();
    return () => watch.disconnect();
  }, [rows]);
  return (
    <>
    {scrolls && <Typography variant="body2" color="text.secondary" sx={{ mb: 0.5 }}>More columns to the right</Typography>}
    <TableContainer ref={box} component={Paper} variant="outlined" tabIndex={0} role="region" aria-label={label}>
      <Table>
        <TableHead>
          <TableRow>
            {columns.map((column, at) => <TableCell key={column.label} align={side(column)} sx={at === 0 ? STAYS : HEADING}>{column.label}</TableCell>)}
          </TableRow>
        </TableHead>
        <TableBody>
          {rows.map((row) => (
            <TableRow key={keyOf(row)}>
              {columns.map((column, at) =>
                at === 0 ? (
                  <TableCell key={column.label} component="th" scope="row" sx={{ ...STAYS, fontWeight: 600, bgcolor: 'background.paper' }}>{column.show(row)}</TableCell>
                ) : (
                  <TableCell key={column.label} align={side(column)} {...figure(column)}>{column.show(row)}</TableCell>
                ),
              )}
            </TableRow>
          ))}
        </TableBody>
        {isSummed && (
          <TableFooter sx={{ '& td, & th': { color: 'text.primary', fontWeight: 700, borderTop: 2, borderColor: 'text.primary', bgcolor: 'background.paper' } }}>
            <TableRow>
              {columns.map((column, at) =>
                at === 0 ? (
                  <TableCell key={column.label} component="th" scope="row" sx={STAYS}>{column.sum ?? 'Total'}</TableCell>
                ) : (
                  <TableCell key={column.label} align={side(column)} {...figure(column)}>{column.sum}</TableCell>
                ),
              )}
            </TableRow>
          </TableFooter>
        )}
      </Table>
    </TableContainer>
    </>
  );
}
