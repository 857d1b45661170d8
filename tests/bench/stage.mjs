/** The stage of a benchmark: a private PostgreSQL server, databases on it, built servers, somebody who is signed in. */
import { createHash, randomBytes, randomUUID } from 'node:crypto'
import { chmodSync, existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import pg from 'pg'
import { build } from '../../server/commands/build.mjs'
import { removeData, startEmbedded } from '../../server/commands/embedded.mjs'
import { createDatabase } from '../../server/commands/logins.mjs'
import { migrate } from '../../server/commands/migrate.mjs'
import { freePort } from '../../server/commands/port.mjs'
import { startServer } from '../../server/commands/server-process.mjs'

/** @typedef {{ adminUrl: string, ownerUrl: string, webUrl: string }} Database */

export class Stage {
  /** @type {(() => Promise<void> | void)[]} */
  #toClear = []
  #folder = ''
  /** @type {import('../../server/commands/embedded.mjs').Embedded | null} */
  #embedded = null

  async open() {
    await build(['server'])
    this.#folder = mkdtempSync(join(existsSync('/dev/shm') ? '/dev/shm' : tmpdir(), 'rafterline-bench-'))
    // As root the database runs under another account, which has to pass through.
    chmodSync(this.#folder, 0o711)
    this.onClose(() => rmSync(this.#folder, { recursive: true, force: true }))
    const data = join(this.#folder, 'server')
    const embedded = await startEmbedded({ folder: data })
    this.#embedded = embedded
    this.onClose(async () => {
      await embedded.stop()
      removeData(data)
    })
  }

  /** @param {() => Promise<void> | void} clear */
  onClose(clear) {
    this.#toClear.push(clear)
  }

  async close() {
    for (const clear of this.#toClear.splice(0).reverse()) await clear()
  }

  /** A migrated database without rows. @param {string} name @returns {Promise<Database>} */
  async database(name) {
    const embedded = this.#embedded
    if (!embedded) throw new Error('the stage is not open')
    const at = (/** @type {string} */ url) => Object.assign(new URL(url), { pathname: `/${name}` }).href
    const client = new pg.Client({ connectionString: embedded.adminUrl })
    await client.connect()
    await createDatabase(client, name).finally(() => client.end())
    const urls = { adminUrl: at(embedded.adminUrl), ownerUrl: at(embedded.ownerUrl), webUrl: at(embedded.webUrl) }
    await migrate(urls)
    return urls
  }

  /** The built server on a database. @param {Database} database @param {Record<string, string>} [environment] */
  async server(database, environment = {}) {
    const port = await freePort()
    const server = await startServer({
      port,
      logFile: join(this.#folder, `server-${port}.log`),
      environment: { DATABASE_URL: database.webUrl, RAFTERLINE_DATA: this.#folder, ...environment },
    })
    this.onClose(() => server.stop())
    return server
  }

  /** @param {string} name */
  file(name) {
    return join(this.#folder, name)
  }
}

/** A director of the department, signed in. @param {Database} database @param {string} departmentId */
export async function signIn(database, departmentId) {
  const token = randomBytes(32).toString('base64url')
  const tokenHash = createHash('sha256').update(token).digest('hex')
  const personId = randomUUID()
  const client = new pg.Client({ connectionString: database.adminUrl })
  await client.connect()
  try {
    await client.query(`insert into person (id, email, name, password_hash) values ($1::uuid, $1::uuid::text || '@tamarack.example', 'Director', 'nobody signs in with it')`, [personId])
    await client.query(`insert into membership (department_id, id, person_id, roles) values ($1, $2, $3, '{director}')`, [departmentId, randomUUID(), personId])
    await client.query(`insert into session (token_hash, person_id, department_id, expires_at) values ($1, $2, $3, now() + interval '12 hours')`, [tokenHash, personId, departmentId])
  } finally {
    await client.end()
  }
  return { token, tokenHash, personId }
}
