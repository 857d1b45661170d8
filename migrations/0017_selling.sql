-- Before a contract: whom to call, what is offered at which price and who is kept out; and the plan of a season, worked out and accepted.

alter table sponsor add column caller_person_id uuid;
alter table sponsor add column lost_on date;
alter table sponsor add column lost_reason text;
alter table sponsor add constraint "lost-without-a-reason" check ((lost_on is null) = (lost_reason is null));
create index sponsor_next_step on sponsor (department_id, next_step_on);

create table sponsor_contact (
  department_id uuid not null references department (id),
  id uuid not null,
  sponsor_id uuid not null,
  contacted_on date not null,
  how text not null check (how in ('call', 'visit', 'message', 'letter')),
  with_whom text,
  what text not null,
  next_step text,
  next_step_on date,
  contacted_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "unknown-sponsor" foreign key (department_id, sponsor_id) references sponsor (department_id, id)
);
create index sponsor_contact_sponsor on sponsor_contact (department_id, sponsor_id, contacted_on);
call keep_as_history('sponsor_contact');

-- Read kinds of one group share places of their own within a window; a kind without a group shares the window's.
alter table read_kind add column place_group text;
-- What a department says of a sport's windows, in place of what the sport's profile says.
create table window_places (
  department_id uuid not null references department (id),
  id uuid not null,
  sport text not null,
  window_kind text not null check (window_kind in ('pregame', 'betweenPeriods', 'timeOut', 'halftime', 'postgame', 'deadBall')),
  place_group text,
  places smallint not null check (places between 0 and 20),
  version integer not null default 1,
  primary key (department_id, id),
  constraint "window-places-said-already" unique nulls not distinct (department_id, sport, window_kind, place_group)
);
call keep_with_audit('window_places');

-- Minutes apart could not be kept: nobody knows when a time-out comes. A window, the next one, or the game can.
alter table commitment drop column separation_minutes;
alter table commitment add column separation text not null default 'window' check (separation in ('none', 'window', 'next', 'game'));
alter table commitment add column window_kinds text[] not null default '{}';
alter table commitment add column blackout_days date[] not null default '{}';
alter table commitment add column pinned_game_ids uuid[] not null default '{}';

-- The least above the most could be kept until now; the least is what was promised.
do $$
declare one uuid;
begin
  for one in select id from department loop
    execute format('set local app.department_id = %L', one);
    update commitment set most_per_game = least_per_game where department_id = one and least_per_game > most_per_game;
  end loop;
end $$;
alter table commitment add constraint "least-above-most" check (least_per_game <= most_per_game);

alter table contract add column years smallint not null default 1 check (years between 1 and 5);
alter table contract add column increase_basis_points integer not null default 0 check (increase_basis_points between 0 and 10000);
alter table contract add column price_varies_with text not null default 'nothing' check (price_varies_with in ('nothing', 'attendance', 'audience'));

create table package (
  department_id uuid not null references department (id),
  id uuid not null,
  season_id uuid not null,
  name text not null,
  price_cents bigint not null check (price_cents between 0 and 9007199254740991),
  is_offered boolean not null default true,
  note text,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "package-name-taken" unique (department_id, season_id, name),
  constraint "unknown-season" foreign key (department_id, season_id) references season (department_id, id)
);
call keep_with_audit('package');

create table package_line (
  department_id uuid not null references department (id),
  id uuid not null,
  package_id uuid not null,
  place smallint not null,
  read_kind_id uuid,
  counting text check (counting in ('perTerm', 'perGame', 'perNight', 'onOccurrence')),
  benefit_name text,
  quantity integer not null default 1 check (quantity between 0 and 100000),
  rate_cents bigint not null default 0 check (rate_cents between 0 and 9007199254740991),
  least_per_game integer check (least_per_game between 0 and 99),
  most_per_game integer check (most_per_game between 1 and 99),
  version integer not null default 1,
  primary key (department_id, id),
  constraint "package-line-place-taken" unique (department_id, package_id, place),
  constraint "package-line-of-nothing" check ((read_kind_id is null) <> (benefit_name is null)),
  constraint "least-above-most" check (least_per_game <= most_per_game),
  constraint "unknown-package" foreign key (department_id, package_id) references package (department_id, id),
  constraint "unknown-read-kind" foreign key (department_id, read_kind_id) references read_kind (department_id, id)
);
call keep_with_audit('package_line');

