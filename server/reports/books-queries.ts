/** An invariant of the books: a query that finds what breaks it. `$1` is the department; no row means it holds. */
export interface BookQuery {
  id: string;
  sentence: string;
  sql: string;
}

const readBalances = `
  select commitment_id, game_id, account, sum(amount)::bigint as amount from (
    select commitment_id, game_id, to_account as account, amount from posting where department_id = $1 and journal = 'reads'
    union all
    select commitment_id, game_id, from_account, -amount from posting where department_id = $1 and journal = 'reads') as moved
  group by commitment_id, game_id, account`;

const readFigures = `
  select commitment_id, game_id, coalesce(sum(amount) filter (where account = 'promised'), 0) as promised,
    coalesce(sum(amount) filter (where account = 'owed'), 0) as owed, coalesce(sum(amount) filter (where account = 'given'), 0) as given,
    coalesce(sum(amount) filter (where account = 'madeGood'), 0) as made_good, coalesce(sum(amount) filter (where account = 'credited'), 0) as credited,
    coalesce(sum(amount) filter (where account = 'released'), 0) as released, coalesce(sum(amount) filter (where account = 'carried'), 0) as carried,
    coalesce(sum(amount) filter (where account = 'extra'), 0) as extra, coalesce(sum(amount) filter (where account = 'unpromised'), 0) as unpromised
  from (${readBalances}) as balance group by commitment_id, game_id`;

const moneyBalance = (account: string, key: string) => `
  select ${key} as key, sum(amount)::bigint as amount from (
    select ${key}, amount from posting where department_id = $1 and journal = 'money' and to_account = '${account}'
    union all
    select ${key}, -amount from posting where department_id = $1 and journal = 'money' and from_account = '${account}') as moved
  group by ${key}`;

