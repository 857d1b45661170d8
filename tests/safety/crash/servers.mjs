/** Two processes of the built server on one database, each at its own port for the whole run. */
import { join } from 'node:path'
import { freePort } from '../../../server/commands/port.mjs'
import { startServer } from '../../../server/commands/server-process.mjs'
import { wait } from '../../../server/commands/terminal.mjs'
import { signal } from './database.mjs'

export class ServerOfTwo {
  /** @type {import('../../../server/commands/server-process.mjs').ServerProcess | null} */
  #running = null
  #isClosed = false
  port = 0

  /** @param {{ name: string, folder: string, webUrl: string, program?: string | undefined }} told */
  constructor({ name, folder, webUrl, program }) {
    this.name = name
    this.folder = folder
    this.webUrl = webUrl
    this.program = program
  }

  async open() {
    this.port = await freePort()
    await this.start()
  }

  get isUp() {
    return this.#running !== null && !this.#running.isGone()
  }

  get pid() {
    return this.#running?.pid ?? 0
  }

  /** A start fails while the database is away; it is tried until it succeeds. */
  async start() {
    for (const until = Date.now() + 120_000; !this.#isClosed; await wait(200)) {
      try {
        this.#running = await startServer({
          port: this.port,
          logFile: join(this.folder, `${this.name}.log`),
          environment: { DATABASE_URL: this.webUrl, RAFTERLINE_DATA: this.folder, RAFTERLINE_LOG_LEVEL: 'error', RAFTERLINE_HOST: '127.0.0.1' },
          ...(this.program ? { program: this.program } : {}),
        })
        if (this.#isClosed) await this.close()
        return
      } catch (failure) {
        if (Date.now() > until) throw failure
      }
    }
  }

  kill() {
    signal(this.pid, 'SIGKILL')
  }

  async restart() {
    await this.#running?.exited
    this.#running = null
    await this.start()
  }

  async close() {
    this.#isClosed = true
    signal(this.pid, 'SIGCONT')
    await this.#running?.stop()
  }
}