-- What was put to a sponsor. Facts are stored, the state is computed; that an open one has lapsed depends on the day and is told on reading.
create table offer (
  department_id uuid not null references department (id),
  id uuid not null,
  number text,
  sponsor_id uuid not null,
  seller_id uuid not null,
  payer_id uuid,
  season_id uuid not null,
  package_id uuid,
  title text not null,
  pricing text not null default 'fixed' check (pricing in ('fixed', 'perRead')),
  price_cents bigint not null check (price_cents between 0 and 9007199254740991),
  bill_at_least_cents bigint check (bill_at_least_cents >= 0),
  bill_at_most_cents bigint check (bill_at_most_cents >= 0),
  price_varies_with text not null default 'nothing' check (price_varies_with in ('nothing', 'attendance', 'audience')),
  cancelled_game_policy text not null default 'credit' check (cancelled_game_policy in ('credit', 'valueMovesOn')),
  billing_plan jsonb not null,
  starts_on date not null,
  ends_on date not null,
  years smallint not null default 1 check (years between 1 and 5),
  increase_basis_points integer not null default 0 check (increase_basis_points between 0 and 10000),
  lapses_on date not null,
  holds_inventory boolean not null default true,
  put_on date,
  -- why it was put although the season cannot carry it, and who said so
  beyond_places_reason text,
  beyond_places_person_id uuid,
  declined_on date,
  declined_reason text,
  withdrawn_on date,
  contract_id uuid,
  note text,
  state text not null generated always as (
    case when contract_id is not null then 'accepted' when declined_on is not null then 'declined' when withdrawn_on is not null then 'withdrawn'
      when put_on is not null then 'open' else 'draft' end) stored,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "offer-number-taken" unique (department_id, number),
  constraint "offer-of-contract-taken" unique (department_id, contract_id),
  constraint "ends-before-it-starts" check (ends_on >= starts_on),
  constraint "declined-without-a-reason" check ((declined_on is null) = (declined_reason is null)),
  constraint "unknown-sponsor" foreign key (department_id, sponsor_id) references sponsor (department_id, id),
  constraint "unknown-seller" foreign key (department_id, seller_id) references seller (department_id, id),
  constraint "unknown-payer" foreign key (department_id, payer_id) references payer (department_id, id),
  constraint "unknown-season" foreign key (department_id, season_id) references season (department_id, id),
  constraint "unknown-package" foreign key (department_id, package_id) references package (department_id, id),
  constraint "unknown-contract" foreign key (department_id, contract_id) references contract (department_id, id)
);
create index offer_sponsor on offer (department_id, sponsor_id);
create index offer_season on offer (department_id, season_id);
call keep_with_audit('offer');

