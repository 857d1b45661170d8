-- Two journals that owe both ways, joined by the event that causes them; a posting moves an amount, so an entry balances by construction.

create table account (
  department_id uuid not null references department (id),
  id uuid not null,
  code text not null,
  name text not null,
  outside_code text,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "account-code-taken" unique (department_id, code)
);
call keep_with_audit('account');

create table month_close (
  department_id uuid not null references department (id),
  id uuid not null,
  month date not null check (month = date_trunc('month', month)::date),
  closed_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "month-already-closed" unique (department_id, month)
);
call keep_as_history('month_close');

create table ledger_event (
  department_id uuid not null references department (id),
  id uuid not null,
  cause text not null,
  cause_id uuid,
  contract_id uuid,
  term_id uuid,
  seller_id uuid,
  place integer,
  happening jsonb not null,
  occurred_on date not null,
  booked_on date not null,
  takes_back_event_id uuid,
  recorded_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "event-taken-back-already" unique (department_id, takes_back_event_id),
  constraint "event-place-taken" unique (department_id, term_id, place),
  constraint "unknown-event" foreign key (department_id, takes_back_event_id) references ledger_event (department_id, id)
);
create index ledger_event_contract on ledger_event (department_id, contract_id, occurred_on desc);
create index ledger_event_cause on ledger_event (department_id, cause_id);
call keep_as_history('ledger_event');

create table ledger_entry (
  department_id uuid not null references department (id),
  id uuid not null,
  event_id uuid not null,
  journal text not null check (journal in ('reads', 'agreed', 'money')),
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "entry-written-twice" unique (department_id, event_id, journal),
  constraint "unknown-event" foreign key (department_id, event_id) references ledger_event (department_id, id)
);
call keep_as_history('ledger_entry');

create table posting (
  department_id uuid not null references department (id),
  id uuid not null,
  entry_id uuid not null,
  event_id uuid not null,
  journal text not null check (journal in ('reads', 'agreed', 'money')),
  from_account text not null,
  to_account text not null,
  amount bigint not null constraint "amount-not-above-zero" check (amount > 0),
  contract_id uuid,
  term_id uuid,
  commitment_id uuid,
  game_id uuid,
  seller_id uuid,
  invoice_id uuid,
  unapplied_id uuid,
  occurred_on date not null,
  effective_on date not null,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "posting-to-itself" check (from_account <> to_account),
  constraint "unknown-entry" foreign key (department_id, entry_id) references ledger_entry (department_id, id),
  constraint "unknown-event" foreign key (department_id, event_id) references ledger_event (department_id, id)
);
create index posting_contract on posting (department_id, contract_id, effective_on desc) include (journal, from_account, to_account, amount, commitment_id);
create index posting_from on posting (department_id, from_account, effective_on) include (amount);
create index posting_to on posting (department_id, to_account, effective_on) include (amount);
create index posting_invoice on posting (department_id, invoice_id) where invoice_id is not null;
create index posting_unapplied on posting (department_id, unapplied_id) where unapplied_id is not null;
create index posting_event on posting (department_id, event_id);
call keep_as_history('posting');
