/** `npm run restore -- FILE`: brings a backup back, into an empty database only, all of it or nothing. */
import { once } from 'node:events'
import { finished } from 'node:stream/promises'
import { pathToFileURL } from 'node:url'
import pg from 'pg'
import { from as copyFrom } from 'pg-copy-streams'
import { checkedHead, endOfRows, linesOf, tablesOf } from './backup-file.mjs'
import { openDatabase } from './database.mjs'
import { appliedMigrations, holdsData, migrate, migrationFiles } from './migrate.mjs'
import { WayOut, command, step } from './terminal.mjs'

/** @typedef {import('./backup-file.mjs').Head} Head */

/** @param {Head} head */
function refuseUnknownSchema(head) {
  const files = migrationFiles()
  const stranger = head.migrations.find((one) => files[one.number - 1]?.checksum !== one.checksum)
  if (!stranger) return
  throw new WayOut(
    head.schema > files.length
      ? `This backup was made by a newer Rafterline (schema ${head.schema}; this one knows ${files.length}). Restore it with that version. Nothing was changed.`
      : `This backup was made with another ${stranger.name} than the one in migrations/. Restore it with the version that made it. Nothing was changed.`,
  )
}

/** An empty database is brought to exactly the schema the backup was made with. @param {pg.Client} client @param {Head} head */
async function emptyDatabase(client, head) {
  if (await holdsData(client)) {
    throw new WayOut(
      'This database already holds departments. A backup is restored into an empty one only:\n' +
        '"RAFTERLINE_DATA=another-folder npm run restore -- FILE", or a new database named by DATABASE_URL and DATABASE_OWNER_URL. Nothing was changed.',
    )
  }
  const applied = await appliedMigrations(client)
  if (applied.length === 0 || applied.length === head.schema) return
  await client.query('begin')
  await client.query('drop schema if exists job cascade')
  await client.query('drop schema public cascade')
  await client.query('create schema public')
  await client.query('commit')
}

/**
 * Rows come back as they were, stamps and digests included, so the triggers that stamp rest while they are loaded; so do foreign keys
 * (a table may lead to itself or round a corner) and the walls, which the loading login owns. All in the one transaction that loads.
 * @param {pg.Client} client */
async function loosen(client) {
  const { rows: keys } = await client.query(
    `select conrelid::regclass::text as table, quote_ident(conname) as name, pg_get_constraintdef(oid) as definition
     from pg_constraint where contype = 'f' and connamespace = 'public'::regnamespace and conparentid = 0 order by 1, 2`,
  )
  const { rows: walls } = await client.query(
    `select oid::regclass::text as table from pg_class where relnamespace = 'public'::regnamespace and relkind in ('r', 'p') and relforcerowsecurity`,
  )
  const { rows: triggers } = await client.query(
    `select tgrelid::regclass::text as table, quote_ident(tgname) as name, tgenabled as state from pg_trigger
     join pg_class on pg_class.oid = tgrelid where relnamespace = 'public'::regnamespace and not tgisinternal and tgenabled <> 'D'`,
  )
  const mode = (/** @type {string} */ state) => ({ A: 'enable always', R: 'enable replica' })[state] ?? 'enable'
  for (const { table, name } of keys) await client.query(`alter table ${table} drop constraint ${name}`)
  for (const { table } of walls) await client.query(`alter table ${table} no force row level security`)
  for (const { table, name } of triggers) await client.query(`alter table ${table} disable trigger ${name}`)
  return async () => {
    for (const { table, name, state } of triggers) await client.query(`alter table ${table} ${mode(state)} trigger ${name}`)
    for (const { table, name, definition } of keys) await client.query(`alter table ${table} add constraint ${name} ${definition}`)
    for (const { table } of walls) await client.query(`alter table ${table} force row level security`)
  }
}

/** @param {pg.Client} client @param {string} file */
async function load(client, file) {
  /** @type {Record<string, number>} */
  const rows = {}
  /** @type {{ stream: ReturnType<typeof copyFrom>, table: string } | null} */
  let open = null
  for await (const line of linesOf(file)) {
    if (open) {
      if (line.equals(Buffer.from(endOfRows))) {
        open.stream.end()
        await finished(open.stream)
        rows[open.table] = (rows[open.table] ?? 0) + open.stream.rowCount
        open = null
      } else if (!open.stream.write(Buffer.concat([line, Buffer.from('\n')]))) await Promise.race([once(open.stream, 'drain'), once(open.stream, 'error')])
      continue
    }
    const part = JSON.parse(line.toString('utf8'))
    if (!part.table) continue
    const columns = part.columns.map((/** @type {string} */ column) => client.escapeIdentifier(column)).join(', ')
    open = { table: part.table, stream: client.query(copyFrom(`copy ${client.escapeIdentifier(part.table)} (${columns}) from stdin`)) }
  }
  return rows
}

/** @param {pg.Client} client @param {string} file @param {Record<string, number>} expected */
async function loadAll(client, file, expected) {
  await client.query('begin')
  try {
    const fasten = await loosen(client)
    // A migration may have put rows of its own into a table; the backup has them.
    const names = (await tablesOf(client)).map((table) => client.escapeIdentifier(table.name))
    await client.query(`truncate ${names.join(', ')}`)
    const rows = await load(client, file)
    for (const [table, count] of Object.entries(expected)) {
      if ((rows[table] ?? 0) !== count) throw new Error(`${table}: ${rows[table] ?? 0} rows came back of ${count}`)
    }
    await fasten()
    await client.query('commit')
    return rows
  } catch (failure) {
    await client.query('rollback')
    throw failure
  }
}

/** @param {{ ownerUrl: string, webUrl: string, file: string, note?: (text: string) => void }} options */
export async function restore({ ownerUrl, webUrl, file, note }) {
  const { head, rows: expected } = await checkedHead(file)
  refuseUnknownSchema(head)
  const client = new pg.Client({ connectionString: ownerUrl, application_name: 'rafterline restore' })
  await client.connect()
  try {
    await client.query('set client_min_messages = warning')
    await emptyDatabase(client, head)
    await migrate({ ownerUrl, webUrl, upTo: head.schema })
    const rows = await loadAll(client, file, expected)
    await client.query('analyze')
    const { applied } = await migrate({ ownerUrl, webUrl })
    if (applied.length > 0) note?.(`${applied.length} newer migrations applied`)
    return { head, rows }
  } finally {
    await client.end()
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  await command(async () => {
    const file = process.argv[2]
    if (!file) throw new WayOut('Say which backup: npm run restore -- season.backup')
    const database = await step('Opening the database', (note) => openDatabase(note))
    try {
      const { head, rows } = await step('Restoring the backup', (note) => restore({ ...database, file, note }))
      const total = Object.values(rows).reduce((sum, count) => sum + count, 0)
      console.log(`\n${rows['department'] ?? 0} departments, ${total} rows, as they stood at ${head.madeAt}\n`)
    } finally {
      await database.close()
    }
  })
}
