-- An adult signs a night off with what the evening knew, and what a person settles about its log the next morning stays settled.

alter table sign_off
  add column signed_off_by_name text check (char_length(signed_off_by_name) between 1 and 80),
  add column attendance integer check (attendance between 0 and 200000),
  add column book_agrees boolean,
  add column book_words text check (char_length(book_words) <= 300),
  add constraint "sign-off-without-name" check (signed_off_by_person_id is not null or signed_off_by_name is not null);

-- One answer of a person about one entry; the last one holds.
create table night_settlement (
  department_id uuid not null references department (id),
  id uuid not null,
  night_id uuid not null,
  entry_id uuid not null,
  answer text not null check (answer in ('sameAs', 'different', 'counts', 'doesNotCount')),
  same_as_entry_id uuid,
  reason text check (char_length(reason) <= 300),
  settled_by_person_id uuid not null references person (id),
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "same-as-nothing" check ((answer = 'sameAs') = (same_as_entry_id is not null)),
  constraint "same-as-itself" check (same_as_entry_id <> entry_id),
  constraint "unknown-night" foreign key (department_id, night_id) references night (department_id, id),
  constraint "unknown-entry" foreign key (department_id, entry_id) references log_entry (department_id, id),
  constraint "same-as-unlike" foreign key (department_id, same_as_entry_id) references log_entry (department_id, id)
);
create index night_settlement_night on night_settlement (department_id, night_id);
create index night_settlement_entry on night_settlement (department_id, entry_id);
call keep_as_history('night_settlement');

-- What was changed about a night after it was signed off, and why.
create table amendment (
  department_id uuid not null references department (id),
  id uuid not null,
  night_id uuid not null,
  reason text not null check (char_length(reason) between 1 and 300),
  amended_by_person_id uuid not null references person (id),
  first_number integer,
  entries integer not null check (entries >= 0),
  settled integer not null check (settled >= 0),
  counted integer not null check (counted >= 0),
  released integer not null check (released >= 0),
  earned_cents bigint not null,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "unknown-night" foreign key (department_id, night_id) references night (department_id, id)
);
create index amendment_night on amendment (department_id, night_id, recorded_at);
call keep_as_history('amendment');
