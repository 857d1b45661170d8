-- Everything that later tables lean on: who the department is, the walls between departments, and rows that can only be added.

grant usage on schema public to {{runtime}};

-- The login the server runs as; it owns nothing. The migration runner puts its name here.
create function runtime_role() returns name language sql immutable parallel safe
  as $$ select trim(both '"' from '{{runtime}}')::name $$;

-- A missing scope is an error, not an empty list.
create function current_department() returns uuid language sql stable parallel safe
  as $$ select current_setting('app.department_id')::uuid $$;

create function current_person() returns uuid language sql stable parallel safe
  as $$ select nullif(current_setting('app.person_id', true), '')::uuid $$;

create function current_link() returns text language sql stable parallel safe
  as $$ select nullif(current_setting('app.link_hash', true), '') $$;

-- One helper makes every wall. The subselect is evaluated once a statement; a distributed server wants the bare call.
create procedure raise_wall(wall_of regclass) language plpgsql as $$
declare
  scope text := case when exists (select from pg_extension where extname = 'citus')
    then 'current_department()' else '(select current_department())' end;
begin
  execute format('alter table %s enable row level security', wall_of);
  execute format('alter table %s force row level security', wall_of);
  execute format('create policy department on %s using (department_id = %s) with check (department_id = %s)', wall_of, scope, scope);
end $$;

-- Writers share a department's lock until they commit; a seal takes it alone, so it sees every row stamped before it.
create function share_department_lock(department uuid) returns void language sql
  as $$ select pg_advisory_xact_lock_shared(hashtextextended(department::text, 7)) $$;

create function refuse_change() returns trigger language plpgsql as $$
begin
  raise exception 'history is added to, never edited' using errcode = 'P0001', constraint = 'history-is-append-only';
end $$;

-- The digest leaves out what is null, so that a column added later does not change it.
create function stamp_history() returns trigger language plpgsql as $$
begin
  perform share_department_lock(new.department_id);
  new.recorded_at := clock_timestamp();
  new.digest := sha256(convert_to((jsonb_strip_nulls(to_jsonb(new)) - 'digest')::text, 'UTF8'));
  return new;
end $$;

create table person (
  id uuid primary key,
  email text not null constraint "email-taken" unique check (email = lower(email)),
  name text not null,
  say_as text,
  password_hash text not null,
  created_at timestamptz(3) not null default now(),
  version integer not null default 1
);

create table department (
  id uuid primary key,
  name text not null,
  zone text not null,
  currency text not null default 'USD' check (currency ~ '^[A-Z]{3}$'),
  locale text not null default 'en-US',
  fiscal_year_starts_in_month smallint not null default 7 check (fiscal_year_starts_in_month between 1 and 12),
  school_year_starts_in_month smallint not null default 8 check (school_year_starts_in_month between 1 and 12),
  settings jsonb not null default '{}',
  created_at timestamptz(3) not null default now(),
  version integer not null default 1
);

create table session (
  token_hash text primary key,
  person_id uuid not null references person (id),
  department_id uuid not null references department (id),
  created_at timestamptz(3) not null default now(),
  last_seen_at timestamptz(3) not null default now(),
  expires_at timestamptz(3) not null,
  revoked_at timestamptz(3)
);
create index session_person on session (person_id);

create table sign_in_attempt (
  id uuid primary key,
  email_hash text not null,
  address_hash text not null,
  succeeded boolean not null,
  attempted_at timestamptz(3) not null default now()
);
create index sign_in_attempt_email on sign_in_attempt (email_hash, attempted_at desc);
create index sign_in_attempt_address on sign_in_attempt (address_hash, attempted_at desc);

grant select, insert, update on person, department, session to {{runtime}};
grant select, insert, delete on sign_in_attempt to {{runtime}};
grant delete on session to {{runtime}};

-- What a change to a mutable row leaves behind: who, when, which fields, and a digest instead of the payload.
create table audit_row (
  department_id uuid not null references department (id),
  id uuid not null default gen_random_uuid(),
  table_name text not null,
  row_id uuid not null,
  action text not null check (action in ('insert', 'update', 'delete')),
  fields text[] not null default '{}',
  row_digest bytea not null,
  person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id)
);
create index audit_row_recent on audit_row (department_id, recorded_at desc);

create function audit_change() returns trigger language plpgsql as $$
declare
  kept jsonb := case when tg_op = 'DELETE' then to_jsonb(old) else to_jsonb(new) end;
  changed text[] := '{}';
