-- What was sent to whom: a message is written once, and what became of it is added beside it.

create table message (
  department_id uuid not null references department (id),
  id uuid not null,
  kind text not null check (kind in ('invoice', 'creditMemo', 'reminder', 'statement', 'receipt', 'thankYou')),
  about_id uuid not null,
  sponsor_id uuid,
  payer_id uuid,
  to_address text not null,
  from_name text not null,
  reply_to text,
  subject text not null,
  body text not null,
  attachments jsonb not null default '[]',
  -- says which mail this is, as in reminder:<invoice>:30, so that the same one never goes out twice
  once_key text not null,
  -- why a letter that went out already goes once more
  again_because text,
  written_by_person_id uuid,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "message-sent-already" unique (department_id, once_key),
  constraint "unknown-sponsor" foreign key (department_id, sponsor_id) references sponsor (department_id, id),
  constraint "unknown-payer" foreign key (department_id, payer_id) references payer (department_id, id)
);
create index message_about on message (department_id, about_id);
call keep_as_history('message');

create table message_event (
  department_id uuid not null references department (id),
  id uuid not null,
  message_id uuid not null,
  kind text not null check (kind in ('handedOver', 'tryFailed', 'refused', 'bounced', 'givenUp')),
  detail text,
  recorded_at timestamptz not null default clock_timestamp(),
  digest bytea,
  primary key (department_id, id),
  constraint "unknown-message" foreign key (department_id, message_id) references message (department_id, id)
);
create index message_event_message on message_event (department_id, message_id);
call keep_as_history('message_event');
