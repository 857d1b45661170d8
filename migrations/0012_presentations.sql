-- Says of a read kind what is handed over before the crowd, instead of reading it from the kind's name.

alter table read_kind add column presents text check (presents <> '');

do $$
declare one uuid;
begin
  for one in select id from department loop
    execute format('set local app.department_id = %L', one);
    update read_kind set presents = nullif(trim(lower(regexp_replace(name, '\s*\mpresentation\M\s*', '', 'i'))), '')
      where department_id = one and 'pregame' = any(windows) and name ~* '\m(ball|presentation)\M';
  end loop;
end $$;
