-- Money on its way: billing in runs, receipts and deposits, payments that come back, credits, what is given up, and contracts that are held or handed on.

alter table commitment add column is_taxed boolean not null default true;
alter table benefit add column is_taxed boolean not null default true;
alter table invoice_line add column tax_cents bigint;
-- All pieces of a benefit may be swapped for something else.
alter table benefit drop constraint benefit_quantity_check, add constraint benefit_quantity_check check (quantity between 0 and 100000);

-- Where received money lay at first: banked, or in the drawer until a deposit slip takes it to the bank.
alter table payment add column drawer text check (drawer in ('cash', 'undepositedReceipts'));
alter table payment add column fiscal_year integer;
alter table payment add column series_number integer;

-- A memo may credit what was paid in goods, which stands on no invoice, and several invoices at once.
alter table credit_memo alter column invoice_id drop not null;
alter table credit_memo add column contract_id uuid;
alter table credit_memo add column term_id uuid;
alter table credit_memo add column reason text;
create index credit_memo_contract on credit_memo (department_id, contract_id);
create index credit_memo_payer on credit_memo (department_id, payer_id);

create table credit_memo_line (
  department_id uuid not null references department (id),
  id uuid not null,
  credit_memo_id uuid not null,
  place smallint not null,
  description text not null,
  quantity integer not null default 1,
  unit_cents bigint,
  amount_cents bigint not null,
  tax_cents bigint not null default 0,
  invoice_id uuid,
  commitment_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "memo-line-place-taken" unique (department_id, credit_memo_id, place),
  constraint "unknown-credit-memo" foreign key (department_id, credit_memo_id) references credit_memo (department_id, id),
  constraint "unknown-invoice" foreign key (department_id, invoice_id) references invoice (department_id, id)
);
call keep_as_history('credit_memo_line');

create table billing_run (
  department_id uuid not null references department (id),
  id uuid not null,
  through_day date not null,
  issued_on date not null,
  seller_id uuid,
  contract_ids uuid[] not null,
  started_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "unknown-seller" foreign key (department_id, seller_id) references seller (department_id, id)
);
call keep_as_history('billing_run');

-- One row for each contract a run has dealt with, written in the same transaction as its invoice: what is missing is still to do.
create table billing_run_line (
  department_id uuid not null references department (id),
  id uuid not null,
  billing_run_id uuid not null,
  contract_id uuid not null,
  outcome text not null check (outcome in ('issued', 'skipped')),
  invoice_id uuid,
  net_cents bigint not null default 0,
  gross_cents bigint not null default 0,
  why text not null,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "contract-in-run-already" unique (department_id, billing_run_id, contract_id),
  constraint "unknown-billing-run" foreign key (department_id, billing_run_id) references billing_run (department_id, id),
  constraint "unknown-contract" foreign key (department_id, contract_id) references contract (department_id, id),
  constraint "unknown-invoice" foreign key (department_id, invoice_id) references invoice (department_id, id)
);
call keep_as_history('billing_run_line');

create table exemption_file (
  department_id uuid not null references department (id),
  id uuid not null,
  payer_id uuid not null,
  name text not null,
  media_type text not null check (media_type in ('application/pdf', 'image/png', 'image/jpeg')),
  bytes bytea not null,
  filed_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "unknown-payer" foreign key (department_id, payer_id) references payer (department_id, id)
);
create index exemption_file_payer on exemption_file (department_id, payer_id);
call keep_as_history('exemption_file');

-- The slip given out at hand-over; its money is a payment that lies in the drawer.
create table receipt (
  department_id uuid not null references department (id),
  id uuid not null,
  number text not null,
  fiscal_year integer not null,
  series_number integer not null,
  seller_id uuid not null,
  payment_id uuid not null,
  from_whom text not null,
  what_for text,
  taken_on date not null,
  taken_by_name text not null,
  taken_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "receipt-number-taken" unique (department_id, seller_id, fiscal_year, series_number),
  constraint "receipt-of-payment-taken" unique (department_id, payment_id),
  constraint "unknown-seller" foreign key (department_id, seller_id) references seller (department_id, id),
  constraint "unknown-payment" foreign key (department_id, payment_id) references payment (department_id, id)
);
call keep_as_history('receipt');

create table deposit_slip (
  department_id uuid not null references department (id),
  id uuid not null,
  number text not null,
  fiscal_year integer not null,
  series_number integer not null,
  seller_id uuid not null,
  deposited_on date not null,
  expected_cents bigint not null check (expected_cents > 0),
  counted_cents bigint not null check (counted_cents >= 0),
  note text,
  event_id uuid,
  deposited_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "deposit-slip-number-taken" unique (department_id, seller_id, fiscal_year, series_number),
  constraint "unknown-seller" foreign key (department_id, seller_id) references seller (department_id, id)
);
call keep_as_history('deposit_slip');

