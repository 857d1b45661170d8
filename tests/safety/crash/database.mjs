/** The database of a run: a private PostgreSQL server with every safe setting on, its data in memory, always at the same port. */
import { execFileSync } from 'node:child_process'
import { join } from 'node:path'
import pg from 'pg'
import { removeData, startEmbedded } from '../../../server/commands/embedded.mjs'
import { migrate } from '../../../server/commands/migrate.mjs'
import { freePort } from '../../../server/commands/port.mjs'
import { wait } from '../../../server/commands/terminal.mjs'

export class Database {
  /** @type {import('../../../server/commands/embedded.mjs').Embedded | null} */
  #running = null
  #isDown = false
  adminUrl = ''
  ownerUrl = ''
  webUrl = ''

  /** @param {string} folder */
  constructor(folder) {
    this.data = join(folder, 'database')
    this.port = 0
  }

  async open() {
    this.port = await freePort()
    await this.#start()
    await migrate({ ownerUrl: this.ownerUrl, webUrl: this.webUrl })
  }

  get isDown() {
    return this.#isDown
  }

  async #start() {
    const running = await startEmbedded({ folder: this.data, port: this.port })
    this.#running = running
    this.adminUrl = Object.assign(new URL(running.adminUrl), { pathname: '/rafterline' }).href
    this.ownerUrl = running.ownerUrl
    this.webUrl = running.webUrl
  }

  /** The postmaster and its processes, the postmaster first. @returns {number[]} */
  processes() {
    const pid = this.#running?.pid
    if (!pid) return []
    const listed = execFileSync('ps', ['-A', '-o', 'pid=,ppid='], { encoding: 'utf8' }).trim().split('\n').map((line) => line.trim().split(/\s+/).map(Number))
    return [pid, ...listed.filter(([, parent]) => parent === pid).map(([child]) => child ?? 0)]
  }

  /** As when the power goes: all processes at once, without a word. @param {readonly number[]} pids */
  kill(pids) {
    this.#isDown = true
    for (const pid of pids) signal(pid, 'SIGKILL')
  }

  /** After a kill: the same port, what was written is recovered from the log. */
  async recover() {
    for (const until = Date.now() + 60_000; ; await wait(300)) {
      try {
        await this.#start()
        this.#isDown = false
        return
      } catch (failure) {
        if (Date.now() > until) throw failure
      }
    }
  }

  /** Connections of the servers. @param {(pids: number[]) => number[]} choose which are ended */
  async terminate(choose) {
    await this.#asAdmin(async (client) => {
      const { rows } = await client.query(`select pid from pg_stat_activity where usename = 'rafterline_web' order by pid`)
      for (const pid of choose(rows.map((row) => row.pid))) await client.query('select pg_terminate_backend($1)', [pid])
    })
  }

  /** @param {(client: pg.Client) => Promise<void>} run */
  async #asAdmin(run) {
    const client = new pg.Client({ connectionString: this.adminUrl, connectionTimeoutMillis: 3000 })
    client.on('error', () => {})
    try {
      await client.connect()
      await run(client)
    } finally {
      await client.end().catch(() => {})
    }
  }

  async close() {
    const running = this.#running
    if (!running) return
    for (const pid of this.processes()) signal(pid, 'SIGCONT')
    await running.stop()
    removeData(this.data)
  }
}

/** @param {number} pid @param {NodeJS.Signals} name */
export function signal(pid, name) {
  try {
    if (pid > 0) process.kill(pid, name)
  } catch {
    // It is gone already.
  }
}
