import { Paper, Table, TableBody, TableCell, TableContainer, TableHead, TableRow, TableSortLabel } from '@mui/material';
import { rowKey, type Column, type RowsProps } from './rows.tsx';

interface Sorting {
  sort?: { field: string; order: string };
  onSort?: (field: string) => void;
}

function Heading<T>({ column, sort, onSort }: { column: Column<T> } & Sorting) {
  const { label, sortBy } = column;
  if (!sortBy || !onSort) return <>{label}</>;
  const active = sort?.field === sortBy;
  return (
    <TableSortLabel active={active} direction={active && sort?.order === 'DESC' ? 'desc' : 'asc'} onClick={() => onSort(sortBy)} sx={{ minHeight: 28 }}>
      {label}
    </TableSortLabel>
  );
}

export function WideTable<T extends object>({ label, columns, rows, keyOf, sort, onSort }: RowsProps<T> & Sorting) {
  return (
    <TableContainer component={Paper} variant="outlined" tabIndex={0} role="region" aria-label={label}>
      <Table>
        <TableHead>
          <TableRow>
            {columns.map((column) => (
              <TableCell
                key={column.label}
                align={column.numeric ? 'right' : 'left'}
                {...(column.sortBy && sort?.field === column.sortBy ? { sortDirection: sort.order === 'DESC' ? 'desc' as const : 'asc' as const } : {})}
              >
                <Heading column={column} {...(sort ? { sort } : {})} {...(onSort ? { onSort } : {})} />
              </TableCell>
            ))}
          </TableRow>
        </TableHead>
        <TableBody>
          {rows.map((row, place) => (
            <TableRow key={rowKey(row, place, keyOf)} hover>
              {columns.map((column, at) => (
                <TableCell key={column.label} align={column.numeric ? 'right' : 'left'} className={column.numeric ? 'tabular' : ''} {...(at === 0 ? { component: 'th', scope: 'row', sx: { fontWeight: 600 } } : {})}>
                  {column.show(row)}
                </TableCell>
              ))}
            </TableRow>
          ))}
        </TableBody>
      </Table>
    </TableContainer>
  );
}
