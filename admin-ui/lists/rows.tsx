import { useMediaQuery, type Theme } from '@mui/material';
import type { ReactNode } from 'react';
import { Cards } from './cards.tsx';
import { WideTable } from './wide-table.tsx';

export interface Column<T> {
  label: string;
  show: (record: T) => ReactNode;
  /** The field the list is sorted by when the heading is pressed; left out where it cannot be. */
  sortBy?: string;
  numeric?: boolean;
}

export interface RowsProps<T> {
  label: string;
  columns: readonly Column<T>[];
  rows: readonly T[];
  keyOf?: (row: T, place: number) => string;
}

/** Rows as a table where there is room and as cards on a phone; the first column names the row. */
export function Rows<T extends object>(props: RowsProps<T> & { sort?: { field: string; order: string }; onSort?: (field: string) => void }) {
  const small = useMediaQuery<Theme>((theme) => theme.breakpoints.down('md'));
  return small ? <Cards {...props} /> : <WideTable {...props} />;
}

export function rowKey<T extends object>(row: T, place: number, keyOf?: (row: T, place: number) => string): string {
  return keyOf ? keyOf(row, place) : String((row as { id?: string }).id ?? place);
}
