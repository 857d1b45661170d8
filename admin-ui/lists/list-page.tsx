import { Box, Button } from '@mui/material';
import type { ReactElement, ReactNode } from 'react';
import { FilterForm, ListBase, Pagination, Title, useListContext, useResourceContext } from 'react-admin';
import { Link } from 'react-router';
import { Waiting } from '../layout/waiting.tsx';
import { iMay } from '../session/rights.ts';
import { EmptyList } from './empty-list.tsx';
import { Rows, type Column } from './rows.tsx';

interface Props<T> {
  title: string;
  columns: readonly Column<T>[];
  filters?: ReactElement[];
  filterDefaults?: Record<string, unknown>;
  sort?: { field: string; order: 'ASC' | 'DESC' };
  /** What stands here before there is anything: what it is for and what to do next. */
  empty: ReactNode;
  addLabel?: string;
  actions?: ReactNode;
  lead?: ReactNode;
}

function ListSheet<T extends object>({ title, columns, filters, filterDefaults, empty, addLabel, actions, lead }: Props<T>) {
  const { data, total, isPending, error, sort, setSort, filterValues, setFilters } = useListContext();
  const resource = useResourceContext()!;
  const add = addLabel && iMay(resource, 'create') ? (
    <Button component={Link} to={`/${resource}/create`} variant="contained">{addLabel}</Button>
  ) : null;
  const filtered = Object.values(filterValues ?? {}).some((value) => value !== undefined && value !== '' && value !== null);
  const asOpened = JSON.stringify(filterValues ?? {}) === JSON.stringify(filterDefaults ?? {});
  const nothing = !isPending && !error && (total ?? 0) === 0;
  return (
    <>
      <Title title={title} />
      {lead}
      <Box sx={{ display: 'flex', gap: 1.5, flexWrap: 'wrap', alignItems: 'flex-start', justifyContent: 'space-between', mb: 1.5 }}>
        <Box sx={{ '& .RaFilterForm-root, & form': { p: 0, gap: 1 }, flex: '1 1 320px', minWidth: 0 }}>{filters && (!nothing || filtered) && <FilterForm filters={filters} />}</Box>
        <Box sx={{ display: 'flex', gap: 1, flexWrap: 'wrap' }}>{actions}{!(nothing && !filtered) && add}</Box>
      </Box>
      {isPending && <Waiting />}
      {error && <EmptyList>{(error as Error).message}</EmptyList>}
      {nothing && !filtered && <EmptyList action={add}>{empty}</EmptyList>}
      {nothing && filtered && <EmptyList action={<Button variant="outlined" onClick={() => setFilters({})}>Show everything</Button>}>{asOpened ? empty : 'Nothing matches what you are looking for.'}</EmptyList>}
      {!isPending && !error && !nothing && (
        <>
          <Rows<T> label={title} columns={columns} rows={(data ?? []) as T[]} sort={sort} onSort={(field) => setSort({ field, order: sort.field === field && sort.order === 'ASC' ? 'DESC' : 'ASC' })} />
          {(total ?? 0) > 25 && <Pagination rowsPerPageOptions={[25, 50, 100]} />}
        </>
      )}
    </>
  );
}

/** The page of a resource's list. */
export function ListPage<T extends object>({ sort, ...props }: Props<T>) {
  const { filterDefaults } = props;
  return (
    <ListBase perPage={25} {...(sort ? { sort } : {})} {...(filterDefaults ? { filterDefaultValues: filterDefaults } : {})}>
      <ListSheet<T> {...props} />
    </ListBase>
  );
}