begin
  if tg_op = 'UPDATE' then
    select coalesce(array_agg(key order by key), '{}') into changed
      from jsonb_each(kept) as field where to_jsonb(old) -> field.key is distinct from field.value and field.key <> 'version';
  end if;
  insert into audit_row (department_id, table_name, row_id, action, fields, row_digest, person_id)
    values ((kept ->> 'department_id')::uuid, tg_table_name, (kept ->> 'id')::uuid, lower(tg_op), changed,
      sha256(convert_to(jsonb_strip_nulls(kept)::text, 'UTF8')), current_person());
  return null;
end $$;

-- A table whose rows are history: insert and read, nothing else.
create procedure keep_as_history(history regclass) language plpgsql as $$
begin
  call raise_wall(history);
  execute format('create trigger stamp before insert on %s for each row execute function stamp_history()', history);
  execute format('create trigger append_only before update or delete on %s for each row execute function refuse_change()', history);
  execute format('create trigger append_only_truncate before truncate on %s for each statement execute function refuse_change()', history);
  execute format('create index on %s (department_id, recorded_at)', history);
  execute format('grant select, insert on %s to %I', history, runtime_role());
end $$;

-- A table whose rows may be corrected: each change leaves an audit row.
create procedure keep_with_audit(records regclass) language plpgsql as $$
begin
  call raise_wall(records);
  execute format('create trigger audit after insert or update or delete on %s for each row execute function audit_change()', records);
  execute format('grant select, insert, update, delete on %s to %I', records, runtime_role());
end $$;

-- A claim is not history: it holds a unique key until the entry that takes back releases it.
create procedure keep_as_claim(claims regclass) language plpgsql as $$
begin
  call raise_wall(claims);
  execute format('grant select, insert, delete on %s to %I', claims, runtime_role());
end $$;

call keep_as_history('audit_row');

create table seal (
  department_id uuid not null references department (id),
  id uuid not null,
  number integer not null check (number > 0),
  covers_from timestamptz not null,
  covers_to timestamptz not null,
  row_count bigint not null,
  rows_digest bytea not null,
  previous_head bytea,
  head bytea not null,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "seal-number-taken" unique (department_id, number)
);
call keep_as_history('seal');

create table membership (
  department_id uuid not null references department (id),
  id uuid not null,
  person_id uuid not null references person (id),
  roles text[] not null check (cardinality(roles) > 0 and roles <@ array['director', 'bookkeeper', 'announcer']),
  ended_on date,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "already-a-member" unique (department_id, person_id)
);
create index membership_person on membership (person_id);
call keep_with_audit('membership');
create policy my_own on membership for select using (person_id = (select current_person()));

create table link (
  department_id uuid not null references department (id),
  id uuid not null,
  kind text not null check (kind in ('table', 'sponsor')),
  subject_id uuid not null,
  token_hash text not null,
  pin_hash text,
  not_before_at timestamptz(3) not null,
  expires_at timestamptz(3) not null,
  revoked_at timestamptz(3),
  version integer not null default 1,
  primary key (department_id, id),
  constraint "link-token-taken" unique (department_id, token_hash)
);
create index link_token on link (token_hash);
call keep_with_audit('link');
create policy bearer on link for select using (token_hash = (select current_link()));

create table idempotency_record (
  department_id uuid not null references department (id),
  id uuid not null,
  key text not null,
  person_id uuid,
  route text not null,
  payload_digest text not null,
  status smallint not null,
  body jsonb,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "idempotency-key-taken" unique (department_id, key)
);
call keep_as_history('idempotency_record');

-- Business numbers without a gap: the counter moves in the transaction that uses the number.
create table number_series (
  department_id uuid not null references department (id),
  id uuid not null,
  seller_id uuid,
  kind text not null check (kind in ('contract', 'invoice', 'creditMemo', 'payment', 'receipt', 'depositSlip')),
  fiscal_year integer not null,
  last_number integer not null default 0,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "number-series-taken" unique nulls not distinct (department_id, seller_id, kind, fiscal_year)
);
call raise_wall('number_series');
grant select, insert, update on number_series to {{runtime}};

-- Who a session's token stands for, in one statement before a scope is known. It sets the scope for its own statement only.
create function session_of(token text) returns table (person_id uuid, department_id uuid, roles text[]) language plpgsql as $$
declare
  found_session session%rowtype;
begin
  select * into found_session from session
    where session.token_hash = token and session.revoked_at is null
      and session.expires_at > now() and session.last_seen_at > now() - interval '30 minutes';
  if not found then return; end if;
  perform set_config('app.department_id', found_session.department_id::text, true);
  if found_session.last_seen_at < now() - interval '1 minute' then
    update session set last_seen_at = now() where session.token_hash = token;
  end if;
  return query select found_session.person_id, found_session.department_id, membership.roles from membership
    where membership.department_id = found_session.department_id and membership.person_id = found_session.person_id
      and (membership.ended_on is null or membership.ended_on > current_date);
end $$;
