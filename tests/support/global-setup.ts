import { randomBytes } from 'node:crypto'
import { chmodSync, existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { GenericContainer, Wait } from 'testcontainers'
import pg from 'pg'
import type { TestProject } from 'vitest/node'
import { build } from '../../server/commands/build.mjs'
import { removeData, startEmbedded } from '../../server/commands/embedded.mjs'
import { createDatabase, prepareLogins } from '../../server/commands/logins.mjs'
import { migrate } from '../../server/commands/migrate.mjs'
import { chosenDatabase, postgresImage } from './engine.mjs'

/** What every test process is told. */
export interface TestServer {
  readonly adminUrl: string
  readonly ownerPassword: string
  readonly webPassword: string
  readonly template: string
  readonly folder: string
}

interface Running extends TestServer {
  stop(): Promise<void>
}

declare module 'vitest' {
  export interface ProvidedContext {
    testServer: TestServer
  }
}

const template = 'rafterline_template'
const memory = existsSync('/dev/shm') ? '/dev/shm' : tmpdir()
const kept = globalThis as { testServer?: Promise<Running>; testServerUsers?: number }

/** The projects of one run share one PostgreSQL server. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  kept.testServerUsers = (kept.testServerUsers ?? 0) + 1
  kept.testServer ??= start()
  const { stop, ...told } = await kept.testServer
  project.provide('testServer', told)
  return async () => {
    kept.testServerUsers = (kept.testServerUsers ?? 1) - 1
    if (kept.testServerUsers > 0) return
    delete kept.testServer
    await stop()
  }
}

async function start(): Promise<Running> {
  await build()
  sweep()
  // Memory is quick and the tests keep every safe setting on.
  const folder = mkdtempSync(join(memory, 'rafterline-test-'))
  writeFileSync(join(folder, 'pid'), String(process.pid))
  // As root the database runs under another account, which has to pass through.
  chmodSync(folder, 0o711)
  const server = chosenDatabase() === 'container' ? await inContainer() : await onThisMachine(folder)
  await makeTemplate(server.adminUrl, server.ownerPassword, server.webPassword)
  return {
    ...server,
    template,
    folder,
    stop: async () => {
      await server.stop()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

/** What a killed run left behind: its database server and its folder. */
function sweep(): void {
  for (const name of readdirSync(memory).filter((found) => found.startsWith('rafterline-test-'))) {
    const owner = numberIn(join(memory, name, 'pid'))
    if (owner === null || isAlive(owner)) continue
    const database = numberIn(join(memory, name, 'server/postgresql/postmaster.pid'))
    if (database !== null && isAlive(database)) process.kill(database, 'SIGQUIT')
    rmSync(join(memory, name), { recursive: true, force: true })
  }
}

function numberIn(file: string): number | null {
  try {
    return Number.parseInt(readFileSync(file, 'utf8'), 10) || null
  } catch {
    return null
  }
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0)
    return true
  } catch {
    return false
  }
}

async function onThisMachine(folder: string) {
  const data = join(folder, 'server')
  const embedded = await startEmbedded({ folder: data })
  return {
    adminUrl: embedded.adminUrl,
    ownerPassword: new URL(embedded.ownerUrl).password,
    webPassword: new URL(embedded.webUrl).password,
    stop: async () => {
      await embedded.stop()
      removeData(data)
    },
  }
}

async function inContainer() {
  const secret = () => randomBytes(18).toString('base64url')
  const password = secret()
  const container = await new GenericContainer(postgresImage)
    .withEnvironment({ POSTGRES_USER: 'postgres', POSTGRES_PASSWORD: password, POSTGRES_DB: 'postgres' })
    .withTmpFs({ '/var/lib/postgresql/data': 'rw' })
    .withExposedPorts(5432)
    .withWaitStrategy(Wait.forLogMessage(/ready to accept connections/))
    .withStartupTimeout(120_000)
    .start()
  const adminUrl = `postgres://postgres:${password}@${container.getHost()}:${container.getMappedPort(5432)}/postgres`
  await untilItAnswers(adminUrl)
  return { adminUrl, ownerPassword: secret(), webPassword: secret(), stop: async () => void (await container.stop()) }
}

/** The image starts PostgreSQL once to set it up before it lets anybody in. */
async function untilItAnswers(url: string): Promise<void> {
  for (const until = Date.now() + 60_000; ; ) {
    const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: 3000 })
    client.on('error', () => {})
    try {
      await client.connect()
      return await client.end()
    } catch (failure) {
      await client.end().catch(() => {})
      if (Date.now() > until) throw failure
      await new Promise((done) => setTimeout(done, 200))
    }
  }
}

async function makeTemplate(adminUrl: string, ownerPassword: string, webPassword: string): Promise<void> {
  await prepareLogins(adminUrl, { postgres: '', rafterline_owner: ownerPassword, rafterline_web: webPassword }, template)
  const urls = urlsOf(adminUrl, ownerPassword, webPassword, template)
  await migrate(urls)
}

/** The addresses of one database for the two logins. */
export function urlsOf(adminUrl: string, ownerPassword: string, webPassword: string, database: string) {
  const as = (login: string, password: string) => {
    const url = new URL(adminUrl)
    url.username = login
    url.password = password
    url.pathname = `/${database}`
    return url.href
  }
  return { ownerUrl: as('rafterline_owner', ownerPassword), webUrl: as('rafterline_web', webPassword) }
}

/** A migrated and otherwise empty database of its own. */
export async function cloneOf(server: TestServer, name: string) {
  const client = new pg.Client({ connectionString: server.adminUrl })
  await client.connect()
  try {
    // Two processes cannot copy one template at the same moment.
    await client.query('select pg_advisory_lock(1)')
    await createDatabase(client, name, server.template)
  } finally {
    await client.end()
  }
  return urlsOf(server.adminUrl, server.ownerPassword, server.webPassword, name)
}
