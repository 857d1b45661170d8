#!/bin/bash
# Run once by the PostgreSQL image when its volume is new: one login owns the schema, the other runs the server and owns nothing.
set -euo pipefail
psql -v ON_ERROR_STOP=1 -U "$POSTGRES_USER" -d postgres -v owner="$OWNER_PASSWORD" -v web="$WEB_PASSWORD" <<'SQL'
create role rafterline_owner login nosuperuser nobypassrls nocreatedb nocreaterole password :'owner';
create role rafterline_web login nosuperuser nobypassrls nocreatedb nocreaterole password :'web';
alter database rafterline owner to rafterline_owner;
revoke all on database rafterline from public;
grant connect on database rafterline to rafterline_web;
SQL
