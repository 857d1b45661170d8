import { Go } from '../fields/go.tsx';
import { instantText } from '../format/instant.ts';
import { choiceFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { fieldWord, TABLE_CHOICES, tablePage, tableWord } from './table-words.ts';
import type { AuditRow } from './types.ts';

const ACTIONS = { insert: 'Added', update: 'Changed', delete: 'Removed' };

function Record({ row }: { row: AuditRow }) {
  const page = tablePage(row.tableName);
  return page && row.action !== 'delete' ? <Go resource={page} id={row.rowId}>{tableWord(row.tableName)}</Go> : <>{tableWord(row.tableName)}</>;
}

export const AuditList = () => (
  <ListPage<AuditRow>
    title="Audit"
    lead={<p>Who changed which record, and which of its fields. What stood in a field is not kept here, so that a student’s name can be erased.</p>}
    sort={{ field: 'recordedAt', order: 'DESC' }}
    filters={[choiceFilter('q', 'Kind of record', TABLE_CHOICES)]}
    empty="Nothing was changed yet."
    columns={[
      { label: 'Record', show: (row) => <Record row={row} /> },
      { label: 'What', show: (row) => ACTIONS[row.action] },
      { label: 'Fields', show: (row) => (row.action === 'update' ? row.fields.map(fieldWord).join(', ') : '–') },
      { label: 'By', show: (row) => row.personName ?? 'The program' },
      { label: 'When', sortBy: 'recordedAt', show: (row) => instantText(row.recordedAt) },
    ]}
  />
);
