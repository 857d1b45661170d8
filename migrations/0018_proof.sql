-- Proof of performance: what is agreed for missed reads, what a sponsor disputes, the statements that were issued, and what follows a season.

-- A year that is carried on, or a renewal, is a contract of its own: invoices, statements and closing of the one before stay as they are.
alter table contract add column follows_contract_id uuid;
alter table contract add column follows_as text check (follows_as in ('year', 'renewal'));
alter table contract add column year_number smallint not null default 1 check (year_number between 1 and 5);
alter table contract add constraint "follows-incomplete" check ((follows_contract_id is null) = (follows_as is null));
alter table contract add constraint "contract-followed-already" unique (department_id, follows_contract_id);

alter table contract no force row level security;
alter table contract add constraint "unknown-contract-before" foreign key (department_id, follows_contract_id) references contract (department_id, id);
alter table contract force row level security;

alter table season add column follows_season_id uuid;
alter table season add constraint "season-followed-already" unique (department_id, follows_season_id);
alter table season no force row level security;
alter table season add constraint "unknown-season-before" foreign key (department_id, follows_season_id) references season (department_id, id);
alter table season force row level security;
alter table team add column follows_team_id uuid;
alter table team no force row level security;
alter table team add constraint "unknown-team-before" foreign key (department_id, follows_team_id) references team (department_id, id);
alter table team force row level security;

-- What a calendar goes by: it rises whenever day, hour, place or standing of a game changes (RFC 5545, SEQUENCE).
alter table game add column calendar_sequence integer not null default 0;
alter table game add column calendar_changed_at timestamptz(3) not null default '2026-01-01T00:00:00Z';
alter table game alter column calendar_changed_at set default clock_timestamp();

-- An earlier sitting of a game that was suspended keeps the hour at which it began; the last one goes by the game's own.
alter table game_night add column starts_at timestamptz(3);

-- A calendar counts for a game what it counted itself and what the games count that it starts after.
create function calendar_sequence_of(of_department uuid, of_game uuid) returns integer language sql stable as $$
  with recursive before (id, counted, next, steps) as (
    select one.id, one.calendar_sequence, one.starts_after_game_id, 1 from game as one where one.department_id = of_department and one.id = of_game
    union all
    select one.id, one.calendar_sequence, one.starts_after_game_id, before.steps + 1
      from before join game as one on one.department_id = of_department and one.id = before.next where before.steps < 20
  )
  select coalesce(sum(counted), 0)::integer from before
$$;

create function calendar_moves_on() returns trigger language plpgsql as $$
begin
  if (new.starts_at, new.played_on, new.starts_after_game_id, new.starts_after_minutes, new.status in ('cancelled', 'postponed', 'suspended'))
    is distinct from (old.starts_at, old.played_on, old.starts_after_game_id, old.starts_after_minutes, old.status in ('cancelled', 'postponed', 'suspended')) then
    new.calendar_sequence := new.calendar_sequence + 1;
    new.calendar_changed_at := clock_timestamp();
  end if;
  -- What the game it followed counted stays counted when it follows it no more: the sum never falls.
  if old.starts_after_game_id is not null and new.starts_after_game_id is distinct from old.starts_after_game_id then
    new.calendar_sequence := new.calendar_sequence + calendar_sequence_of(old.department_id, old.starts_after_game_id);
  end if;
  return new;
end $$;
create trigger calendar before update on game for each row execute function calendar_moves_on();

create function calendar_moves_with_night() returns trigger language plpgsql as $$
begin
  if (new.held_on, new.venue_id, new.floor_id) is distinct from (old.held_on, old.venue_id, old.floor_id) then
    update game set calendar_sequence = calendar_sequence + 1, calendar_changed_at = clock_timestamp()
      where game.department_id = new.department_id
        and game.id in (select game_id from game_night where game_night.department_id = new.department_id and game_night.night_id = new.id);
  end if;
  return null;
end $$;
create trigger calendar after update on night for each row execute function calendar_moves_with_night();

