-- A change of the department itself (its zone, its settings) leaves an audit row like any other.

create or replace function audit_change() returns trigger language plpgsql as $$
declare
  kept jsonb := case when tg_op = 'DELETE' then to_jsonb(old) else to_jsonb(new) end;
  changed text[] := '{}';
begin
  if tg_op = 'UPDATE' then
    select coalesce(array_agg(key order by key), '{}') into changed
      from jsonb_each(kept) as field where to_jsonb(old) -> field.key is distinct from field.value and field.key <> 'version';
  end if;
  insert into audit_row (department_id, table_name, row_id, action, fields, row_digest, person_id)
    values (coalesce(kept ->> 'department_id', kept ->> 'id')::uuid, tg_table_name, (kept ->> 'id')::uuid, lower(tg_op), changed,
      sha256(convert_to(jsonb_strip_nulls(kept)::text, 'UTF8')), current_person());
  return null;
end $$;

create trigger audit after update on department for each row execute function audit_change();
