-- What is planned for a night, what was printed for it, and what really happened at the table.

create table makegood (
  department_id uuid not null references department (id),
  id uuid not null,
  commitment_id uuid not null,
  missed_game_id uuid,
  missed_reads integer not null check (missed_reads > 0),
  replacement_read_kind_id uuid not null,
  replacement_reads integer not null check (replacement_reads > 0),
  agreed_on date not null,
  agreed_with text not null,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "unknown-commitment" foreign key (department_id, commitment_id) references commitment (department_id, id),
  constraint "unknown-read-kind" foreign key (department_id, replacement_read_kind_id) references read_kind (department_id, id),
  constraint "unknown-game" foreign key (department_id, missed_game_id) references game (department_id, id)
);
call keep_with_audit('makegood');

create table placement (
  department_id uuid not null references department (id),
  id uuid not null,
  commitment_id uuid not null,
  game_id uuid not null,
  night_id uuid not null,
  window_key text not null,
  place smallint not null,
  copy_version_id uuid,
  makegood_id uuid,
  is_pinned boolean not null default false,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "placement-place-taken" unique (department_id, game_id, window_key, place),
  constraint "unknown-commitment" foreign key (department_id, commitment_id) references commitment (department_id, id),
  constraint "unknown-game" foreign key (department_id, game_id) references game (department_id, id),
  constraint "unknown-night" foreign key (department_id, night_id) references night (department_id, id),
  constraint "unknown-copy-version" foreign key (department_id, copy_version_id) references copy_version (department_id, id),
  constraint "unknown-makegood" foreign key (department_id, makegood_id) references makegood (department_id, id)
);
create index placement_commitment on placement (department_id, commitment_id);
create index placement_night on placement (department_id, night_id);
call keep_with_audit('placement');

create table script (
  department_id uuid not null references department (id),
  id uuid not null,
  moment text not null,
  sport text,
  language text not null default 'en' check (language in ('en', 'es')),
  title text not null,
  text text not null,
  is_on boolean not null default true,
  place smallint not null default 1,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "script-title-taken" unique nulls not distinct (department_id, moment, sport, language, title)
);
call keep_with_audit('script');

-- The cues of an issued packet by key and placement; the spoken words with students' names are composed anew.
create table packet_issue (
  department_id uuid not null references department (id),
  id uuid not null,
  night_id uuid not null,
  number integer not null,
  cues jsonb not null,
  content_digest text not null,
  issued_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "packet-issue-taken" unique (department_id, night_id, number),
  constraint "unknown-night" foreign key (department_id, night_id) references night (department_id, id)
);
call keep_as_history('packet_issue');

create table log_entry (
  department_id uuid not null references department (id),
  id uuid not null,
  night_id uuid not null,
  game_id uuid,
  number integer not null,
  device_id uuid not null,
  sequence integer not null,
  kind text not null,
  outcome text check (outcome in ('given', 'cutShort', 'notRead')),
  reason text,
  cue_key text,
  occurrence integer,
  placement_id uuid,
  commitment_id uuid,
  copy_version_id uuid,
  window_key text,
  team_id uuid,
  player_id uuid,
  player_number text,
  period text,
  clock text,
  detail jsonb,
  happening_entry_id uuid,
  takes_back_entry_id uuid,
  occurred_at timestamptz(3) not null,
  content_digest text not null,
  logged_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "log-number-taken" unique (department_id, night_id, number),
  constraint "device-sequence-taken" unique (department_id, night_id, device_id, sequence),
  constraint "entry-taken-back-already" unique (department_id, takes_back_entry_id),
  constraint "unknown-night" foreign key (department_id, night_id) references night (department_id, id),
  constraint "unknown-game" foreign key (department_id, game_id) references game (department_id, id),
  constraint "unknown-commitment" foreign key (department_id, commitment_id) references commitment (department_id, id),
  constraint "unknown-copy-version" foreign key (department_id, copy_version_id) references copy_version (department_id, id),
  constraint "unknown-team" foreign key (department_id, team_id) references team (department_id, id),
  constraint "unknown-player" foreign key (department_id, player_id) references player (department_id, id),
  constraint "unknown-entry" foreign key (department_id, takes_back_entry_id) references log_entry (department_id, id),
  constraint "unknown-happening" foreign key (department_id, happening_entry_id) references log_entry (department_id, id)
);
create index log_entry_commitment on log_entry (department_id, commitment_id);
create index log_entry_game on log_entry (department_id, game_id);
call keep_as_history('log_entry');

-- The same id with other content is kept aside for a person to settle; nothing that reached us is dropped.
create table log_entry_aside (
  department_id uuid not null references department (id),
  id uuid not null,
  night_id uuid not null,
  entry_id uuid not null,
  content jsonb not null,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "unknown-night" foreign key (department_id, night_id) references night (department_id, id)
);
call keep_as_history('log_entry_aside');

create table sign_off (
  department_id uuid not null references department (id),
  id uuid not null,
  night_id uuid not null,
  signed_off_by_person_id uuid not null,
  note text,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "night-already-signed-off" unique (department_id, night_id),
  constraint "unknown-night" foreign key (department_id, night_id) references night (department_id, id)
);
call keep_as_history('sign_off');

create table counted_read (
  department_id uuid not null references department (id),
  id uuid not null,
  night_id uuid not null,
  game_id uuid not null,
  cue_key text not null,
  occurrence integer not null default 0,
  entry_id uuid not null,
  commitment_id uuid not null,
  event_id uuid not null,
  primary key (department_id, id),
  constraint "read-counted-twice" unique (department_id, night_id, game_id, cue_key, occurrence),
  constraint "entry-counted-twice" unique (department_id, entry_id, occurrence),
  constraint "unknown-entry" foreign key (department_id, entry_id) references log_entry (department_id, id),
  constraint "unknown-commitment" foreign key (department_id, commitment_id) references commitment (department_id, id),
  constraint "unknown-event" foreign key (department_id, event_id) references ledger_event (department_id, id)
);
create index counted_read_commitment on counted_read (department_id, commitment_id);
call keep_as_claim('counted_read');