-- To another night, or to its first one; not where the game itself was added or moved in this very change.
create function calendar_moves_to_night() returns trigger language plpgsql as $$
declare placed game_night := case when tg_op = 'DELETE' then old else new end;
begin
  update game set calendar_sequence = calendar_sequence + 1, calendar_changed_at = clock_timestamp()
    where game.department_id = placed.department_id and game.id = placed.game_id
      and (tg_op = 'DELETE' or game.calendar_changed_at < date_trunc('milliseconds', now()));
  return null;
end $$;
create trigger calendar after insert or delete on game_night for each row execute function calendar_moves_to_night();

alter table link drop constraint link_kind_check;
alter table link add constraint link_kind_check check (kind in ('table', 'sponsor', 'request', 'gamesFeed', 'nightsFeed'));

-- How many came, where somebody counted or recorded it after the night was signed off; the last one holds, before what the sign-off says.
create table night_attendance (
  department_id uuid not null references department (id),
  id uuid not null,
  night_id uuid not null,
  attendance integer check (attendance between 0 and 200000),
  -- both null: nobody knows after all
  how text check (how in ('tickets', 'counted', 'estimated')),
  recorded_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "attendance-incomplete" check ((attendance is null) = (how is null)),
  constraint "unknown-night" foreign key (department_id, night_id) references night (department_id, id)
);
create index night_attendance_night on night_attendance (department_id, night_id, recorded_at);
call keep_as_history('night_attendance');

-- What is put to a sponsor for reads that can no longer be given as promised. Facts are stored, the state is computed.
create table makegood_proposal (
  department_id uuid not null references department (id),
  id uuid not null,
  contract_id uuid not null,
  term_id uuid not null,
  commitment_id uuid not null,
  -- the game in which they were missed, where the commitment is counted by the game
  missed_game_id uuid,
  missed_reads integer not null check (missed_reads > 0),
  because text not null check (because in ('windowOver', 'gameCancelled', 'seasonEnding', 'asked')),
  remedy text not null check (remedy in ('moreReads', 'otherKind', 'credit', 'carryOver')),
  replacement_read_kind_id uuid,
  replacement_reads integer check (replacement_reads between 1 and 1000),
  -- what is put in writing: the credit, or the value of the reads that are carried
  amount_cents bigint check (amount_cents >= 0),
  proposed_on date not null,
  -- since when the sponsor sees it by its link; null: only the office does
  shown_on date,
  answer_by date,
  accepted_on date,
  declined_on date,
  withdrawn_on date,
  answered_by_name text,
  answered_how text check (answered_how in ('link', 'recordedByDirector')),
  answer_note text,
  note text,
  -- what it became: an agreed makegood, a credit (its event), or reads carried into the next contract
  makegood_id uuid,
  settled_event_id uuid,
  carried_to_contract_id uuid,
  settled_on date,
  state text not null generated always as (
    case when settled_on is not null then 'settled' when withdrawn_on is not null then 'withdrawn' when accepted_on is not null then 'accepted'
      when declined_on is not null then 'declined' else 'open' end) stored,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "makegood-of-nothing" check ((remedy in ('moreReads', 'otherKind')) = (replacement_read_kind_id is not null and replacement_reads is not null)),
  constraint "answer-incomplete" check ((accepted_on is null and declined_on is null) = (answered_by_name is null)),
  constraint "unknown-contract" foreign key (department_id, contract_id) references contract (department_id, id),
  constraint "unknown-term" foreign key (department_id, term_id) references term (department_id, id),
  constraint "unknown-commitment" foreign key (department_id, commitment_id) references commitment (department_id, id),
  constraint "unknown-read-kind" foreign key (department_id, replacement_read_kind_id) references read_kind (department_id, id),
  constraint "unknown-game" foreign key (department_id, missed_game_id) references game (department_id, id),
  constraint "unknown-makegood" foreign key (department_id, makegood_id) references makegood (department_id, id)
);
create index makegood_proposal_contract on makegood_proposal (department_id, contract_id);
create index makegood_proposal_commitment on makegood_proposal (department_id, commitment_id);
call keep_with_audit('makegood_proposal');

