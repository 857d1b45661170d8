/**
 * The form of a backup: one gzip file of lines. First a head (JSON), then for each table and department a line naming it (JSON) with
 * its rows as COPY writes them and a closing "\.", last a foot (JSON) with the number of rows a table and the SHA-256 of all before it.
 */
import { createHash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { Transform } from 'node:stream'
import { createGunzip } from 'node:zlib'
import { WayOut } from './terminal.mjs'

export const format = 'rafterline-backup-1'
export const endOfRows = '\\.'

// Sign-ins are not history: whoever is signed in signs in again after a restore. Nor are jobs (the schema job): the server queues waiting letters anew.
export const leftOut = ['schema_migration', 'session', 'sign_in_attempt']

/**
 * @typedef {{ format: string, madeAt: string, postgres: string, schema: number, migrations: { number: number, name: string, checksum: string }[] }} Head
 * @typedef {{ table: string, department: string | null, columns: string[] }} Part
 * @typedef {{ rows: Record<string, number>, sha256: string }} Foot
 * @typedef {{ name: string, columns: string[], key: string[], ofDepartment: boolean }} Table
 */

/** Every table of the schema with the columns that are stored (not computed) and its primary key.
 * @param {import('pg').ClientBase} client @returns {Promise<Table[]>} */
export async function tablesOf(client) {
  const { rows } = await client.query(
    `select c.relname as name,
       array(select a.attname::text from pg_attribute a where a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped and a.attgenerated = ''
         order by a.attnum) as columns,
       array(select a.attname::text from pg_index i, unnest(i.indkey) with ordinality as part(number, place), pg_attribute a
         where i.indrelid = c.oid and i.indisprimary and a.attrelid = c.oid and a.attnum = part.number order by part.place) as key
     from pg_class c where c.relnamespace = 'public'::regnamespace and c.relkind in ('r', 'p') and not c.relispartition
       and not c.relname = any($1) order by c.relname`,
    [leftOut],
  )
  return rows.map((row) => ({ ...row, ofDepartment: row.columns.includes('department_id') }))
}

/** Cuts a stream of bytes into lines without their ends. */
function lines() {
  /** @type {Buffer[]} */
  let open = []
  return new Transform({
    readableObjectMode: true,
    transform(chunk, _encoding, done) {
      let from = 0
      for (let at = chunk.indexOf(10); at >= 0; at = chunk.indexOf(10, from)) {
        open.push(chunk.subarray(from, at))
        this.push(open.length === 1 ? open[0] : Buffer.concat(open))
        open = []
        from = at + 1
      }
      if (from < chunk.length) open.push(chunk.subarray(from))
      done()
    },
    flush(done) {
      done(open.length > 0 ? new Error('cut off') : null)
    },
  })
}

/** The lines of a backup file, one after the other. @param {string} file @returns {AsyncIterable<Buffer>} */
export function linesOf(file) {
  const source = createReadStream(file)
  const unpacked = source.pipe(createGunzip())
  const cut = unpacked.pipe(lines())
  source.on('error', (failure) => cut.destroy(failure))
  unpacked.on('error', (failure) => cut.destroy(failure))
  return cut
}

/** Reads the whole file once and proves it complete and unchanged, before anything is written anywhere.
 * @param {string} file @returns {Promise<{ head: Head, rows: Record<string, number> }>} */
export async function checkedHead(file) {
  const digest = createHash('sha256')
  /** @type {Head | null} */
  let head = null
  /** @type {Buffer | null} */
  let last = null
  try {
    for await (const line of linesOf(file)) {
      head ??= headFrom(line, file)
      if (last) digest.update(last).update('\n')
      last = line
    }
  } catch (failure) {
    if (failure instanceof WayOut) throw failure
    const { code } = /** @type {NodeJS.ErrnoException} */ (failure)
    if (code === 'ENOENT' || code === 'EACCES') throw new WayOut(`The file ${file} cannot be opened.`)
    throw new WayOut(`${file} is damaged or cut off. Use another backup; nothing was changed.`)
  }
  const foot = footFrom(last)
  if (!head || foot?.sha256 !== digest.digest('hex')) throw new WayOut(`${file} is damaged or cut off. Use another backup; nothing was changed.`)
  return { head, rows: foot.rows }
}

/** @param {Buffer} line @param {string} file @returns {Head} */
function headFrom(line, file) {
  try {
    const head = JSON.parse(line.toString('utf8'))
    if (head.format === format) return head
  } catch {
    // Said below in one sentence.
  }
  throw new WayOut(`${file} is not a backup that this version of Rafterline can read.`)
}

/** @param {Buffer | null} line @returns {Foot | null} */
function footFrom(line) {
  try {
    return JSON.parse(line?.toString('utf8') ?? '')
  } catch {
    return null
  }
}
