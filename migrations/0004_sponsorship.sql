-- What was sold: sponsors, sellers of record, the rate card, contracts with terms, commitments, other benefits and the words to be read.

create table sponsor_category (
  department_id uuid not null references department (id),
  id uuid not null,
  name text not null,
  is_blocked boolean not null default false,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "category-name-taken" unique (department_id, name)
);
call keep_with_audit('sponsor_category');

create table sponsor (
  department_id uuid not null references department (id),
  id uuid not null,
  name text not null,
  say_as text,
  category_id uuid not null,
  status text not null default 'prospect' check (status in ('prospect', 'active', 'past')),
  contact_name text,
  email text,
  phone text,
  address text,
  last_contact_on date,
  next_step text,
  next_step_on date,
  note text,
  outside_id text,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "sponsor-name-taken" unique (department_id, name),
  constraint "sponsor-outside-id-taken" unique (department_id, outside_id),
  constraint "unknown-category" foreign key (department_id, category_id) references sponsor_category (department_id, id)
);
create index sponsor_category_of on sponsor (department_id, category_id);
call keep_with_audit('sponsor');

create table seller (
  department_id uuid not null references department (id),
  id uuid not null,
  name text not null,
  number_prefix text not null check (number_prefix ~ '^[A-Z0-9]{1,6}$'),
  address text,
  remit_to text,
  tax_identity text,
  contact_name text,
  contact_email text,
  contact_phone text,
  tax_basis_points integer not null default 0 check (tax_basis_points between 0 and 10000),
  terms_days integer not null default 30 check (terms_days between 0 and 365),
  keeps_books_here boolean not null default true,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "seller-name-taken" unique (department_id, name),
  constraint "number-prefix-taken" unique (department_id, number_prefix)
);
call keep_with_audit('seller');

create table payer (
  department_id uuid not null references department (id),
  id uuid not null,
  sponsor_id uuid,
  name text not null,
  email text,
  address text,
  exemption_number text,
  exemption_expires_on date,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "payer-name-taken" unique (department_id, name),
  constraint "unknown-sponsor" foreign key (department_id, sponsor_id) references sponsor (department_id, id)
);
create index payer_sponsor on payer (department_id, sponsor_id);
call keep_with_audit('payer');

create table read_kind (
  department_id uuid not null references department (id),
  id uuid not null,
  name text not null,
  timing text not null check (timing in ('scheduled', 'onOccurrence')),
  windows text[] not null check (cardinality(windows) > 0),
  default_seconds integer not null default 15 check (default_seconds between 1 and 600),
  sponsors_per_game integer not null default 1 check (sponsors_per_game between 1 and 99),
  occurrence text,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "read-kind-name-taken" unique (department_id, name)
);
call keep_with_audit('read_kind');

create table rate_card_line (
  department_id uuid not null references department (id),
  id uuid not null,
  season_id uuid not null,
  read_kind_id uuid,
  benefit_name text,
  price_cents bigint not null check (price_cents between 0 and 9007199254740991),
  version integer not null default 1,
  primary key (department_id, id),
  constraint "rate-already-set" unique nulls not distinct (department_id, season_id, read_kind_id, benefit_name),
  constraint "rate-of-nothing" check ((read_kind_id is null) <> (benefit_name is null)),
  constraint "unknown-season" foreign key (department_id, season_id) references season (department_id, id),
  constraint "unknown-read-kind" foreign key (department_id, read_kind_id) references read_kind (department_id, id)
);
call keep_with_audit('rate_card_line');

create table contract (
  department_id uuid not null references department (id),
  id uuid not null,
  number text,
  sponsor_id uuid not null,
  seller_id uuid not null,
  payer_id uuid not null,
  title text not null,
  purchase_order_number text,
  cancelled_game_policy text not null default 'credit' check (cancelled_game_policy in ('credit', 'valueMovesOn')),
  is_in_kind boolean not null default false,
  category_exception text,
  category_exception_approved_by text,
  outside_id text,
  note text,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "contract-number-taken" unique (department_id, number),
  constraint "contract-outside-id-taken" unique (department_id, outside_id),
  constraint "unknown-sponsor" foreign key (department_id, sponsor_id) references sponsor (department_id, id),
  constraint "unknown-seller" foreign key (department_id, seller_id) references seller (department_id, id),
  constraint "unknown-payer" foreign key (department_id, payer_id) references payer (department_id, id)
);
create index contract_sponsor on contract (department_id, sponsor_id);
create index contract_seller on contract (department_id, seller_id);
create index contract_payer on contract (department_id, payer_id);
call keep_with_audit('contract');

-- Facts are stored, the state is computed; generated so that lists can filter by it.
create table term (
  department_id uuid not null references department (id),
  id uuid not null,
  contract_id uuid not null,
  number integer not null default 1,
  season_id uuid not null,
  starts_on date not null,
  ends_on date not null,
  pricing text not null default 'fixed' check (pricing in ('fixed', 'perRead')),
  price_cents bigint not null check (price_cents between 0 and 9007199254740991),
  bill_at_least_cents bigint check (bill_at_least_cents >= 0),
  bill_at_most_cents bigint check (bill_at_most_cents >= 0),
  billing_plan jsonb not null,
  signed_on date,
  signed_by_name text,
  ended_on date,
  closed_on date,
  state text not null generated always as (
    case when closed_on is not null then 'closed' when ended_on is not null then 'ended'
      when signed_on is not null then 'signed' else 'draft' end) stored,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "term-number-taken" unique (department_id, contract_id, number),
  constraint "ends-before-it-starts" check (ends_on >= starts_on),
  constraint "unknown-contract" foreign key (department_id, contract_id) references contract (department_id, id),
  constraint "unknown-season" foreign key (department_id, season_id) references season (department_id, id)
);
create index term_season on term (department_id, season_id);
call keep_with_audit('term');