-- From which night each missed read comes; released when the proposal is declined or withdrawn, so that no read is made good twice.
create table missed_read (
  department_id uuid not null references department (id),
  id uuid not null,
  proposal_id uuid not null,
  commitment_id uuid not null,
  -- the order in which they were missed: replacements settle the first ones first
  place smallint not null,
  night_id uuid,
  game_id uuid,
  placement_id uuid,
  window_key text,
  missed_on date not null,
  why text not null,
  primary key (department_id, id),
  constraint "missed-read-claimed-twice" unique (department_id, placement_id),
  constraint "missed-read-place-taken" unique (department_id, proposal_id, place),
  constraint "unknown-proposal" foreign key (department_id, proposal_id) references makegood_proposal (department_id, id),
  constraint "unknown-commitment" foreign key (department_id, commitment_id) references commitment (department_id, id)
);
create index missed_read_commitment on missed_read (department_id, commitment_id);
call keep_as_claim('missed_read');

-- A sponsor says that a read was not given, or not as it should have been; the school answers.
create table read_dispute (
  department_id uuid not null references department (id),
  id uuid not null,
  sponsor_id uuid not null,
  contract_id uuid not null,
  commitment_id uuid not null,
  night_id uuid not null,
  game_id uuid,
  -- the read as it was counted; null where the sponsor misses one that the log does not have
  entry_id uuid,
  occurrence integer not null default 0,
  asked_by_name text not null,
  what text not null check (char_length(what) between 1 and 1000),
  asked_at timestamptz(3) not null,
  outcome text check (outcome in ('stands', 'takenBack', 'added', 'makegood')),
  answer text check (char_length(answer) between 1 and 1000),
  answered_by_person_id uuid,
  answered_at timestamptz(3),
  version integer not null default 1,
  primary key (department_id, id),
  constraint "read-disputed-already" unique (department_id, entry_id, occurrence),
  constraint "dispute-answer-incomplete" check ((outcome is null) = (answer is null)),
  constraint "unknown-sponsor" foreign key (department_id, sponsor_id) references sponsor (department_id, id),
  constraint "unknown-contract" foreign key (department_id, contract_id) references contract (department_id, id),
  constraint "unknown-commitment" foreign key (department_id, commitment_id) references commitment (department_id, id),
  constraint "unknown-night" foreign key (department_id, night_id) references night (department_id, id),
  constraint "unknown-game" foreign key (department_id, game_id) references game (department_id, id),
  constraint "unknown-entry" foreign key (department_id, entry_id) references log_entry (department_id, id)
);
create index read_dispute_contract on read_dispute (department_id, contract_id);
create index read_dispute_sponsor on read_dispute (department_id, sponsor_id);
call keep_with_audit('read_dispute');

-- Statements of performance asked for together, so that a page can tell how far they are.
create table statement_run (
  department_id uuid not null references department (id),
  id uuid not null,
  season_id uuid not null,
  through_on date not null,
  issued_on date not null,
  state text not null default 'waiting' check (state in ('waiting', 'running', 'done', 'failed', 'cancelled')),
  -- which are dealt with is written down first; what has neither a statement nor a reason is still to do
  contract_ids uuid[] not null,
  failures jsonb not null default '[]',
  asked_by_person_id uuid,
  asked_at timestamptz(3) not null,
  ended_at timestamptz(3),
  version integer not null default 1,
  primary key (department_id, id),
  constraint "unknown-season" foreign key (department_id, season_id) references season (department_id, id)
);
call keep_with_audit('statement_run');

-- An issued statement is history: what it says, and the head of the seal under which the books stood. A later one of the same contract overtakes it.
create table performance_statement (
  department_id uuid not null references department (id),
  id uuid not null,
  contract_id uuid not null,
  term_id uuid not null,
  number integer not null check (number > 0),
  run_id uuid,
  through_on date not null,
  issued_on date not null,
  content jsonb not null,
  -- of what the books said when it was made; another one of the same contract with the same digest says the same
  content_digest text not null,
  seal_number integer not null,
  seal_head text not null,
  issued_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "statement-number-taken" unique (department_id, contract_id, number),
  constraint "unknown-contract" foreign key (department_id, contract_id) references contract (department_id, id),
  constraint "unknown-term" foreign key (department_id, term_id) references term (department_id, id),
  constraint "unknown-statement-run" foreign key (department_id, run_id) references statement_run (department_id, id)
);
create index performance_statement_contract on performance_statement (department_id, contract_id, number desc);
call keep_as_history('performance_statement');