export const BOOK_QUERIES: readonly BookQuery[] = [
  {
    id: 'I1',
    sentence: 'every log entry of a night is there once, numbered without a gap',
    sql: `select night_id, count(*) as entries, max(number) as last from log_entry where department_id = $1
          group by night_id having count(*) <> max(number) or min(number) <> 1`,
  },
  {
    id: 'I2',
    sentence: 'each entry holds postings of its own journal only, and what was carried over sums to zero',
    sql: `select posting.id from posting join ledger_entry on ledger_entry.department_id = posting.department_id and ledger_entry.id = posting.entry_id
           where posting.department_id = $1 and (posting.journal <> ledger_entry.journal or posting.event_id <> ledger_entry.event_id)
          union all
          select null where (select coalesce(sum(case when to_account = 'carried' then amount when from_account = 'carried' then -amount else 0 end), 0)
            from posting where department_id = $1 and journal = 'reads') <> 0`,
  },
  {
    id: 'I3',
    sentence: 'document numbers have no gap and no repeat per seller of record, kind and fiscal year',
    sql: `select seller_id, kind, fiscal_year from (
            select seller_id, 'invoice' as kind, fiscal_year, series_number from invoice where department_id = $1 and kind <> 'opening'
            union all select seller_id, 'creditMemo', fiscal_year, series_number from credit_memo where department_id = $1
            union all select seller_id, 'payment', coalesce(fiscal_year, (regexp_match(number, '-(\\d+)-\\d+$'))[1]::integer),
                coalesce(series_number, (regexp_match(number, '-(\\d+)$'))[1]::integer) from payment where department_id = $1 and method <> 'opening'
            union all select seller_id, 'receipt', fiscal_year, series_number from receipt where department_id = $1
            union all select seller_id, 'depositSlip', fiscal_year, series_number from deposit_slip where department_id = $1
            union all select null, 'offer', split_part(number, '-', 2)::integer, split_part(number, '-', 3)::integer from offer where department_id = $1 and number is not null) as numbered
          group by seller_id, kind, fiscal_year
          having min(series_number) <> 1 or max(series_number) <> count(*) or count(distinct series_number) <> count(*)`,
  },
  {
    id: 'I4',
    sentence: 'a read is counted once at most, never after it was taken back, and a read or an installment stands on one live invoice at most',
    sql: `select counted_read.id from counted_read join log_entry as undo
            on undo.department_id = counted_read.department_id and undo.takes_back_entry_id = counted_read.entry_id
           where counted_read.department_id = $1
          union all
          select billed_read.id from billed_read join invoice_void
            on invoice_void.department_id = billed_read.department_id and invoice_void.invoice_id = billed_read.invoice_id
           where billed_read.department_id = $1
          union all
          select term_id from (
            select invoice.term_id, traced_to->>'installment' as installment from invoice_line
              join invoice on invoice.department_id = $1 and invoice.id = invoice_line.invoice_id
             where invoice_line.department_id = $1 and traced_to ? 'installment' and not exists (select from invoice_void
               where invoice_void.department_id = $1 and invoice_void.invoice_id = invoice.id)) as billed
          group by term_id, installment having count(*) > 1`,
  },
  {
    id: 'I5',
    sentence: 'an invoice is its lines plus its tax; payments, memos, discounts and write-offs together are no more than its gross, and a void one has none of them',
    sql: `select invoice.id from invoice
           where department_id = $1 and kind <> 'opening' and net_cents <> (select coalesce(sum(amount_cents), 0) from invoice_line
             where invoice_line.department_id = $1 and invoice_line.invoice_id = invoice.id)
          union all
          select invoice_id from invoice_standing where department_id = $1 and (balance_cents < 0 or least(applied_cents, discount_cents, written_off_cents) < 0
            or is_void and (applied_cents <> 0 or discount_cents <> 0 or written_off_cents <> 0))
          union all
          select invoice.id from invoice join invoice_line as line on line.department_id = $1 and line.invoice_id = invoice.id
           where invoice.department_id = $1 group by invoice.department_id, invoice.id
          having count(*) = count(line.tax_cents) and sum(line.tax_cents) <> invoice.tax_cents
          union all
          select line.id from billing_run_line as line left join invoice on invoice.department_id = $1 and invoice.id = line.invoice_id
           where line.department_id = $1 and (line.outcome = 'issued') <> (invoice.id is not null and invoice.contract_id = line.contract_id
             and invoice.net_cents = line.net_cents and invoice.gross_cents = line.gross_cents)
          union all
          select key from (${moneyBalance('1100', 'invoice_id')}) as receivable where amount < 0`,
  },
  {
    id: 'I6',
    sentence: 'reads owed, given, made good, credited, released and carried add up to what was promised; nothing is extra while reads are owed',
    sql: `select * from (${readFigures}) as reads
          where owed + given + made_good + credited + released + carried <> -promised
             or least(owed, given, made_good, credited, released, extra) < 0 or extra <> -unpromised or extra * owed <> 0`,
  },
  {
    id: 'I8',
    sentence: 'every foreign key between tenant tables carries the department',
    sql: `select conname from pg_constraint where contype = 'f' and $1::uuid is not null
            and confrelid in (select attrelid from pg_attribute where attname = 'department_id' and attnum > 0)
            and conrelid in (select attrelid from pg_attribute where attname = 'department_id' and attnum > 0)
            and not exists (select from unnest(conkey) as key join pg_attribute on attrelid = conrelid and attnum = key where attname = 'department_id')
            and confrelid not in ('department'::regclass, 'session'::regclass)`,
  },
  {
    id: 'I10',
    sentence: 'every idempotency record answers as it did the first time',
    sql: `select id from idempotency_record where department_id = $1 and (status not between 200 and 299 or payload_digest !~ '^[0-9a-f]{64}$')`,
  },
  {
    id: 'I12',
    sentence: 'tax payable is the tax of live invoices less that of credit memos and discounts',
    sql: `select seller_id from (
            select seller_id, sum(amount) as amount from (
              select seller_id, tax_cents as amount from invoice where department_id = $1 and kind <> 'opening' and not exists (select from invoice_void
                where invoice_void.department_id = $1 and invoice_void.invoice_id = invoice.id)
              union all select seller_id, -tax_cents from credit_memo where department_id = $1
              union all select invoice.seller_id, -invoice_discount.tax_cents from invoice_discount
                join invoice on invoice.department_id = $1 and invoice.id = invoice_discount.invoice_id where invoice_discount.department_id = $1
              union all select key, amount from (${moneyBalance('2200', 'seller_id')}) as payable) as parts
            group by seller_id) as difference where amount <> 0`,
  },
  {
    id: 'I13',
    sentence: 'the receivable of each invoice is what is open on it; unapplied credit is what is left of payments and memos; nothing is booked to a document that is not there',
    sql: `select coalesce(standing.invoice_id, receivable.key) from (select * from invoice_standing where department_id = $1) as standing
            full join (${moneyBalance('1100', 'invoice_id')}) as receivable on receivable.key = standing.invoice_id
           where coalesce(standing.balance_cents, 0) <> coalesce(receivable.amount, 0)
          union all
          select coalesce(standing.credit_id, unapplied.key) from (select * from credit_standing where department_id = $1) as standing
            full join (${moneyBalance('2150', 'unapplied_id')}) as unapplied on unapplied.key = standing.credit_id
           where coalesce(standing.left_cents, 0) <> -coalesce(unapplied.amount, 0)
          union all
          select credit_id from credit_standing where department_id = $1 and (left_cents < 0 or least(applied_cents, refunded_cents) < 0 or is_returned and (applied_cents <> 0 or refunded_cents <> 0))`,
  },
  {
    id: 'I14',
    sentence: 'nothing was booked into a month after it was closed',
    sql: `select ledger_event.id from ledger_event join month_close on month_close.department_id = ledger_event.department_id
            and ledger_event.booked_on < (month_close.month + interval '1 month')::date and ledger_event.recorded_at > month_close.recorded_at
           where ledger_event.department_id = $1`,
  },
  {
    id: 'I15',
    sentence: 'a closed contract owes no read, has nothing to bill and no contract balance; its invoices are settled and its credit memos are used',
    sql: `select term.id from term where term.department_id = $1 and term.closed_on is not null and exists (
            select from posting, lateral (values (to_account, amount), (from_account, -amount)) as side (account, moved)
             where posting.department_id = $1 and posting.term_id = term.id and (journal, account) in (('reads', 'owed'), ('agreed', 'toBill'), ('money', '2100'))
             group by journal, account having sum(moved) <> 0)
          union all
          select invoice.id from term join invoice on invoice.department_id = $1 and invoice.contract_id = term.contract_id
            join invoice_standing as standing on standing.department_id = $1 and standing.invoice_id = invoice.id
           where term.department_id = $1 and term.closed_on is not null and standing.balance_cents <> 0
          union all
          select memo.id from term join credit_memo as memo on memo.department_id = $1 and memo.contract_id = term.contract_id
            join credit_standing as standing on standing.department_id = $1 and standing.credit_id = memo.id
           where term.department_id = $1 and term.closed_on is not null and standing.left_cents <> 0`,
  },
  {
    id: 'I16',
    sentence: 'a request for a write-off is answered once, and what was recovered of an invoice was written off before',
    sql: `select answer.id from write_off as answer join write_off as request on request.department_id = $1 and request.id = answer.answers_write_off_id
           where answer.department_id = $1 and (request.step <> 'asked' or answer.step not in ('writtenOff', 'declined') or request.invoice_id <> answer.invoice_id
             or answer.step = 'writtenOff' and answer.amount_cents <> request.amount_cents)
          union all
          select write_off.id from write_off where department_id = $1 and (step in ('writtenOff', 'recovered')) <> (event_id is not null)`,
  },
  {
    id: 'I17',
    sentence: 'what lies in a seller’s drawer is what was taken in and neither deposited nor taken out; each deposit slip is its lines',
    sql: `select seller_id from (
            select seller_id, sum(amount) as amount from (
              select seller_id, amount_cents as amount from payment where department_id = $1 and drawer = 'undepositedReceipts'
                and not exists (select from deposit_slip_line as line where line.department_id = $1 and line.payment_id = payment.id)
                and not exists (select from payment_return where payment_return.department_id = $1 and payment_return.payment_id = payment.id)
              union all select key, -amount from (${moneyBalance('1050', 'seller_id')}) as drawer) as parts
            group by seller_id) as difference where amount <> 0
          union all
          select slip.id from deposit_slip as slip where slip.department_id = $1 and slip.expected_cents <> (select coalesce(sum(line.amount_cents), 0)
            from deposit_slip_line as line where line.department_id = $1 and line.deposit_slip_id = slip.id)
          union all
          select line.id from deposit_slip_line as line
            join deposit_slip as slip on slip.department_id = $1 and slip.id = line.deposit_slip_id
            join payment on payment.department_id = $1 and payment.id = line.payment_id
           where line.department_id = $1 and (payment.seller_id <> slip.seller_id or payment.amount_cents <> line.amount_cents or payment.drawer is distinct from 'undepositedReceipts')`,
  },
  {
    id: 'I18',
    sentence: 'a hold is lifted on its own contract, and not before it began',
    sql: `select lift.id from contract_hold as lift join contract_hold as hold on hold.department_id = $1 and hold.id = lift.lifts_hold_id
           where lift.department_id = $1 and (lift.contract_id <> hold.contract_id or lift.held_on < hold.held_on or hold.lifts_hold_id is not null)`,
  },
  {
    id: 'I19',
    sentence: 'what was counted as read, and was not taken back, is claimed by its entries of the log, once for each time; nothing else is',
    sql: `select claim.id from counted_read as claim join ledger_event as event on event.department_id = $1 and event.id = claim.event_id
           where claim.department_id = $1 and (event.happening ->> 'kind' not in ('readCounted', 'makegoodGiven') or exists (
             select from ledger_event as later where later.department_id = $1 and later.takes_back_event_id = event.id))
          union all
          select event.id from ledger_event as event
            left join (select event_id, count(*) as times from counted_read where department_id = $1 group by event_id) as claimed on claimed.event_id = event.id
           where event.department_id = $1 and event.happening ->> 'kind' = 'readCounted' and coalesce(claimed.times, 0) <> coalesce((event.happening ->> 'times')::integer, 1)
             and not exists (select from ledger_event as later where later.department_id = $1 and later.takes_back_event_id = event.id)`,
  },
];
