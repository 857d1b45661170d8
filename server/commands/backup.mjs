/** `npm run backup -- --out FILE`: everything, department by department, as it stood at one moment. */
import { createHash } from 'node:crypto'
import { closeSync, createWriteStream, fsyncSync, mkdirSync, openSync, renameSync, rmSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { finished } from 'node:stream/promises'
import { pathToFileURL } from 'node:url'
import { createGzip } from 'node:zlib'
import pg from 'pg'
import { to as copyTo } from 'pg-copy-streams'
import { endOfRows, format, tablesOf } from './backup-file.mjs'
import { openDatabase } from './database.mjs'
import { appliedMigrations } from './migrate.mjs'
import { WayOut, command, option, step } from './terminal.mjs'

/** @typedef {import('./backup-file.mjs').Table} Table */

/** Writes lines, packed, and knows their digest. */
class Writer {
  /** @param {string} file */
  constructor(file) {
    this.digest = createHash('sha256')
    this.packed = createGzip({ level: 6 })
    this.target = this.packed.pipe(createWriteStream(file, { mode: 0o600 }))
    this.failed = new Promise((_, fail) => this.target.on('error', fail))
    this.failed.catch(() => {})
  }

  /** @param {Buffer | string} bytes */
  async write(bytes) {
    this.digest.update(bytes)
    if (!this.packed.write(bytes)) await Promise.race([new Promise((done) => this.packed.once('drain', done)), this.failed])
  }

  /** @param {unknown} value */
  async line(value) {
    await this.write(`${typeof value === 'string' ? value : JSON.stringify(value)}\n`)
  }

  /** @param {Record<string, number>} rows */
  async close(rows) {
    this.packed.end(`${JSON.stringify({ rows, sha256: this.digest.digest('hex') })}\n`)
    await Promise.race([finished(this.target), this.failed])
  }
}

/** @param {pg.Client} client @param {Writer} writer @param {Table} table @param {string | null} department */
async function writeTable(client, writer, table, department) {
  const columns = table.columns.map((column) => client.escapeIdentifier(column)).join(', ')
  const where = department ? `where department_id = ${client.escapeLiteral(department)}` : ''
  const order = table.key.length > 0 ? `order by ${table.key.map((column) => client.escapeIdentifier(column)).join(', ')}` : ''
  const copy = client.query(copyTo(`copy (select ${columns} from ${client.escapeIdentifier(table.name)} ${where} ${order}) to stdout`))
  await writer.line({ table: table.name, department, columns: table.columns })
  for await (const chunk of copy) await writer.write(chunk)
  await writer.line(endOfRows)
  return copy.rowCount ?? 0
}

/** @param {pg.Client} client @param {Writer} writer */
async function writeAll(client, writer) {
  const migrations = await appliedMigrations(client)
  if (migrations.length === 0) throw new WayOut('This database holds no Rafterline schema; there is nothing to back up.')
  const { rows: server } = await client.query('show server_version')
  await writer.line({ format, madeAt: new Date().toISOString(), postgres: server[0].server_version, schema: migrations.length, migrations })
  const tables = await tablesOf(client)
  /** @type {Record<string, number>} */
  const rows = Object.fromEntries(tables.map((table) => [table.name, 0]))
  const count = async (/** @type {Table} */ table, /** @type {string | null} */ department) => {
    rows[table.name] = (rows[table.name] ?? 0) + (await writeTable(client, writer, table, department))
  }
  for (const table of tables.filter((one) => !one.ofDepartment)) await count(table, null)
  const { rows: departments } = await client.query('select id from department order by id')
  for (const { id } of departments) {
    // The owner meets the walls too, so each department is read from inside.
    await client.query(`set local app.department_id = ${client.escapeLiteral(id)}`)
    for (const table of tables.filter((one) => one.ofDepartment)) await count(table, id)
  }
  await writer.close(rows)
  return { departments: departments.length, rows }
}

/** @param {{ ownerUrl: string, file: string }} options */
export async function backup({ ownerUrl, file }) {
  const target = resolve(file)
  const half = `${target}.half`
  mkdirSync(dirname(target), { recursive: true })
  const client = new pg.Client({ connectionString: ownerUrl, application_name: 'rafterline backup' })
  await client.connect()
  try {
    await client.query('begin isolation level repeatable read read only')
    const result = await writeAll(client, new Writer(half))
    await client.query('commit')
    // Only a complete file gets the name it was asked for.
    const handle = openSync(half, 'r+')
    fsyncSync(handle)
    closeSync(handle)
    renameSync(half, target)
    return { ...result, file: target }
  } catch (failure) {
    rmSync(half, { force: true })
    throw failure
  } finally {
    await client.end()
  }
}

/** Migrations call this when there is something to lose. @param {{ ownerUrl: string, folder: string }} database */
export function backupBeforeMigrating({ ownerUrl, folder }) {
  return async (/** @type {number} */ number) => {
    const moment = new Date().toISOString().replaceAll(/[:.]/g, '-')
    const file = join(folder, 'backups', `before-${String(number).padStart(4, '0')}-${moment}.backup`)
    return (await backup({ ownerUrl, file })).file
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  await command(async () => {
    const file = option('--out')
    if (!file) throw new WayOut('Say where the backup goes: npm run backup -- --out season.backup')
    const database = await step('Opening the database', (note) => openDatabase(note))
    try {
      const done = await step('Writing the backup', () => backup({ ownerUrl: database.ownerUrl, file }))
      const total = Object.values(done.rows).reduce((sum, rows) => sum + rows, 0)
      console.log(`\n${done.departments} departments, ${total} rows in ${done.file}\n`)
    } finally {
      await database.close()
    }
  })
}
