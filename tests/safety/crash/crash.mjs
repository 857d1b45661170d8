/** One run: clients at work against two servers on one database, a nemesis, and a look at the end whether anything was lost, doubled or made up. */
import { chmodSync, existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from '../../../server/commands/build.mjs'
import { wait } from '../../../server/commands/terminal.mjs'
import { seedBug } from './bugs.mjs'
import { look } from './checks.mjs'
import { Client, Desk } from './client.mjs'
import { Database, signal } from './database.mjs'
import { Nemesis } from './nemesis.mjs'
import { Chance } from './random.mjs'
import { aCrashSeason } from './season.mjs'
import { Sender } from './sender.mjs'
import { ServerOfTwo } from './servers.mjs'
import { Witness } from './witness.mjs'

const CLIENTS = 16
const LOOK_EVERY = 10
const memory = existsSync('/dev/shm') ? '/dev/shm' : tmpdir()

/**
 * @typedef {{ seed: number, faults: number, bug?: import('./bugs.mjs').Bug, says?: (text: string) => void }} Asked
 * @typedef {{ seed: number, faults: number, clients: number, entries: number, payments: number, invoices: number, signOffs: number, violations: string[], answers: Map<string, number> }} Verdict
 */

/** With a bug, the run is over at the first violation. @param {Asked} asked @returns {Promise<Verdict>} */
export async function crash({ seed, faults, bug, says = () => {} }) {
  await build(['server'])
  sweep()
  const folder = mkdtempSync(join(memory, 'rafterline-crash-'))
  // As root the database runs under another account, which has to pass through.
  chmodSync(folder, 0o711)
  writeFileSync(join(folder, 'pid'), String(process.pid))
  /** @type {(() => unknown)[]} */
  const toClear = [() => rmSync(folder, { recursive: true, force: true })]
  const clear = async () => {
    for (const one of toClear.splice(0).reverse()) await one()
  }
  const leave = () => void clear().finally(() => process.exit(130))
  process.once('SIGINT', leave).once('SIGTERM', leave)
  try {
    const database = new Database(folder)
    toClear.push(() => database.close())
    await database.open()
    const seeded = bug ? await seedBug(bug, database.ownerUrl) : null
    toClear.push(() => seeded?.remove())
    const servers = ['first', 'second'].map((name) => new ServerOfTwo({ name, folder, webUrl: database.webUrl, program: seeded?.program }))
    toClear.push(() => Promise.all(servers.map((server) => server.close())))
    await Promise.all(servers.map((server) => server.open()))
    return await run({ seed, faults, stopsAtFirst: bug !== undefined, says }, database, servers, toClear)
  } finally {
    process.off('SIGINT', leave).off('SIGTERM', leave)
    await clear()
  }
}

/** @param {{ seed: number, faults: number, stopsAtFirst: boolean, says: (text: string) => void }} asked
 * @param {Database} database @param {ServerOfTwo[]} servers @param {(() => unknown)[]} toClear @returns {Promise<Verdict>} */
async function run({ seed, faults, stopsAtFirst, says }, database, servers, toClear) {
  const { checkBooks } = await import('../../../.build/server/reports/books.js')
  const { setTypeParsers } = await import('../../../.build/server/platform/database/types.js')
  setTypeParsers()
  const witness = new Witness()
  const season = await aCrashSeason({ adminUrl: database.adminUrl, port: servers[0]?.port ?? 0, nights: 6 + Math.ceil(faults * 0.9), contracts: 4 + Math.ceil(faults / 4), chance: new Chance(seed, 'season') })
  says(`${season.nights.length} nights, ${season.installmentIds.length + season.arrearsIds.length} contracts; the clients begin`)
  const desk = new Desk(season, new Chance(seed, 'desk'))
  /** @param {string} name */
  const sender = (name) => new Sender({ ports: servers.map((server) => server.port), token: season.token, chance: new Chance(seed, `line of ${name}`), witness })
  let isOver = false
  const names = Array.from({ length: CLIENTS }, (_, place) => `client-${place + 1}`)
  const senders = [...names, 'director'].map(sender)
  toClear.push(() => senders.forEach((one) => one.close()))
  const clients = names.map((name, place) => new Client({ name, desk, chance: new Chance(seed, name), sender: /** @type {Sender} */ (senders[place]), witness }).work(() => isOver))
  const signOffs = signNightsOff({ desk, chance: new Chance(seed, 'director'), sender: /** @type {Sender} */ (senders.at(-1)), witness, isOver: () => isOver })
  const nemesis = new Nemesis({ chance: new Chance(seed, 'nemesis'), database, servers, witness })
  const looking = () => look({ adminUrl: database.adminUrl, departmentId: season.departmentId, witness, checkBooks })
  let struck = 0
  while (struck < faults && !(stopsAtFirst && witness.violations.length > 0)) {
    const fault = await nemesis.strike()
    struck += 1
    says(`fault ${struck} of ${faults}: ${fault} (${witness.entries.size} entries, ${witness.payments.size} payments, ${witness.invoices.size} invoices, ${witness.signedOffNights.size} nights signed off)`)
    if (struck % (stopsAtFirst ? 2 : LOOK_EVERY) === 0) await lookInBetween(looking)
  }
  await nemesis.untilMended()
  isOver = true
  await Promise.all([...clients, signOffs])
  await looking()
  return {
    seed, faults: struck, clients: CLIENTS, entries: witness.entries.size, payments: witness.payments.size, invoices: witness.invoices.size, signOffs: witness.signedOffNights.size,
    violations: witness.violations, answers: witness.answers,
  }
}

/** While the database is down there is nothing to look at; the next look sees it. @param {() => Promise<void>} looking */
async function lookInBetween(looking) {
  for (const until = Date.now() + 15_000; Date.now() < until; await wait(250)) {
    if (await looking().then(() => true, () => false)) return
  }
}

/** @param {{ desk: Desk, chance: Chance, sender: Sender, witness: Witness, isOver: () => boolean }} told */
async function signNightsOff({ desk, chance, sender, witness, isOver }) {
  while (!isOver()) {
    await wait(chance.whole(600, 1600))
    const night = desk.nights[0]
    if (!night || desk.nights.length <= 3) continue
    const sending = { path: `/api/nights/${night.nightId}/sign-off`, key: chance.id(), body: { overrideReason: 'the harness does not wait for the night' } }
    await sender.untilAnswered(sending, ({ status, body }) => {
      if (status === 200) witness.signedOffNights.add(night.nightId)
      else witness.violation(`the sign-off of night ${night.nightId} was answered ${status} ${JSON.stringify(body).slice(0, 200)}`)
    })
    desk.nights.shift()
  }
}

/** What a killed run left behind: its database and its folder. */
function sweep() {
  for (const name of readdirSync(memory).filter((found) => found.startsWith('rafterline-crash-'))) {
    const owner = numberIn(join(memory, name, 'pid'))
    if (owner === null || isAlive(owner)) continue
    const left = numberIn(join(memory, name, 'database/postgresql/postmaster.pid'))
    if (left !== null) signal(left, 'SIGQUIT')
    rmSync(join(memory, name), { recursive: true, force: true })
  }
}

/** @param {string} file */
function numberIn(file) {
  return existsSync(file) ? Number.parseInt(readFileSync(file, 'utf8'), 10) || null : null
}

/** @param {number} pid */
function isAlive(pid) {
  try {
    process.kill(pid, 0)
    return true
  } catch {
    return false
  }
}
