-- Documents of the accounts office: issued once, numbered without a gap, never edited; what happens to them is a row of its own.

create table invoice (
  department_id uuid not null references department (id),
  id uuid not null,
  kind text not null default 'invoice' check (kind in ('invoice', 'charge', 'opening')),
  number text not null,
  fiscal_year integer not null,
  series_number integer not null,
  seller_id uuid not null,
  payer_id uuid not null,
  sponsor_id uuid,
  contract_id uuid,
  term_id uuid,
  purchase_order_number text,
  issued_on date not null,
  due_on date not null,
  net_cents bigint not null check (net_cents >= 0),
  tax_basis_points integer not null default 0,
  tax_cents bigint not null check (tax_cents >= 0),
  gross_cents bigint not null check (gross_cents >= 0),
  snapshot jsonb not null,
  event_id uuid,
  issued_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "invoice-number-taken" unique (department_id, seller_id, kind, fiscal_year, series_number),
  constraint "invoice-does-not-add-up" check (gross_cents = net_cents + tax_cents),
  constraint "unknown-seller" foreign key (department_id, seller_id) references seller (department_id, id),
  constraint "unknown-payer" foreign key (department_id, payer_id) references payer (department_id, id),
  constraint "unknown-contract" foreign key (department_id, contract_id) references contract (department_id, id),
  constraint "unknown-term" foreign key (department_id, term_id) references term (department_id, id)
);
create index invoice_contract on invoice (department_id, contract_id);
create index invoice_payer on invoice (department_id, payer_id);
create index invoice_issued_on on invoice (department_id, issued_on desc);
call keep_as_history('invoice');

create table invoice_line (
  department_id uuid not null references department (id),
  id uuid not null,
  invoice_id uuid not null,
  place smallint not null,
  description text not null,
  quantity integer not null default 1,
  unit_cents bigint,
  amount_cents bigint not null,
  commitment_id uuid,
  traced_to jsonb not null default '{}',
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "invoice-line-place-taken" unique (department_id, invoice_id, place),
  constraint "unknown-invoice" foreign key (department_id, invoice_id) references invoice (department_id, id)
);
call keep_as_history('invoice_line');

create table billed_read (
  department_id uuid not null references department (id),
  id uuid not null,
  read_id uuid not null,
  invoice_id uuid not null,
  primary key (department_id, id),
  constraint "read-billed-twice" unique (department_id, read_id),
  constraint "unknown-invoice" foreign key (department_id, invoice_id) references invoice (department_id, id)
);
create index billed_read_invoice on billed_read (department_id, invoice_id);
call keep_as_claim('billed_read');

create table invoice_void (
  department_id uuid not null references department (id),
  id uuid not null,
  invoice_id uuid not null,
  voided_on date not null,
  reason text not null,
  event_id uuid,
  voided_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "invoice-already-void" unique (department_id, invoice_id),
  constraint "unknown-invoice" foreign key (department_id, invoice_id) references invoice (department_id, id)
);
call keep_as_history('invoice_void');

create table credit_memo (
  department_id uuid not null references department (id),
  id uuid not null,
  number text not null,
  fiscal_year integer not null,
  series_number integer not null,
  seller_id uuid not null,
  payer_id uuid not null,
  invoice_id uuid not null,
  issued_on date not null,
  net_cents bigint not null check (net_cents >= 0),
  tax_cents bigint not null check (tax_cents >= 0),
  gross_cents bigint not null,
  snapshot jsonb not null,
  event_id uuid,
  issued_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "credit-memo-number-taken" unique (department_id, seller_id, fiscal_year, series_number),
  constraint "memo-does-not-add-up" check (gross_cents = net_cents + tax_cents),
  constraint "unknown-invoice" foreign key (department_id, invoice_id) references invoice (department_id, id)
);
create index credit_memo_invoice on credit_memo (department_id, invoice_id);
call keep_as_history('credit_memo');

create table payment (
  department_id uuid not null references department (id),
  id uuid not null,
  number text not null,
  seller_id uuid not null,
  payer_id uuid not null,
  received_on date not null,
  method text not null check (method in ('cash', 'check', 'card', 'transfer', 'opening')),
  reference text,
  amount_cents bigint not null check (amount_cents between 1 and 9007199254740991),
  note text,
  event_id uuid,
  recorded_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "payment-number-taken" unique (department_id, seller_id, number),
  constraint "unknown-seller" foreign key (department_id, seller_id) references seller (department_id, id),
  constraint "unknown-payer" foreign key (department_id, payer_id) references payer (department_id, id)
);
create index payment_payer on payment (department_id, payer_id);
create index payment_received_on on payment (department_id, received_on desc);
call keep_as_history('payment');

-- A credit (a payment's or a memo's rest) used on an invoice; taking it back is a row with the opposite sign.
create table application (
  department_id uuid not null references department (id),
  id uuid not null,
  payment_id uuid,
  credit_memo_id uuid,
  invoice_id uuid not null,
  amount_cents bigint not null check (amount_cents <> 0),
  applied_on date not null,
  takes_back_application_id uuid,
  event_id uuid,
  recorded_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "application-of-nothing" check ((payment_id is null) <> (credit_memo_id is null)),
  constraint "application-taken-back-already" unique (department_id, takes_back_application_id),
  constraint "unknown-payment" foreign key (department_id, payment_id) references payment (department_id, id),
  constraint "unknown-credit-memo" foreign key (department_id, credit_memo_id) references credit_memo (department_id, id),
  constraint "unknown-invoice" foreign key (department_id, invoice_id) references invoice (department_id, id)
);
create index application_invoice on application (department_id, invoice_id);
create index application_payment on application (department_id, payment_id);
create index application_credit_memo on application (department_id, credit_memo_id);
call keep_as_history('application');
