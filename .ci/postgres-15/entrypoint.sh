#!/bin/bash
# The part of the official image's behaviour that testcontainers leans on: a user, a password, a database, then the server.
set -euo pipefail
data=${PGDATA:-/var/lib/postgresql/data}
user=${POSTGRES_USER:-postgres}
database=${POSTGRES_DB:-$user}
: "${POSTGRES_PASSWORD:?POSTGRES_PASSWORD is required}"

as_postgres() { setpriv --reuid=postgres --regid=postgres --clear-groups "$@"; }

[ "${1:-postgres}" = postgres ] || exec "$@"
[ "${1:-}" = postgres ] && shift

mkdir -p "$data" /var/run/postgresql
chown postgres:postgres "$data" /var/run/postgresql
chmod 700 "$data"
if [ ! -s "$data/PG_VERSION" ]; then
  printf '%s\n' "$POSTGRES_PASSWORD" > /tmp/password
  chown postgres /tmp/password
  as_postgres initdb -D "$data" -U "$user" --pwfile=/tmp/password -A scram-sha-256 -E UTF8 --locale=C.UTF-8
  rm /tmp/password
  echo 'host all all all scram-sha-256' >> "$data/pg_hba.conf"
  as_postgres pg_ctl -D "$data" -w -o "-c listen_addresses='' -k /tmp" start
  if [ "$database" != postgres ]; then
    PGPASSWORD=$POSTGRES_PASSWORD as_postgres psql -h /tmp -U "$user" -d postgres -v ON_ERROR_STOP=1 -c "create database \"$database\""
  fi
  as_postgres pg_ctl -D "$data" -w -m fast stop
fi
exec setpriv --reuid=postgres --regid=postgres --clear-groups postgres -D "$data" -c listen_addresses='*' "$@"
