-- What the announcer holds: scripts with versions and approval, a second language, honours, reading rates, copy that is checked, and packets that stay as issued.

alter table script
  add column variant text,
  add column second_language text check (second_language in ('en', 'es')),
  add column second_text text,
  add column words_number integer not null default 1,
  add column approved_on date,
  add column approved_by_name text,
  add constraint "second-text-incomplete" check ((second_language is null) = (second_text is null)),
  add constraint "second-language-is-the-first" check (second_language <> language),
  add constraint "approval-incomplete" check ((approved_on is null) = (approved_by_name is null));

-- Each wording a script ever had; a change of words is a new number.
create table script_version (
  department_id uuid not null references department (id),
  id uuid not null,
  script_id uuid not null,
  number integer not null,
  title text not null,
  language text not null check (language in ('en', 'es')),
  text text not null,
  second_language text check (second_language in ('en', 'es')),
  second_text text,
  recorded_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "script-version-taken" unique (department_id, script_id, number)
);
call keep_as_history('script_version');

-- The announcer's own rate, measured by reading a card against a stop-watch.
alter table membership add column words_per_minute integer check (words_per_minute between 60 and 240);

alter table person_of_night add column person_id uuid;

alter table night
  add column anthem_form text check (anthem_form in ('sung', 'played')),
  add column flag_form text check (flag_form in ('colourGuard', 'inPlace')),
  add column halftime_seconds integer check (halftime_seconds between 60 and 3600);

-- A list of students honoured on a night; the students stand in player, so that a name can be erased and a family's choice holds.
create table honours_list (
  department_id uuid not null references department (id),
  id uuid not null,
  night_id uuid not null,
  title text not null,
  kind text not null check (kind in ('seniors', 'honours')),
  window_kind text not null check (window_kind in ('pregame', 'halftime', 'postgame')),
  seconds_each integer not null default 20 check (seconds_each between 5 and 300),
  opening_text text,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "honours-title-taken" unique (department_id, night_id, title),
  constraint "unknown-night" foreign key (department_id, night_id) references night (department_id, id) on delete cascade
);
call keep_with_audit('honours_list');

create table honoured_student (
  department_id uuid not null references department (id),
  id uuid not null,
  honours_list_id uuid not null,
  player_id uuid not null,
  place integer not null check (place between 1 and 500),
  escorts text,
  line text,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "honours-place-taken" unique (department_id, honours_list_id, place),
  constraint "honoured-already" unique (department_id, honours_list_id, player_id),
  constraint "unknown-honours-list" foreign key (department_id, honours_list_id) references honours_list (department_id, id) on delete cascade,
  constraint "unknown-player" foreign key (department_id, player_id) references player (department_id, id)
);
call keep_with_audit('honoured_student');

alter table copy
  add column rotates boolean not null default false,
  add column stopped_because text,
  add column stopped_by_name text;

alter table copy_version
  add column second_language text check (second_language in ('en', 'es')),
  add column second_text text,
  add column change_asked_at timestamptz(3),
  add column change_asked_by_name text,
  add column change_note text,
  add constraint "second-text-incomplete" check ((second_language is null) = (second_text is null)),
  add constraint "second-language-is-the-first" check (second_language <> language);

-- A slogan a sponsor has long used is no praise of its own (26 CFR 1.513-4(c)(2)(iv)).
create table slogan (
  department_id uuid not null references department (id),
  id uuid not null,
  sponsor_id uuid not null,
  text text not null,
  known_from text not null,
  registered_on date not null,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "slogan-taken" unique (department_id, sponsor_id, text),
  constraint "unknown-sponsor" foreign key (department_id, sponsor_id) references sponsor (department_id, id)
);
call keep_with_audit('slogan');

alter table sponsor_category add column is_food boolean not null default false;

-- A link stands for one subject; who gave it out, and what it is called in the list.
alter table link
  add column label text,
  add column made_by_person_id uuid,
  add column made_at timestamptz(3);
create index link_subject on link (department_id, kind, subject_id);

-- What a token opens, while it does: before anybody is signed in there is no department to ask in. An unknown, a revoked and an expired link answer alike.
create function link_of(token text) returns table (id uuid, department_id uuid, kind text, subject_id uuid, pin_hash text, expires_at timestamptz) language plpgsql as $$
begin
  perform set_config('app.link_hash', token, true);
  return query select link.id, link.department_id, link.kind, link.subject_id, link.pin_hash, link.expires_at from link
    where link.token_hash = token and link.revoked_at is null and link.not_before_at <= now() and link.expires_at > now();
end $$;

-- Which block of the packet stands on which page of this issue, and in which issue that page last changed.
alter table packet_issue
  add column pages jsonb,
  add column named_player_ids uuid[],
  add column reason text;

-- The words of an issue as printed. They hold students' names, so they stand apart from the history and can be erased.
create table packet_content (
  department_id uuid not null references department (id),
  id uuid not null,
  packet_issue_id uuid not null,
  content jsonb,
  erased_at timestamptz(3),
  version integer not null default 1,
  primary key (department_id, id),
  constraint "packet-content-taken" unique (department_id, packet_issue_id),
  constraint "unknown-packet-issue" foreign key (department_id, packet_issue_id) references packet_issue (department_id, id),
  constraint "content-incomplete" check ((content is null) = (erased_at is not null))
);
call keep_with_audit('packet_content');
