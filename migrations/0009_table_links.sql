-- A night's table opens without a sign-in: whose link it is, what it may do, and which link an entry or a sign-off came by.

-- Null where the link was given out; else the signed-in person whose own way to one night's table it is.
alter table link
  add column person_id uuid references person (id),
  add column may_sign_off boolean not null default false,
  add constraint "only-tables-sign-off" check (kind = 'table' or not may_sign_off);

alter table log_entry add column logged_by_link_id uuid;
alter table sign_off
  alter column signed_off_by_person_id drop not null,
  add column signed_off_by_link_id uuid,
  add constraint "sign-off-by-nobody" check (signed_off_by_person_id is not null or signed_off_by_link_id is not null);

alter table link no force row level security;
alter table log_entry no force row level security;
alter table sign_off no force row level security;
alter table log_entry add constraint "unknown-link" foreign key (department_id, logged_by_link_id) references link (department_id, id);
alter table sign_off add constraint "unknown-link" foreign key (department_id, signed_off_by_link_id) references link (department_id, id);
alter table link force row level security;
alter table log_entry force row level security;
alter table sign_off force row level security;

create index log_entry_link on log_entry (department_id, logged_by_link_id) where logged_by_link_id is not null;

-- Whose token it is, in one statement before a scope is known. Where the link stands (early, open, ended, revoked) is for the caller to judge.
-- Of a person's own link the roles are read anew each time: it ends with the membership.
drop function link_of(text);
create function link_of(token text) returns table (
  id uuid, department_id uuid, kind text, subject_id uuid, pin_hash text, not_before_at timestamptz, expires_at timestamptz, revoked_at timestamptz,
  may_sign_off boolean, worker_name text, person_id uuid, roles text[]
) language plpgsql as $$
declare
  found_link link%rowtype;
begin
  perform set_config('app.link_hash', token, true);
  select * into found_link from link where link.token_hash = token;
  if not found then return; end if;
  perform set_config('app.department_id', found_link.department_id::text, true);
  return query select found_link.id, found_link.department_id, found_link.kind, found_link.subject_id, found_link.pin_hash,
      found_link.not_before_at, found_link.expires_at, found_link.revoked_at, found_link.may_sign_off,
      coalesce((select person.name from person where person.id = found_link.person_id), found_link.label), found_link.person_id,
      (select membership.roles from membership
        where membership.department_id = found_link.department_id and membership.person_id = found_link.person_id
          and (membership.ended_on is null or membership.ended_on > current_date));
end $$;