create table offer_line (
  department_id uuid not null references department (id),
  id uuid not null,
  offer_id uuid not null,
  place smallint not null,
  read_kind_id uuid,
  benefit_name text,
  counting text check (counting in ('perTerm', 'perGame', 'perNight', 'onOccurrence')),
  -- reads per term, game or night; pieces of a benefit
  quantity integer not null default 0 check (quantity between 0 and 100000),
  reads_at_least integer check (reads_at_least >= 0),
  reads_at_most integer check (reads_at_most >= 0),
  whose text not null default 'ours' check (whose in ('ours', 'both')),
  several_count_as_one boolean not null default false,
  rate_cents bigint not null default 0 check (rate_cents between 0 and 9007199254740991),
  price_each_cents bigint check (price_each_cents between 0 and 9007199254740991),
  fair_value_cents bigint check (fair_value_cents >= 0),
  is_taxed boolean not null default true,
  earns text check (earns in ('onDelivery', 'overDays')),
  due_on date,
  starts_on date,
  ends_on date,
  team_ids uuid[] not null default '{}',
  levels text[] not null default '{}',
  window_kinds text[] not null default '{}',
  blackout_days date[] not null default '{}',
  pinned_game_ids uuid[] not null default '{}',
  least_per_game integer check (least_per_game between 0 and 99),
  most_per_game integer check (most_per_game between 1 and 99),
  separation text not null default 'window' check (separation in ('none', 'window', 'next', 'game')),
  priority smallint not null default 2 check (priority between 1 and 3),
  version integer not null default 1,
  primary key (department_id, id),
  constraint "offer-line-place-taken" unique (department_id, offer_id, place),
  constraint "offer-line-of-nothing" check ((read_kind_id is null) <> (benefit_name is null)),
  constraint "ends-before-it-starts" check (ends_on >= starts_on),
  constraint "least-above-most" check (least_per_game <= most_per_game),
  constraint "at-most-below-at-least" check (reads_at_most >= reads_at_least),
  constraint "unknown-offer" foreign key (department_id, offer_id) references offer (department_id, id),
  constraint "unknown-read-kind" foreign key (department_id, read_kind_id) references read_kind (department_id, id)
);
call keep_with_audit('offer_line');

-- Who is promised to be the only one of a category: over the days, in named games, or in windows of a kind.
create table exclusivity (
  department_id uuid not null references department (id),
  id uuid not null,
  contract_id uuid,
  offer_id uuid,
  category_id uuid not null,
  reach text not null check (reach in ('season', 'game', 'window')),
  school_id uuid,
  starts_on date not null,
  ends_on date not null,
  game_ids uuid[] not null default '{}',
  window_kinds text[] not null default '{}',
  version integer not null default 1,
  primary key (department_id, id),
  constraint "exclusivity-of-nothing" check ((contract_id is null) <> (offer_id is null)),
  constraint "ends-before-it-starts" check (ends_on >= starts_on),
  constraint "unknown-category" foreign key (department_id, category_id) references sponsor_category (department_id, id),
  constraint "unknown-contract" foreign key (department_id, contract_id) references contract (department_id, id),
  constraint "unknown-offer" foreign key (department_id, offer_id) references offer (department_id, id),
  constraint "unknown-school" foreign key (department_id, school_id) references school (department_id, id)
);
create index exclusivity_category on exclusivity (department_id, category_id);
create index exclusivity_contract on exclusivity (department_id, contract_id);
create index exclusivity_offer on exclusivity (department_id, offer_id);
call keep_with_audit('exclusivity');

-- A category that somebody else has the right to without a contract here, such as a district's drink contract.
create table reserved_category (
  department_id uuid not null references department (id),
  id uuid not null,
  category_id uuid not null,
  school_id uuid,
  held_by text not null,
  starts_on date not null,
  ends_on date,
  note text,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "ends-before-it-starts" check (ends_on >= starts_on),
  constraint "unknown-category" foreign key (department_id, category_id) references sponsor_category (department_id, id),
  constraint "unknown-school" foreign key (department_id, school_id) references school (department_id, id)
);
call keep_with_audit('reserved_category');

