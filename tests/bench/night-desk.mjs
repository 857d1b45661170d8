/** The wireless is back: 200 devices with 60 entries each send what they kept, some answers are lost on the way and sent for again. */
import { randomUUID } from 'node:crypto'
import { availableParallelism } from 'node:os'
import { Agent, request } from 'node:http'
import pg from 'pg'
import { figure, load, raw } from './figure.mjs'
import { fillDepartments, namesIn } from './fill.mjs'
import { signIn } from './stage.mjs'

const departments = 20
const nightsEach = 5
const devicesANight = 2
const queued = 60
/** As the page sends them. */
const batchSize = 100
/** Of the answers, so many are lost after the server has stored what was sent. */
const lostShare = 0.2

/** @typedef {{ deviceId: string, nightId: string, token: string, entries: { id: string }[] }} Device */

/** @param {import('./stage.mjs').Stage} stage */
export async function nightDesk(stage) {
  const database = await stage.database('night_desk')
  await fillDepartments(database.adminUrl, 1, departments)
  const devices = await devicesOf(database)
  const { port } = await stage.server(database)
  const waited = await drain(port, devices)
  const found = await foundIn(database.adminUrl, devices)
  const sent = devices.length * queued
  console.log(`    ${devices.length} devices on ${departments * nightsEach} nights of ${departments} departments, ${queued} entries each in batches of at most ${batchSize}; ${availableParallelism()} cores for server, database and devices; ${load()}`)
  console.log(`    ${waited.lost} answers lost and sent for again, ${waited.again} tries without an answer; ${found.entries} of ${sent} entries stored, ${found.doubled} doubled, ${found.gaps} nights with a gap`)
  raw('a device, from its first request to its last answer', waited.seconds, 's')
  if (found.entries !== sent || found.doubled > 0 || found.gaps > 0) throw new Error('the log does not hold every entry exactly once')
  return figure('night-desk', waited.wholeSeconds, { atMost: 30 }, 's')
}

/** @param {import('./stage.mjs').Database} database @returns {Promise<Device[]>} */
async function devicesOf(database) {
  /** @type {Device[]} */
  const devices = []
  for (let department = 1; department <= departments; department++) {
    const { departmentId, commitmentIds, nightsWithoutLog } = await namesIn(database.adminUrl, department)
    const { token } = await signIn(database, departmentId)
    for (const { nightId, gameId } of nightsWithoutLog.slice(0, nightsEach)) {
      for (let place = 0; place < devicesANight; place++) {
        const deviceId = randomUUID()
        const entries = Array.from({ length: queued }, (_, at) => ({
          id: randomUUID(), sequence: at + 1, kind: 'read', outcome: 'given', gameId, commitmentId: commitmentIds[at % commitmentIds.length],
          cueKey: `game:${gameId}/halftime/${place * queued + at + 1}`, windowKey: 'halftime', occurredAt: '2026-12-05T02:30:00.000Z',
        }))
        devices.push({ deviceId, nightId, token, entries })
      }
    }
  }
  return devices
}

/** All devices at the same moment, each over a connection of its own. @param {number} port @param {Device[]} devices */
async function drain(port, devices) {
  const told = { lost: 0, again: 0, seconds: /** @type {number[]} */ ([]), wholeSeconds: 0 }
  const from = performance.now()
  await Promise.all(devices.map(async (device) => {
    const agent = new Agent({ keepAlive: true, maxSockets: 1 })
    let waiting = device.entries
    for (let failures = 0; waiting.length > 0;) {
      const answer = await send(agent, port, device, waiting.slice(0, batchSize)).catch(() => null)
      if (answer === null) {
        told.again += 1
        failures += 1
        await new Promise((done) => setTimeout(done, Math.min(5000, 250 * 2 ** failures) * (0.5 + Math.random() / 2)))
        continue
      }
      failures = 0
      if (Math.random() < lostShare) {
        told.lost += 1
        continue
      }
      const stored = new Set(answer.filter((one) => one.status === 'stored' || one.status === 'already').map((one) => one.id))
      if (stored.size !== answer.length) throw new Error(`not stored: ${JSON.stringify(answer.find((one) => !stored.has(one.id)))}`)
      waiting = waiting.filter((entry) => !stored.has(entry.id))
    }
    told.seconds.push((performance.now() - from) / 1000)
    agent.destroy()
  }))
  told.wholeSeconds = (performance.now() - from) / 1000
  return told
}

/** @param {Agent} agent @param {number} port @param {Device} device @param {unknown[]} entries @returns {Promise<{ id: string, status: string }[]>} */
function send(agent, port, { deviceId, nightId, token }, entries) {
  const text = JSON.stringify({ deviceId, entries })
  const headers = { 'x-rafterline': '1', cookie: `rafterline-${port}=${token}`, 'content-type': 'application/json', 'content-length': Buffer.byteLength(text) }
  return new Promise((done, fail) => {
    const sent = request({ agent, host: '127.0.0.1', port, path: `/api/nights/${nightId}/log`, method: 'POST', headers }, (response) => {
      /** @type {Buffer[]} */
      const parts = []
      response.on('data', (part) => parts.push(part))
      response.on('error', fail)
      response.on('end', () => (response.statusCode === 200 ? done(JSON.parse(Buffer.concat(parts).toString()).results) : fail(new Error(`answered ${response.statusCode}`))))
    })
    sent.on('error', fail)
    sent.end(text)
  })
}

/** @param {string} adminUrl @param {Device[]} devices */
async function foundIn(adminUrl, devices) {
  const client = new pg.Client({ connectionString: adminUrl })
  await client.connect()
  try {
    const nights = [...new Set(devices.map((device) => device.nightId))]
    const { rows } = await client.query(
      `select night_id, count(*)::int as entries, count(distinct id)::int as ids, count(distinct (device_id, sequence))::int as places, max(number) as last
         from log_entry where night_id = any($1::uuid[]) group by night_id`,
      [nights],
    )
    const sum = (/** @type {(row: any) => number} */ of) => rows.reduce((total, row) => total + of(row), 0)
    return { entries: sum((row) => row.ids), doubled: sum((row) => row.entries - Math.min(row.ids, row.places)), gaps: rows.filter((row) => row.last !== row.entries).length }
  } finally {
    await client.end()
  }
}
