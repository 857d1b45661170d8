/** Log entries posted in batches, against the same rows in plain SQL: one insert of many rows in a transaction of its own. */
import { createHash, randomUUID } from 'node:crypto'
import pg from 'pg'
import { figure, ratioOf, raw } from './figure.mjs'
import { fillDepartments, namesIn } from './fill.mjs'
import { signIn } from './stage.mjs'
import { Visits, perSecond } from './visits.mjs'

const batch = 60
const tables = 4
const rounds = 11
const seconds = 1.5

const columns = ['department_id', 'id', 'night_id', 'game_id', 'number', 'device_id', 'sequence', 'kind', 'outcome', 'cue_key', 'commitment_id', 'window_key', 'occurred_at', 'content_digest', 'logged_by_person_id']

/** Numbers of one device at the table of one night. @param {{ nightId: string, gameId: string }} night @param {string[]} commitmentIds */
function tableAt(night, commitmentIds) {
  const deviceId = randomUUID()
  let sequence = 0
  return {
    night, deviceId,
    next: () => Array.from({ length: batch }, (_, place) => {
      sequence += 1
      return {
        id: randomUUID(), sequence, kind: 'read', outcome: 'given', gameId: night.gameId, commitmentId: commitmentIds[place % commitmentIds.length],
        cueKey: `game:${night.gameId}/halftime/${sequence}`, windowKey: 'halftime', occurredAt: '2026-12-05T02:30:00.000Z',
      }
    }),
  }
}

/** @param {import('./stage.mjs').Stage} stage */
export async function logBatches(stage) {
  const database = await stage.database('log_batches')
  await fillDepartments(database.adminUrl, 1, 1)
  const { departmentId, commitmentIds, nightsWithoutLog } = await namesIn(database.adminUrl)
  const person = await signIn(database, departmentId)
  const server = await stage.server(database)
  const visits = new Visits(server.port, person.token, tables)
  stage.onClose(() => visits.close())
  const plain = await Promise.all(Array.from({ length: tables }, async () => {
    const client = new pg.Client({ connectionString: database.webUrl })
    await client.connect()
    stage.onClose(() => client.end())
    return client
  }))
  // Each side writes on nights of its own, each round from devices of its own.
  const at = (/** @type {number} */ place) => tableAt(nightsWithoutLog[place], commitmentIds)
  /** @type {number[]} */
  const posted = []
  /** @type {number[]} */
  const inserted = []
  for (let round = -1; round < rounds; round++) {
    const ours = Array.from({ length: tables }, (_, lane) => at(lane))
    const theirs = Array.from({ length: tables }, (_, lane) => at(tables + lane))
    const first = await firstNumbers(database.adminUrl, theirs.map((table) => table.night.nightId))
    const post = await perSecond(tables, seconds, async (lane) => {
      const { night, deviceId, next } = ours[lane] ?? at(lane)
      const { results } = JSON.parse(String(await visits.send(`/api/nights/${night.nightId}/log`, { deviceId, entries: next() })))
      if (results.length !== batch || results.some((/** @type {{ status: string }} */ one) => one.status !== 'stored')) throw new Error(`not stored: ${JSON.stringify(results[0])}`)
    })
    const insert = await perSecond(tables, seconds, async (lane) => {
      const { night, deviceId, next } = theirs[lane] ?? at(lane)
      const client = plain[lane]
      if (!client) return
      const rows = next().map((entry) => [departmentId, entry.id, night.nightId, entry.gameId, (first[lane] ?? 0) + entry.sequence, deviceId, entry.sequence, entry.kind, entry.outcome,
        entry.cueKey, entry.commitmentId, entry.windowKey, entry.occurredAt, createHash('sha256').update(JSON.stringify(entry)).digest('hex'), person.personId])
      await client.query(`begin; set local app.department_id = '${departmentId}'; set local app.person_id = '${person.personId}'`)
      await client.query(`insert into log_entry (${columns.join(', ')}) values ${rows.map((_, row) => `(${columns.map((_, column) => `$${row * columns.length + column + 1}`).join(', ')})`).join(', ')}`, rows.flat())
      await client.query('commit')
    })
    if (round < 0) continue
    posted.push(post * batch)
    inserted.push(insert * batch)
  }
  console.log(`    batches of ${batch}, ${tables} tables at once; the plain side: begin with the scope, one insert of ${batch} rows, commit, through pg without HTTP`)
  raw('POST /api/nights/:id/log', posted, 'entries/s')
  raw('plain SQL', inserted, 'entries/s')
  return figure('log-batches', ratioOf(posted, inserted), { atLeast: 0.5 })
}

/** The last number of each night's log. @param {string} adminUrl @param {string[]} nightIds @returns {Promise<number[]>} */
async function firstNumbers(adminUrl, nightIds) {
  const client = new pg.Client({ connectionString: adminUrl })
  await client.connect()
  try {
    const { rows } = await client.query('select night_id, max(number) as last from log_entry where night_id = any($1::uuid[]) group by night_id', [nightIds])
    return nightIds.map((id) => rows.find((row) => row.night_id === id)?.last ?? 0)
  } finally {
    await client.end()
  }
}