create table deposit_slip_line (
  department_id uuid not null references department (id),
  id uuid not null,
  deposit_slip_id uuid not null,
  payment_id uuid not null,
  amount_cents bigint not null check (amount_cents > 0),
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "payment-deposited-already" unique (department_id, payment_id),
  constraint "unknown-deposit-slip" foreign key (department_id, deposit_slip_id) references deposit_slip (department_id, id),
  constraint "unknown-payment" foreign key (department_id, payment_id) references payment (department_id, id)
);
create index deposit_slip_line_slip on deposit_slip_line (department_id, deposit_slip_id);
call keep_as_history('deposit_slip_line');

-- A payment that is none after all: the bank sent it back, or it was written down by mistake.
create table payment_return (
  department_id uuid not null references department (id),
  id uuid not null,
  payment_id uuid not null,
  kind text not null check (kind in ('returned', 'mistake')),
  returned_on date not null,
  bank_fee_cents bigint not null default 0 check (bank_fee_cents >= 0),
  reason text not null,
  event_id uuid,
  recorded_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "payment-returned-already" unique (department_id, payment_id),
  constraint "unknown-payment" foreign key (department_id, payment_id) references payment (department_id, id)
);
call keep_as_history('payment_return');

create table refund (
  department_id uuid not null references department (id),
  id uuid not null,
  payment_id uuid,
  credit_memo_id uuid,
  amount_cents bigint not null check (amount_cents > 0),
  refunded_on date not null,
  method text not null check (method in ('cash', 'check', 'card', 'transfer')),
  reference text,
  event_id uuid,
  recorded_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "refund-of-nothing" check ((payment_id is null) <> (credit_memo_id is null)),
  constraint "unknown-payment" foreign key (department_id, payment_id) references payment (department_id, id),
  constraint "unknown-credit-memo" foreign key (department_id, credit_memo_id) references credit_memo (department_id, id)
);
create index refund_payment on refund (department_id, payment_id);
create index refund_credit_memo on refund (department_id, credit_memo_id);
call keep_as_history('refund');

-- The bookkeeper asks, the director writes off or declines; what comes in after all is recovered. Only the second and the last step move money.
create table write_off (
  department_id uuid not null references department (id),
  id uuid not null,
  invoice_id uuid not null,
  step text not null check (step in ('asked', 'writtenOff', 'declined', 'recovered')),
  answers_write_off_id uuid,
  amount_cents bigint not null check (amount_cents > 0),
  happened_on date not null,
  reason text not null,
  event_id uuid,
  recorded_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "write-off-answered-already" unique (department_id, answers_write_off_id),
  constraint "unknown-invoice" foreign key (department_id, invoice_id) references invoice (department_id, id),
  constraint "unknown-write-off" foreign key (department_id, answers_write_off_id) references write_off (department_id, id)
);
create index write_off_invoice on write_off (department_id, invoice_id);
call keep_as_history('write_off');

create table invoice_discount (
  department_id uuid not null references department (id),
  id uuid not null,
  invoice_id uuid not null,
  amount_cents bigint not null check (amount_cents > 0),
  tax_cents bigint not null default 0 check (tax_cents >= 0),
  taken_on date not null,
  reason text not null,
  event_id uuid,
  recorded_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "unknown-invoice" foreign key (department_id, invoice_id) references invoice (department_id, id)
);
create index invoice_discount_invoice on invoice_discount (department_id, invoice_id);
call keep_as_history('invoice_discount');

-- Invoices and charges are one series; what stands for the time before has no number of ours.
alter table invoice drop constraint "invoice-number-taken";
create unique index "invoice-number-taken" on invoice (department_id, seller_id, fiscal_year, series_number) where kind <> 'opening';

-- How an invoice stands: what was done about it, and what is open. One place for lists, totals and the check of the books.
create view invoice_standing with (security_invoker = true) as
  select standing.*, case when is_void then 0 else gross_cents - applied_cents - discount_cents - written_off_cents end as balance_cents
    from (select invoice.department_id, invoice.id as invoice_id, invoice.gross_cents,
      exists (select from invoice_void where invoice_void.department_id = invoice.department_id and invoice_void.invoice_id = invoice.id) as is_void,
      (select coalesce(sum(application.amount_cents), 0)::bigint from application
        where application.department_id = invoice.department_id and application.invoice_id = invoice.id) as applied_cents,
      (select coalesce(sum(invoice_discount.amount_cents + invoice_discount.tax_cents), 0)::bigint from invoice_discount
        where invoice_discount.department_id = invoice.department_id and invoice_discount.invoice_id = invoice.id) as discount_cents,
      (select coalesce(sum(case step when 'writtenOff' then amount_cents when 'recovered' then -amount_cents else 0 end), 0)::bigint from write_off
        where write_off.department_id = invoice.department_id and write_off.invoice_id = invoice.id) as written_off_cents
    from invoice) as standing;