-- Somebody allowed it all the same: against whose right, why, and who approved it.
create table company_exception (
  department_id uuid not null references department (id),
  id uuid not null,
  contract_id uuid,
  offer_id uuid,
  exclusivity_id uuid,
  -- the contract or open offer of another sponsor that is there already
  against_deal_id uuid,
  reserved_category_id uuid,
  blocked_category_id uuid,
  reason text not null,
  approved_by_name text not null,
  approved_on date not null,
  recorded_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "exception-for-nothing" check ((contract_id is null) <> (offer_id is null)),
  constraint "exception-against-nothing" check (num_nonnulls(exclusivity_id, against_deal_id, reserved_category_id, blocked_category_id) = 1),
  constraint "unknown-contract" foreign key (department_id, contract_id) references contract (department_id, id),
  constraint "unknown-offer" foreign key (department_id, offer_id) references offer (department_id, id),
  constraint "unknown-reserved-category" foreign key (department_id, reserved_category_id) references reserved_category (department_id, id),
  constraint "unknown-category" foreign key (department_id, blocked_category_id) references sponsor_category (department_id, id)
);
create index company_exception_contract on company_exception (department_id, contract_id);
create index company_exception_offer on company_exception (department_id, offer_id);
call keep_as_history('company_exception');

alter table number_series drop constraint number_series_kind_check;
alter table number_series add constraint number_series_kind_check check (kind in ('contract', 'invoice', 'creditMemo', 'payment', 'receipt', 'depositSlip', 'journalBatch', 'offer'));

-- Why a read stands beside a competitor all the same, as the director said.
alter table placement add column beside_competitor_reason text;

-- The version of a season's plan: whatever changes a placement of the season moves it on, so that a plan worked out on another one is not accepted.
create table season_plan (
  department_id uuid not null references department (id),
  id uuid not null,
  season_id uuid not null,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "season-plan-taken" unique (department_id, season_id),
  constraint "unknown-season" foreign key (department_id, season_id) references season (department_id, id)
);
call keep_with_audit('season_plan');

-- A plan that is being worked out or waits to be accepted.
create table plan_proposal (
  department_id uuid not null references department (id),
  id uuid not null,
  season_id uuid not null,
  kind text not null check (kind in ('plan', 'replan')),
  because text,
  game_id uuid,
  base_version integer not null,
  state text not null default 'solving' check (state in ('solving', 'proposed', 'failed', 'cancelled', 'accepted', 'discarded')),
  options jsonb not null default '{}',
  result jsonb,
  failure text,
  asked_by_person_id uuid,
  asked_at timestamptz(3) not null,
  solved_at timestamptz(3),
  decided_at timestamptz(3),
  decided_by_person_id uuid,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "unknown-season" foreign key (department_id, season_id) references season (department_id, id),
  constraint "unknown-game" foreign key (department_id, game_id) references game (department_id, id) on delete cascade
);
create index plan_proposal_season on plan_proposal (department_id, season_id, asked_at);
call keep_with_audit('plan_proposal');

-- Where the accepted plan keeps room for an open offer; counts only while that offer is open.
create table held_place (
  department_id uuid not null references department (id),
  id uuid not null,
  offer_line_id uuid not null,
  game_id uuid not null,
  night_id uuid not null,
  window_key text not null,
  place smallint not null,
  primary key (department_id, id),
  constraint "held-place-taken" unique (department_id, game_id, window_key, place),
  constraint "unknown-offer-line" foreign key (department_id, offer_line_id) references offer_line (department_id, id),
  constraint "unknown-game" foreign key (department_id, game_id) references game (department_id, id) on delete cascade,
  constraint "unknown-night" foreign key (department_id, night_id) references night (department_id, id) on delete cascade
);
create index held_place_line on held_place (department_id, offer_line_id);
create index held_place_night on held_place (department_id, night_id);
call keep_as_claim('held_place');

-- Nothing is planned into or out of a locked night: its packet is issued, or a person said so.
create table night_lock (
  department_id uuid not null references department (id),
  id uuid not null,
  night_id uuid not null,
  why text not null check (why in ('issued', 'person')),
  note text,
  locked_by_person_id uuid,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "night-locked-already" unique (department_id, night_id),
  constraint "unknown-night" foreign key (department_id, night_id) references night (department_id, id) on delete cascade
);
call keep_with_audit('night_lock');