create table commitment (
  department_id uuid not null references department (id),
  id uuid not null,
  term_id uuid not null,
  contract_id uuid not null,
  read_kind_id uuid not null,
  place smallint not null,
  counting text not null check (counting in ('perTerm', 'perGame', 'perNight', 'onOccurrence')),
  reads integer not null default 0 check (reads between 0 and 100000),
  reads_at_least integer check (reads_at_least >= 0),
  reads_at_most integer check (reads_at_most >= 0),
  whose text not null default 'ours' check (whose in ('ours', 'both')),
  several_count_as_one boolean not null default false,
  rate_cents bigint not null default 0 check (rate_cents between 0 and 9007199254740991),
  price_each_cents bigint check (price_each_cents between 0 and 9007199254740991),
  starts_on date,
  ends_on date,
  team_ids uuid[] not null default '{}',
  levels text[] not null default '{}',
  least_per_game integer check (least_per_game between 0 and 99),
  most_per_game integer check (most_per_game between 1 and 99),
  separation_minutes integer check (separation_minutes between 0 and 600),
  priority smallint not null default 2 check (priority between 1 and 3),
  version integer not null default 1,
  primary key (department_id, id),
  constraint "commitment-place-taken" unique (department_id, term_id, place),
  constraint "ends-before-it-starts" check (ends_on >= starts_on),
  constraint "at-most-below-at-least" check (reads_at_most >= reads_at_least),
  constraint "unknown-term" foreign key (department_id, term_id) references term (department_id, id),
  constraint "unknown-contract" foreign key (department_id, contract_id) references contract (department_id, id),
  constraint "unknown-read-kind" foreign key (department_id, read_kind_id) references read_kind (department_id, id)
);
create index commitment_contract on commitment (department_id, contract_id);
create index commitment_read_kind on commitment (department_id, read_kind_id);
call keep_with_audit('commitment');

create table benefit (
  department_id uuid not null references department (id),
  id uuid not null,
  term_id uuid not null,
  contract_id uuid not null,
  place smallint not null,
  name text not null,
  quantity integer not null default 1 check (quantity between 1 and 100000),
  rate_cents bigint not null default 0 check (rate_cents between 0 and 9007199254740991),
  fair_value_cents bigint check (fair_value_cents >= 0),
  earns text not null default 'onDelivery' check (earns in ('onDelivery', 'overDays')),
  starts_on date,
  ends_on date,
  due_on date,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "benefit-place-taken" unique (department_id, term_id, place),
  constraint "ends-before-it-starts" check (ends_on >= starts_on),
  constraint "unknown-term" foreign key (department_id, term_id) references term (department_id, id),
  constraint "unknown-contract" foreign key (department_id, contract_id) references contract (department_id, id)
);
create index benefit_contract on benefit (department_id, contract_id);
call keep_with_audit('benefit');

create table benefit_delivery (
  department_id uuid not null references department (id),
  id uuid not null,
  benefit_id uuid not null,
  delivered_on date not null,
  quantity integer not null check (quantity > 0),
  proof text not null,
  takes_back_delivery_id uuid,
  recorded_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "delivery-taken-back-already" unique (department_id, takes_back_delivery_id),
  constraint "unknown-benefit" foreign key (department_id, benefit_id) references benefit (department_id, id)
);
create index benefit_delivery_benefit on benefit_delivery (department_id, benefit_id);
call keep_as_history('benefit_delivery');

create table copy (
  department_id uuid not null references department (id),
  id uuid not null,
  sponsor_id uuid not null,
  read_kind_id uuid not null,
  title text not null,
  fallback_text text not null,
  stopped_at timestamptz(3),
  version integer not null default 1,
  primary key (department_id, id),
  constraint "copy-title-taken" unique (department_id, sponsor_id, read_kind_id, title),
  constraint "unknown-sponsor" foreign key (department_id, sponsor_id) references sponsor (department_id, id),
  constraint "unknown-read-kind" foreign key (department_id, read_kind_id) references read_kind (department_id, id)
);
create index copy_read_kind on copy (department_id, read_kind_id);
call keep_with_audit('copy');

create table copy_version (
  department_id uuid not null references department (id),
  id uuid not null,
  copy_id uuid not null,
  number integer not null,
  language text not null default 'en' check (language in ('en', 'es')),
  text text not null,
  starts_on date,
  ends_on date,
  approved_on date,
  approved_by_name text,
  approved_how text check (approved_how in ('link', 'recordedByDirector')),
  approval_note text,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "copy-version-taken" unique (department_id, copy_id, number),
  constraint "ends-before-it-starts" check (ends_on >= starts_on),
  constraint "approval-incomplete" check ((approved_on is null) = (approved_by_name is null)),
  constraint "unknown-copy" foreign key (department_id, copy_id) references copy (department_id, id)
);
call keep_with_audit('copy_version');
