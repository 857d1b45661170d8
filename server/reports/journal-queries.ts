import type { BookQuery } from './books-queries.ts';

/** What must be true of the batches in which the journal left. */
export const JOURNAL_QUERIES: readonly BookQuery[] = [
  {
    id: 'I30',
    sentence: 'the numbers of journal batches have no gap and no repeat per seller of record and fiscal year',
    sql: `select seller_id, fiscal_year from journal_batch where department_id = $1 group by seller_id, fiscal_year
          having min(series_number) <> 1 or max(series_number) <> count(*) or count(distinct series_number) <> count(*)`,
  },
  {
    id: 'I31',
    sentence: 'a journal batch holds whole money entries of its seller through its day, and its debits are theirs',
    sql: `select batch.id from journal_batch as batch
           where department_id = $1 and (
             entry_count <> (select count(*) from journal_batch_entry where journal_batch_entry.department_id = $1 and journal_batch_entry.journal_batch_id = batch.id)
             or debit_cents <> (select coalesce(sum(greatest(amount, 0)), 0) from (
               select entry_id, account, sum(amount) as amount from (
                 select posting.entry_id, to_account as account, amount from posting join journal_batch_entry on journal_batch_entry.department_id = $1
                   and journal_batch_entry.entry_id = posting.entry_id where posting.department_id = $1 and journal_batch_entry.journal_batch_id = batch.id
                 union all
                 select posting.entry_id, from_account, -amount from posting join journal_batch_entry on journal_batch_entry.department_id = $1
                   and journal_batch_entry.entry_id = posting.entry_id where posting.department_id = $1 and journal_batch_entry.journal_batch_id = batch.id) as moved
               group by entry_id, account) as changed))
          union all
          select batch_entry.id from journal_batch_entry as batch_entry
            join journal_batch as batch on batch.department_id = $1 and batch.id = batch_entry.journal_batch_id
            join ledger_entry as entry on entry.department_id = $1 and entry.id = batch_entry.entry_id
            join ledger_event as event on event.department_id = $1 and event.id = entry.event_id
           where batch_entry.department_id = $1 and (entry.journal <> 'money' or event.seller_id <> batch.seller_id or event.booked_on > batch.through_on)`,
  },
];
