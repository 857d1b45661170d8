import { existsSync, mkdirSync } from 'node:fs'
import { join } from 'node:path'
import pg from 'pg'
import { inject } from 'vitest'
import { checkout } from '../../server/commands/build.mjs'
import { freePort } from '../../server/commands/port.mjs'
import { startServer } from '../../server/commands/server-process.mjs'
import { cloneOf } from './global-setup.ts'

/** A running built server with a database of its own. */
export interface Application {
  readonly baseUrl: string
  readonly ownerUrl: string
  readonly webUrl: string
  readonly ownerPool: pg.Pool
  readonly webPool: pg.Pool
  readonly folder: string
  readonly pid: number
  stop(): Promise<void>
  /** Ends the server alone; what it answers starts it again on the same port and database. */
  stopServer(): Promise<() => Promise<void>>
}

let made = 0

/** Every statement of the run is written into this folder, one file a server. */
export const statementsFolder = join(inject('testServer').folder, 'statements')

/** Starts a server of the test's own, beside the one all tests of this process share. */
export async function anApplication(environment: Record<string, string> = {}): Promise<Application> {
  const name = `rafterline_${process.pid}_${++made}`
  const server = inject('testServer')
  const { ownerUrl, webUrl } = await cloneOf(server, name)
  const folder = join(server.folder, name)
  mkdirSync(folder, { recursive: true })
  mkdirSync(statementsFolder, { recursive: true })
  const pages = join(checkout, '.build/admin-ui')
  const start = (port: number) => startServer({
    port,
    logFile: join(folder, 'server.log'),
    environment: {
      DATABASE_URL: webUrl,
      RAFTERLINE_DATA: folder,
      RAFTERLINE_LOG_LEVEL: 'info',
      RAFTERLINE_STATEMENT_LOG: join(statementsFolder, `${name}.log`),
      ...(existsSync(pages) ? { RAFTERLINE_STATIC: pages } : {}),
      ...environment,
    },
  })
  let running = await start(await freePort())
  const pools = [ownerUrl, webUrl].map((connectionString) => new pg.Pool({ connectionString, max: 5, allowExitOnIdle: true }))
  for (const pool of pools) pool.on('error', () => {})
  const [ownerPool, webPool] = pools as [pg.Pool, pg.Pool]
  return {
    baseUrl: `http://localhost:${running.port}`,
    ownerUrl,
    webUrl,
    ownerPool,
    webPool,
    folder,
    pid: running.pid,
    stop: async () => {
      await Promise.all(pools.map((pool) => pool.end()))
      await running.stop()
    },
    stopServer: async () => {
      await running.stop()
      return async () => void (running = await start(running.port))
    },
  }
}

const kept = globalThis as { application?: Promise<Application> }

/** The server that all tests of this process share. */
export const application = await (kept.application ??= anApplication())
export const { baseUrl, ownerPool, webPool } = application
