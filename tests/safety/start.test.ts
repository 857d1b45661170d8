import { spawn } from 'node:child_process'
import type { ChildProcess } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import pg from 'pg'
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest'
import { checkout } from '../../server/commands/build.mjs'
import { removeData, startEmbedded } from '../../server/commands/embedded.mjs'
import { freePort } from '../../server/commands/port.mjs'
import { answerOf } from '../../server/commands/server-process.mjs'

interface Start {
  readonly process: ChildProcess
  readonly said: () => string
  readonly ended: Promise<number | null>
  readonly address: string
}

const folders: string[] = []
const running = new Set<ChildProcess>()
let first = ''
let firstPort = 0

function aFolder(): string {
  const folder = mkdtempSync(join(existsSync('/dev/shm') ? '/dev/shm' : tmpdir(), 'rafterline-start-'))
  folders.push(folder)
  return folder
}

function launch(folder: string, port: number, words: string[] = []) {
  const { DATABASE_URL: _url, DATABASE_OWNER_URL: _owner, ...environment } = process.env
  const child = spawn(process.execPath, [join(checkout, 'server/commands/start.mjs'), ...words], {
    cwd: checkout,
    env: { ...environment, RAFTERLINE_DATA: folder, PORT: String(port), NODE_OPTIONS: '' },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  running.add(child)
  let said = ''
  child.stdout.on('data', (part) => (said += part))
  child.stderr.on('data', (part) => (said += part))
  const ended = new Promise<number | null>((done) => child.on('close', (code) => (running.delete(child), done(code))))
  return { process: child, said: () => said, ended }
}

/** Starts Rafterline as a person does, and waits until it says where it is. */
async function start(folder: string, port: number): Promise<Start> {
  const until = Date.now() + 150_000
  const one = launch(folder, port)
  for (;;) {
    const address = /ready at (\S+)/.exec(one.said())?.[1]
    if (address) return { ...one, address }
    if (one.process.exitCode !== null || Date.now() > until) throw new Error(`It did not start:\n${one.said()}`)
    await new Promise((done) => setTimeout(done, 50))
  }
}

async function stop(one: Start): Promise<number | null> {
  one.process.kill('SIGTERM')
  return one.ended
}

async function query(folder: string, sql: string) {
  const embedded = await startEmbedded({ folder })
  const client = new pg.Client({ connectionString: embedded.ownerUrl })
  await client.connect()
  const { rows } = await client.query(sql)
  await client.end()
  return rows
}

beforeAll(async () => {
  first = aFolder()
  firstPort = await freePort()
})

afterEach(async () => {
  for (const child of running) child.kill('SIGTERM')
  await Promise.all([...running].map((child) => new Promise((done) => child.once('close', done))))
})

afterAll(async () => {
  for (const folder of folders) {
    if (existsSync(join(folder, 'postgresql/PG_VERSION'))) {
      const pid = existsSync(join(folder, 'postgresql/postmaster.pid'))
      if (pid) await startEmbedded({ folder }).then((left) => left.stop())
      removeData(folder)
    }
    rmSync(folder, { recursive: true, force: true })
  }
})

test('the first start makes the database, and says the address and where the data lies', async () => {
  const one = await start(first, firstPort)
  expect(await answerOf(`${one.address}/health/ready`)).toBe(200)
  expect(one.said()).toContain(`Data: ${first}`)
  expect(one.address).toBe(`http://localhost:${firstPort}`)
  expect(statSync(join(first, 'logins.json')).mode & 0o077).toBe(0)
  expect(await stop(one)).toBe(0)
  expect(one.said()).toContain('everything is saved')
  expect(existsSync(join(first, 'postgresql/postmaster.pid'))).toBe(false)
  expect(await answerOf(`${one.address}/health/live`)).toBeNull()
})

test('a start killed in the middle of the season blocks nothing and loses nothing', async () => {
  const one = await start(first, firstPort)
  await query(first, `insert into department (id, name, zone) values (gen_random_uuid(), 'Corbin Flats', 'America/Denver')`)
  one.process.kill('SIGKILL')
  await one.ended
  const again = await start(first, firstPort)
  expect(again.address).toBe(`http://localhost:${firstPort}`)
  expect(await query(first, `select name from department where name = 'Corbin Flats'`)).toHaveLength(1)
  expect(await stop(again)).toBe(0)
})

test('a database that was killed repairs itself at the next start', async () => {
  const embedded = await startEmbedded({ folder: first })
  process.kill(embedded.pid, 'SIGKILL')
  const one = await start(first, firstPort)
  expect(await query(first, `select name from department where name = 'Corbin Flats'`)).toHaveLength(1)
  await stop(one)
})

test('a second start on the same data says where the first one runs', async () => {
  const one = await start(first, firstPort)
  const other = launch(first, firstPort)
  expect(await other.ended).toBe(1)
  expect(other.said()).toContain(`already runs with the data in ${first}, at ${one.address}`)
  expect(await answerOf(`${one.address}/health/ready`)).toBe(200)
  await stop(one)
})

test('two copies run side by side, the second on the next free port', async () => {
  const one = await start(first, firstPort)
  const other = await start(aFolder(), firstPort)
  expect(other.address).not.toBe(one.address)
  expect(other.said()).toContain(`port ${firstPort} is taken`)
  expect(await answerOf(`${one.address}/health/ready`)).toBe(200)
  expect(await answerOf(`${other.address}/health/ready`)).toBe(200)
  await Promise.all([stop(one), stop(other)])
})

test('a demo whose telling was broken off is told again from the beginning', async () => {
  writeFileSync(join(first, 'half-told'), '')
  const one = await start(first, firstPort)
  expect(await query(first, `select name from department where name = 'Corbin Flats'`)).toHaveLength(0)
  expect(existsSync(join(first, 'half-told'))).toBe(false)
  await stop(one)
})

test('the data of another PostgreSQL is refused with the way out', async () => {
  const version = join(first, 'postgresql/PG_VERSION')
  const ours = readFileSync(version, 'utf8')
  writeFileSync(version, '12\n')
  const one = launch(first, firstPort)
  expect(await one.ended).toBe(1)
  expect(one.said()).toMatch(/written by PostgreSQL 12.*way out.*npm run backup/s)
  writeFileSync(version, ours)
})

test.each([
  ['an unknown word', ['--frob'], 'does not know "--frob"'],
  ['a reset with nobody to ask', ['--reset-demo'], 'add --yes'],
])('%s is refused with a sentence', async (_what, words, sentence) => {
  const one = launch(first, firstPort, words)
  expect(await one.ended).toBe(1)
  expect(one.said()).toContain(sentence)
})

test('/dev/null is a device after everything was installed', () => {
  expect(process.platform === 'win32' || statSync('/dev/null').isCharacterDevice()).toBe(true)
})
