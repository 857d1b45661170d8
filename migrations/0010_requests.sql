-- What is asked of the table by a short public form, which the director opens for a night, or by the office.

alter table night add column takes_requests boolean not null default false;

alter table link drop constraint link_kind_check;
alter table link add constraint link_kind_check check (kind in ('table', 'sponsor', 'request'));

create table night_request (
  department_id uuid not null references department (id),
  id uuid not null,
  night_id uuid not null,
  source text not null check (source in ('public', 'office')),
  kind text not null check (kind in ('vehicle', 'fundraiser', 'music', 'other', 'lostChild', 'foundItem', 'medical')),
  fields jsonb not null,
  state text not null default 'waiting' check (state in ('waiting', 'approved', 'read', 'declined', 'expired')),
  -- in their order, one that came too late in it: what it comes to is worked out anew when an entry is taken back
  answers jsonb not null default '[]',
  asked_at timestamptz(3) not null default clock_timestamp(),
  -- of the sender's address and the form's token, so that it says nothing outside of this form
  address_hash text,
  version integer not null default 1,
  primary key (department_id, id),
  constraint "request-kind-table-only" check (source <> 'public' or kind in ('vehicle', 'fundraiser', 'music', 'other')),
  constraint "unknown-night" foreign key (department_id, night_id) references night (department_id, id)
);
create index night_request_night on night_request (department_id, night_id, asked_at);
call keep_with_audit('night_request');
