/** Brings the schema forward: numbered SQL files, each once, each in one transaction, never backward. */
import { createHash } from 'node:crypto'
import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import pg from 'pg'
import { WayOut, command } from './terminal.mjs'

const migrationsFolder = fileURLToPath(new URL('../../migrations', import.meta.url))
const oneAtATime = 7_203_345
const oldestServer = 150_000

/**
 * @typedef {{ number: number, name: string, text: string, checksum: string }} Migration
 * @typedef {{ number: number, name: string, checksum: string }} Applied
 */

/** @param {string} [folder] @returns {Migration[]} by number */
export function migrationFiles(folder = migrationsFolder) {
  const files = readdirSync(folder).filter((name) => name.endsWith('.sql')).sort()
  return files.map((name, index) => {
    const number = Number(/^(\d{4})_[a-z0-9_-]+\.sql$/.exec(name)?.[1])
    if (number !== index + 1) throw new WayOut(`migrations/${name} breaks the numbering: number ${String(index + 1).padStart(4, '0')} is due.`)
    // The line endings of a checkout say nothing about its content.
    const text = readFileSync(join(folder, name), 'utf8').replaceAll('\r\n', '\n')
    return { number, name, text, checksum: createHash('sha256').update(text).digest('hex') }
  })
}

/** The login the server runs as, quoted for SQL. @param {string} webUrl */
export function runtimeLogin(webUrl) {
  const name = decodeURIComponent(new URL(webUrl).username)
  if (!/^[A-Za-z_][A-Za-z0-9_-]{0,62}$/.test(name)) {
    throw new WayOut(`The user name of DATABASE_URL is "${name}". Use letters, digits, _ and - only; the migrations grant rights to this name.`)
  }
  return `"${name}"`
}

/** What was applied to this database. @param {pg.ClientBase} client @returns {Promise<Applied[]>} */
export async function appliedMigrations(client) {
  const { rows } = await client.query(`select to_regclass('public.schema_migration') is not null as there`)
  if (!rows[0].there) return []
  return (await client.query('select number, name, checksum from schema_migration order by number')).rows
}

/** @param {Applied[]} applied @param {Migration[]} files */
function refuseStrangers(applied, files) {
  const newest = files.at(-1)?.number ?? 0
  const newer = applied.filter((one) => one.number > newest)
  if (newer.length > 0) {
    throw new WayOut(
      `This database was brought forward by a newer Rafterline (${newer.map((one) => one.name).join(', ')}); this one knows migrations up to ${newest}.\n` +
        'The way out: start the newer version, or restore the backup that was made before the upgrade into an empty database. Nothing was changed.',
    )
  }
  for (const one of applied) {
    const file = files[one.number - 1]
    if (file && file.checksum === one.checksum) continue
    throw new WayOut(
      `The migration ${one.name} was changed after it was applied to this database.\n` +
        `The way out: put back migrations/${one.name} as it was and write what you want to change as the next number. Nothing was changed.`,
    )
  }
}

/** @param {pg.ClientBase} client */
async function refuseUnsafeServer(client) {
  const { rows } = await client.query(
    `select current_setting('server_version_num')::int as version,
       array(select name from pg_settings where name in ('fsync', 'full_page_writes', 'synchronous_commit') and setting = 'off') as off`,
  )
  const { version, off } = rows[0]
  if (version < oldestServer) throw new WayOut(`This is PostgreSQL ${Math.floor(version / 10_000)}; Rafterline needs 15 or newer.`)
  if (off.length > 0) throw new WayOut(`${off.join(' and ')} is off in this PostgreSQL server: what was saved could be lost. Turn it on and start again.`)
}

/** The runtime login must meet the walls. @param {pg.ClientBase} client @param {string} webUrl */
async function refuseMightyLogin(client, webUrl) {
  const name = decodeURIComponent(new URL(webUrl).username)
  const { rows } = await client.query('select rolsuper or rolbypassrls as mighty, rolname = current_user as owner from pg_roles where rolname = $1', [name])
  if (!rows[0]) throw new WayOut(`There is no login "${name}" (the user of DATABASE_URL) on this PostgreSQL server. README, "For a real school", shows how to create it.`)
  if (rows[0].mighty) throw new WayOut(`The login "${name}" may step over row-level security. Give DATABASE_URL a login with NOSUPERUSER NOBYPASSRLS.`)
  if (rows[0].owner) throw new WayOut('DATABASE_URL and DATABASE_OWNER_URL name the same login. The server must run as one that owns nothing.')
}

/** @param {pg.ClientBase} client @param {Migration} file @param {string} runtime */
async function apply(client, file, runtime) {
  await client.query('begin')
  try {
    await client.query(file.text.replaceAll('{{runtime}}', runtime))
    await client.query('insert into schema_migration (number, name, checksum) values ($1, $2, $3)', [file.number, file.name, file.checksum])
    await client.query('commit')
  } catch (failure) {
    await client.query('rollback')
    const { message, position } = /** @type {pg.DatabaseError} */ (failure)
    const line = position ? file.text.slice(0, Number(position)).split('\n').length : null
    throw new WayOut(`migrations/${file.name}${line ? `, near line ${line}` : ''}: ${message}\nNothing of this file was kept.`)
  }
}

/** @param {pg.ClientBase} client @param {string} runtime */
async function prepareRecord(client, runtime) {
  await client.query(
    `create table if not exists schema_migration (
       number integer primary key, name text not null, checksum text not null, applied_at timestamptz(3) not null default now())`,
  )
  await client.query(`grant select on schema_migration to ${runtime}`)
}

/** Is there anything a person would miss? @param {pg.ClientBase} client */
export async function holdsData(client) {
  const { rows } = await client.query(`select to_regclass('public.department') is not null as there`)
  if (!rows[0].there) return false
  return (await client.query('select exists (select from department) as any')).rows[0].any
}

/** Applies what is missing.
 * @param {{ ownerUrl: string, webUrl: string, upTo?: number, migrationsFolder?: string,
 *   backup?: (before: number) => Promise<string>, note?: (text: string) => void }} options
 * @returns {Promise<{ applied: string[], schema: number }>} */
export async function migrate({ ownerUrl, webUrl, upTo = Infinity, migrationsFolder: from, backup, note = () => {} }) {
  const files = migrationFiles(from)
  const runtime = runtimeLogin(webUrl)
  const client = new pg.Client({ connectionString: ownerUrl, application_name: 'rafterline migrate' })
  await client.connect()
  try {
    await client.query('set client_min_messages = warning')
    await refuseUnsafeServer(client)
    await client.query('select pg_advisory_lock($1)', [oneAtATime])
    await refuseMightyLogin(client, webUrl)
    const applied = await appliedMigrations(client)
    refuseStrangers(applied, files)
    const due = files.slice(applied.length).filter((file) => file.number <= upTo)
    if (due.length > 0 && backup && (await holdsData(client))) note(`backup in ${await backup(due[0]?.number ?? 0)}`)
    if (due.length > 0) await prepareRecord(client, runtime)
    for (const file of due) await apply(client, file, runtime)
    note(due.length > 0 ? `${due.length} applied` : 'nothing to do')
    return { applied: due.map((file) => file.name), schema: applied.length + due.length }
  } finally {
    await client.end()
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  await command(async () => {
    const { openDatabase } = await import('./database.mjs')
    const { backupBeforeMigrating } = await import('./backup.mjs')
    const database = await openDatabase()
    try {
      await migrate({ ...database, backup: backupBeforeMigrating(database), note: (text) => console.log(`Migrations: ${text}`) })
    } finally {
      await database.close()
    }
  })
}
