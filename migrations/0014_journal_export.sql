-- The money journal leaves for the district's books: a layout each seller maps once, and batches that can be seen again byte for byte.

alter table number_series drop constraint number_series_kind_check;
alter table number_series add constraint number_series_kind_check
  check (kind in ('contract', 'invoice', 'creditMemo', 'payment', 'receipt', 'depositSlip', 'journalBatch'));

create table journal_layout (
  department_id uuid not null references department (id),
  id uuid not null,
  seller_id uuid not null,
  name text not null,
  columns jsonb not null,
  code_strings jsonb not null default '[]',
  options jsonb not null default '{}',
  version integer not null default 1,
  primary key (department_id, id),
  constraint "layout-of-seller-taken" unique (department_id, seller_id),
  constraint "unknown-seller" foreign key (department_id, seller_id) references seller (department_id, id)
);
call keep_with_audit('journal_layout');

create table journal_batch (
  department_id uuid not null references department (id),
  id uuid not null,
  number text not null,
  fiscal_year integer not null,
  series_number integer not null,
  seller_id uuid not null,
  through_on date not null,
  layout jsonb not null,
  entry_count integer not null check (entry_count > 0),
  debit_cents bigint not null check (debit_cents >= 0),
  content bytea not null,
  made_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "batch-number-taken" unique (department_id, seller_id, fiscal_year, series_number),
  constraint "unknown-seller" foreign key (department_id, seller_id) references seller (department_id, id)
);
call keep_as_history('journal_batch');

create table journal_batch_entry (
  department_id uuid not null references department (id),
  id uuid not null,
  journal_batch_id uuid not null,
  entry_id uuid not null,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "entry-exported-already" unique (department_id, entry_id),
  constraint "unknown-journal-batch" foreign key (department_id, journal_batch_id) references journal_batch (department_id, id),
  constraint "unknown-entry" foreign key (department_id, entry_id) references ledger_entry (department_id, id)
);
create index journal_batch_entry_batch on journal_batch_entry (department_id, journal_batch_id);
call keep_as_history('journal_batch_entry');