grant select on invoice_standing to {{runtime}};

-- What is left of a payment or of a credit memo; a payment that came back leaves nothing.
create view credit_standing with (security_invoker = true) as
  select credit.*, case when is_returned then 0 else amount_cents - applied_cents - refunded_cents end as left_cents
    from (select payment.department_id, payment.id as credit_id, payment.amount_cents,
      exists (select from payment_return where payment_return.department_id = payment.department_id and payment_return.payment_id = payment.id) as is_returned,
      (select coalesce(sum(application.amount_cents), 0)::bigint from application
        where application.department_id = payment.department_id and application.payment_id = payment.id) as applied_cents,
      (select coalesce(sum(refund.amount_cents), 0)::bigint from refund
        where refund.department_id = payment.department_id and refund.payment_id = payment.id) as refunded_cents
    from payment
    union all
    select credit_memo.department_id, credit_memo.id, credit_memo.gross_cents, false,
      (select coalesce(sum(application.amount_cents), 0)::bigint from application
        where application.department_id = credit_memo.department_id and application.credit_memo_id = credit_memo.id),
      (select coalesce(sum(refund.amount_cents), 0)::bigint from refund
        where refund.department_id = credit_memo.department_id and refund.credit_memo_id = credit_memo.id)
    from credit_memo) as credit;
grant select on credit_standing to {{runtime}};

-- A held contract keeps what it owes; its reads are not planned or printed until the hold is lifted.
create table contract_hold (
  department_id uuid not null references department (id),
  id uuid not null,
  contract_id uuid not null,
  held_on date not null,
  reason text not null,
  lifts_hold_id uuid,
  recorded_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "hold-lifted-already" unique (department_id, lifts_hold_id),
  constraint "unknown-contract" foreign key (department_id, contract_id) references contract (department_id, id),
  constraint "unknown-hold" foreign key (department_id, lifts_hold_id) references contract_hold (department_id, id)
);
create index contract_hold_contract on contract_hold (department_id, contract_id);
call keep_as_history('contract_hold');

-- A business is sold: the contract goes on with its new owner. What was issued keeps the names it was issued with.
create table contract_assignment (
  department_id uuid not null references department (id),
  id uuid not null,
  contract_id uuid not null,
  from_sponsor_id uuid not null,
  to_sponsor_id uuid not null,
  from_payer_id uuid not null,
  to_payer_id uuid not null,
  assigned_on date not null,
  reason text not null,
  recorded_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "unknown-contract" foreign key (department_id, contract_id) references contract (department_id, id),
  constraint "unknown-sponsor" foreign key (department_id, to_sponsor_id) references sponsor (department_id, id),
  constraint "unknown-payer" foreign key (department_id, to_payer_id) references payer (department_id, id)
);
create index contract_assignment_contract on contract_assignment (department_id, contract_id);
call keep_as_history('contract_assignment');

-- What a sponsor pays in kind, as a counted promise.
create table goods_promise (
  department_id uuid not null references department (id),
  id uuid not null,
  contract_id uuid not null,
  place smallint not null,
  what text not null,
  quantity integer not null check (quantity between 1 and 100000),
  unit_cents bigint not null check (unit_cents between 0 and 9007199254740991),
  due_on date,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "goods-place-taken" unique (department_id, contract_id, place),
  constraint "unknown-contract" foreign key (department_id, contract_id) references contract (department_id, id)
);
call keep_with_audit('goods_promise');

create table goods_delivery (
  department_id uuid not null references department (id),
  id uuid not null,
  goods_promise_id uuid not null,
  received_on date not null,
  quantity integer not null check (quantity > 0),
  proof text not null,
  event_id uuid,
  recorded_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "unknown-goods-promise" foreign key (department_id, goods_promise_id) references goods_promise (department_id, id)
);
create index goods_delivery_promise on goods_delivery (department_id, goods_promise_id);
call keep_as_history('goods_delivery');

-- What was not signed off when a month was closed: booked later, it goes into the next month.
alter table month_close add column late_nights jsonb;
