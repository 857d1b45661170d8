-- The calendar: schools, venues, teams with rosters, games and the nights they are played on. It owes nobody anything.

create table school (
  department_id uuid not null references department (id),
  id uuid not null,
  name text not null,
  short_name text not null,
  nickname text not null,
  say_as text,
  is_ours boolean not null default false,
  first_colour text not null check (first_colour ~ '^#[0-9A-Fa-f]{6}$'),
  second_colour text not null check (second_colour ~ '^#[0-9A-Fa-f]{6}$'),
  account_code text,
  outside_id text,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "school-name-taken" unique (department_id, name)
);
call keep_with_audit('school');

create table venue (
  department_id uuid not null references department (id),
  id uuid not null,
  name text not null,
  say_as text,
  is_ours boolean not null default true,
  address text,
  exits_text text,
  defibrillator_place text,
  evacuation_text text,
  weather_text text,
  injury_text text,
  threat_text text,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "venue-name-taken" unique (department_id, name)
);
call keep_with_audit('venue');

create table floor (
  department_id uuid not null references department (id),
  id uuid not null,
  venue_id uuid not null,
  name text not null,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "floor-name-taken" unique (department_id, venue_id, name),
  constraint "unknown-venue" foreign key (department_id, venue_id) references venue (department_id, id)
);
call keep_with_audit('floor');

create table season (
  department_id uuid not null references department (id),
  id uuid not null,
  name text not null,
  sport text not null,
  starts_on date not null,
  ends_on date not null,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "season-name-taken" unique (department_id, name),
  constraint "ends-before-it-starts" check (ends_on >= starts_on)
);
call keep_with_audit('season');

create table team (
  department_id uuid not null references department (id),
  id uuid not null,
  season_id uuid not null,
  school_id uuid not null,
  name text not null,
  level text not null check (level in ('varsity', 'juniorVarsity', 'sophomore', 'freshman', 'middleSchool')),
  head_coach text,
  head_coach_say_as text,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "team-name-taken" unique (department_id, season_id, school_id, name),
  constraint "unknown-season" foreign key (department_id, season_id) references season (department_id, id),
  constraint "unknown-school" foreign key (department_id, school_id) references school (department_id, id)
);
create index team_school on team (department_id, school_id);
call keep_with_audit('team');

-- A student's name stands here and nowhere else: log, ledger and packets refer to the player, so a name can be erased.
create table player (
  department_id uuid not null references department (id),
  id uuid not null,
  school_id uuid not null,
  name text not null,
  say_as text,
  announce text not null default 'name' check (announce in ('name', 'numberOnly', 'aMember', 'silence')),
  erased_at timestamptz(3),
  version integer not null default 1,
  primary key (department_id, id),
  constraint "unknown-school" foreign key (department_id, school_id) references school (department_id, id)
);
create index player_school on player (department_id, school_id);
call keep_with_audit('player');

create table roster_entry (
  department_id uuid not null references department (id),
  id uuid not null,
  team_id uuid not null,
  player_id uuid not null,
  number text not null check (number ~ '^[0-9]{1,3}$'),
  position text,
  grade text,
  is_starter boolean not null default false,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "number-taken" unique (department_id, team_id, number),
  constraint "already-on-the-roster" unique (department_id, team_id, player_id),
  constraint "unknown-team" foreign key (department_id, team_id) references team (department_id, id),
  constraint "unknown-player" foreign key (department_id, player_id) references player (department_id, id)
);
call keep_with_audit('roster_entry');

create table night (
  department_id uuid not null references department (id),
  id uuid not null,
  held_on date not null,
  venue_id uuid not null,
  floor_id uuid,
  title text,
  doors_at timestamptz(3),
  note text,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "unknown-venue" foreign key (department_id, venue_id) references venue (department_id, id),
  constraint "unknown-floor" foreign key (department_id, floor_id) references floor (department_id, id)
);
create index night_held_on on night (department_id, held_on);
call keep_with_audit('night');

create table game (
  department_id uuid not null references department (id),
  id uuid not null,
  season_id uuid not null,
  sport text not null,
  level text not null check (level in ('varsity', 'juniorVarsity', 'sophomore', 'freshman', 'middleSchool')),
  class text not null default 'regular' check (class in ('regular', 'invitational', 'conference', 'stateSeries')),
  status text not null default 'planned' check (status in ('planned', 'underWay', 'suspended', 'played', 'postponed', 'cancelled')),
  announced boolean not null default true,
  starts_at timestamptz(3),
  played_on date not null,
  starts_after_game_id uuid,
  starts_after_minutes integer check (starts_after_minutes between 0 and 600),
  host_school_id uuid,
  windows_owned_by text not null default 'us' check (windows_owned_by in ('us', 'conference', 'association')),
  window_owners jsonb not null default '{}',
  moved_from_on date,
  status_note text,
  outside_id text,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "game-outside-id-taken" unique (department_id, outside_id),
  constraint "unknown-season" foreign key (department_id, season_id) references season (department_id, id),
  constraint "unknown-school" foreign key (department_id, host_school_id) references school (department_id, id),
  constraint "unknown-game" foreign key (department_id, starts_after_game_id) references game (department_id, id),
  constraint "start-time-missing" check (starts_at is not null or starts_after_game_id is not null or status <> 'planned' or not announced)
);
create index game_played_on on game (department_id, played_on, id);
create index game_starts_at on game (department_id, starts_at, id);
create index game_season on game (department_id, season_id);
call keep_with_audit('game');

create table game_participant (
  department_id uuid not null references department (id),
  id uuid not null,
  game_id uuid not null,
  team_id uuid not null,
  place smallint not null check (place between 1 and 64),
  is_home boolean not null default false,
  score integer check (score >= 0),
  version integer not null default 1,
  primary key (department_id, id),
  constraint "team-plays-itself" unique (department_id, game_id, team_id),
  constraint "participant-place-taken" unique (department_id, game_id, place),
  constraint "unknown-game" foreign key (department_id, game_id) references game (department_id, id) on delete cascade,
  constraint "unknown-team" foreign key (department_id, team_id) references team (department_id, id)
);
create unique index "two-home-teams" on game_participant (department_id, game_id) where is_home;
create index game_participant_team on game_participant (department_id, team_id);
call keep_with_audit('game_participant');

-- A suspended game is resumed on another night; a doubleheader night has two games.
create table game_night (
  department_id uuid not null references department (id),
  id uuid not null,
  game_id uuid not null,
  night_id uuid not null,
  place smallint not null default 1,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "game-already-on-the-night" unique (department_id, game_id, night_id),
  constraint "unknown-game" foreign key (department_id, game_id) references game (department_id, id) on delete cascade,
  constraint "unknown-night" foreign key (department_id, night_id) references night (department_id, id) on delete cascade
);
create index game_night_night on game_night (department_id, night_id);
call keep_with_audit('game_night');

create table person_of_night (
  department_id uuid not null references department (id),
  id uuid not null,
  night_id uuid not null,
  role text not null check (role in ('announcer', 'spotter', 'scorer', 'clock', 'singer', 'colourGuard', 'presenter', 'honouree', 'official', 'other')),
  name text not null,
  say_as text,
  arrives_at timestamptz(3),
  note text,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "unknown-night" foreign key (department_id, night_id) references night (department_id, id) on delete cascade
);
create index person_of_night_night on person_of_night (department_id, night_id);
call keep_with_audit('person_of_night');
