/** The director's boards of a department with sixty sponsors: against the very statements they send, and among 500 departments. */
import { fork } from 'node:child_process'
import { once } from 'node:events'
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { checkout } from '../../server/commands/build.mjs'
import { busySeason, fillBusyDepartment } from './boards-fill.mjs'
import { figure, ratioOf, raw } from './figure.mjs'
import { fillDepartments } from './fill.mjs'
import { signIn } from './stage.mjs'
import { Visits } from './visits.mjs'

const boards = ['/api/boards/glance', '/api/boards/at-risk', '/api/boards/inventory']
const departments = 500
const warmUp = 10
const measured = 40

/** @typedef {(path: string) => Promise<unknown>} Ask */

/** @param {import('./stage.mjs').Stage} stage */
export async function boardsAgainstSql(stage) {
  const database = await stage.database('boards')
  const { departmentId, entries } = await fillBusyDepartment(database.adminUrl, 1)
  const { token } = await signIn(database, departmentId)
  const statements = await statementsOf(stage, database, token)
  const ours = new Visits((await stage.server(database)).port, token, 1)
  const bare = new Visits(await bareServer(stage, { webUrl: database.webUrl, statements }), undefined, 1)
  stage.onClose(() => (ours.close(), bare.close()))
  await looksRight(ours)
  const milliseconds = await inTurns([(path) => ours.send(path), (path) => bare.send(path)])
  console.log(`    ${busySeason.contracts} sponsors, ${entries} log entries; the bare side sends the same statements with the same values and answers their rows`)
  for (const path of boards) {
    const [mine, other] = milliseconds.map((side) => side.get(path) ?? [])
    raw(`${path}, ${statements[path]?.length} statements`, mine ?? [], 'ms')
    raw('  bare', other ?? [], 'ms')
    console.log(`    ${ratioOf(mine ?? [], other ?? []).toFixed(2)} x`)
  }
  return figure('boards', together(milliseconds), { atMost: 2 })
}

/** @param {import('./stage.mjs').Stage} stage */
export async function boardsAmong(stage) {
  const alone = await side(stage, 'one_department', 1)
  const among = await side(stage, 'many_departments', departments)
  const milliseconds = await inTurns([alone, among])
  console.log(`    asked in turns; two databases on one PostgreSQL server, each with a server of its own`)
  for (const path of boards) for (const [place, name] of ['1 department', `${departments} departments`].entries()) raw(`${path}, ${name}`, milliseconds[place]?.get(path) ?? [], 'ms')
  return figure('boards-among', together([milliseconds[1], milliseconds[0]]), { atMost: 1.2 })
}

/** All boards one after the other, ours to theirs. @param {(Map<string, number[]> | undefined)[]} sides */
function together(sides) {
  const [mine, other] = sides.map((side) => Array.from({ length: measured }, (_, round) => boards.reduce((sum, path) => sum + (side?.get(path)?.[round] ?? NaN), 0)))
  return ratioOf(mine ?? [], other ?? [])
}

/** Whoever comes second finds the machine warmer, so they take turns at it. @param {Ask[]} sides */
async function inTurns(sides) {
  const milliseconds = sides.map(() => new Map(boards.map((path) => [path, /** @type {number[]} */ ([])])))
  for (let round = -warmUp; round < measured; round++) {
    for (const path of boards) {
      const turn = sides.map((ask, place) => ({ ask, place }))
      for (const { ask, place } of round % 2 === 0 ? turn : turn.toReversed()) {
        const from = performance.now()
        await ask(path)
        if (round >= 0) milliseconds[place]?.get(path)?.push(performance.now() - from)
      }
    }
  }
  return milliseconds
}

/** @param {Visits} visits */
async function looksRight(visits) {
  const [glance, risk, inventory] = await Promise.all(boards.map(async (path) => JSON.parse(String(await visits.send(path)))))
  if (glance.nights.length < busySeason.nights / 2 || risk.commitments !== busySeason.contracts * busySeason.commitmentsPerContract || risk.lines.length === 0 || inventory.months.length === 0) throw new Error(`the boards show ${glance.nights.length} nights, ${risk.commitments} commitments, ${risk.lines.length} at risk, ${inventory.months.length} months`)
}

/** @param {import('./stage.mjs').Stage} stage @param {string} name @param {number} count of departments @returns {Promise<Ask>} */
async function side(stage, name, count) {
  const database = await stage.database(name)
  // The one in the middle, so that what is asked lies neither first nor last.
  const middle = Math.ceil(count / 2)
  const from = performance.now()
  if (middle > 1) await fillDepartments(database.adminUrl, 1, middle - 1)
  const { departmentId } = await fillBusyDepartment(database.adminUrl, middle)
  if (count > middle) await fillDepartments(database.adminUrl, middle + 1, count)
  console.log(`    ${count} department${count === 1 ? '' : 's'} filled in ${((performance.now() - from) / 1000).toFixed(0)} s`)
  const { token } = await signIn(database, departmentId)
  const visits = new Visits((await stage.server(database)).port, token, 1)
  stage.onClose(() => visits.close())
  await looksRight(visits)
  return (path) => visits.send(path)
}

/** What each board sends to the database, with its values, as it is seen between server and `pg`. @param {import('./stage.mjs').Stage} stage @param {import('./stage.mjs').Database} database @param {string} token */
async function statementsOf(stage, database, token) {
  const file = stage.file('recorded.jsonl')
  writeFileSync(file, '')
  const recording = pathToFileURL(fileURLToPath(new URL('./recording.mjs', import.meta.url))).href
  const server = await stage.server(database, { BENCH_RECORD: file, NODE_OPTIONS: `--import ${recording}` })
  const visits = new Visits(server.port, token, 1)
  /** @type {Record<string, { text: string, values: unknown[] }[]>} */
  const statements = {}
  for (const path of boards) {
    await visits.send(path)
    const before = readFileSync(file, 'utf8').length
    await visits.send(path)
    statements[path] = readFileSync(file, 'utf8').slice(before).trim().split('\n').map((line) => JSON.parse(line)).filter(({ text }) => !text.includes('job.job'))
  }
  visits.close()
  await server.stop()
  return statements
}

/** @param {import('./stage.mjs').Stage} stage @param {object} told @returns {Promise<number>} its port */
async function bareServer(stage, told) {
  const types = pathToFileURL(join(checkout, '.build/server/platform/database/types.js')).href
  const child = fork(fileURLToPath(new URL('./bare-replay.mjs', import.meta.url)), { env: { ...process.env, BENCH_TYPES: types }, execArgv: [] })
  child.send(told)
  stage.onClose(async () => {
    if (child.exitCode !== null) return
    child.kill()
    await once(child, 'exit')
  })
  const [address] = await once(child, 'message')
  return address.port
}
