/** A hundred statements of performance in one run: read, sealed, stored and typeset, against the typesetter alone on the same texts. */
import { createHash } from 'node:crypto'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { Worker } from 'node:worker_threads'
import { checkout } from '../../server/commands/build.mjs'
import { figure, raw } from './figure.mjs'
import { built, openRooms } from './office.mjs'
import { fillReports, nights } from './report-fill.mjs'

const contracts = 100
const atOnce = 20
const through = '2026-03-20'

/** @param {import('./stage.mjs').Stage} stage */
export async function seasonReports(stage) {
  const database = await stage.database('season_reports')
  const departmentId = await fillReports(database.adminUrl, contracts)
  const rooms = await openRooms(stage, database, 'season-reports')
  const [{ StatementsOfSeason }, { Typesetter }, { performanceTexts }] = await Promise.all(
    ['reports/performance/statements-of-season.service', 'platform/typesetting/typesetter', 'platform/typesetting/performance-sheet'].map(built),
  )
  const sheets = sheetsThrough(rooms.get(Typesetter))
  const statements = rooms.get(StatementsOfSeason)
  const alone = aloneTypesetter(stage)
  const ids = (await rooms.inDepartment(departmentId, () => statements.contracts(null))).map((/** @type {{ contractId: string }} */ one) => one.contractId)
  if (ids.length !== contracts) throw new Error(`there are ${ids.length} contracts`)
  // Both warm up on drafts, which are other texts than those of the run.
  for (const paper of await rooms.inDepartment(departmentId, () => statements.papers(ids.slice(0, 10), 'draft', through))) await rooms.inDepartment(departmentId, () => statements.print(paper))
  for (const { sheet, at } of sheets.splice(0)) await alone(performanceTexts(sheet), at)
  const from = performance.now()
  const digests = await run(rooms, departmentId, statements, ids)
  const ours = performance.now() - from
  const finished = sheets.map(({ sheet, at }) => ({ texts: performanceTexts(sheet), at }))
  const bareFrom = performance.now()
  const bare = []
  for (const { texts, at } of finished) bare.push(digestOf(await alone(texts, at)))
  const bareTook = performance.now() - bareFrom
  if (digests.join() !== bare.join()) throw new Error('the two sides do not set the same documents')
  console.log(`    ${contracts} statements of ${nights} nights, ${atOnce} under one seal; the typesetter alone is handed the finished texts`)
  raw('read, sealed, stored and typeset, each', [ours / contracts], 'ms')
  raw('typesetter alone, each', [bareTook / contracts], 'ms')
  return figure('season-reports', ours / bareTook, { atMost: 1.5 })
}

/** @param {any} rooms @param {string} departmentId @param {any} statements @param {readonly string[]} ids */
async function run(rooms, departmentId, statements, ids) {
  const digests = []
  for (let at = 0; at < ids.length; at += atOnce) {
    const outcomes = await rooms.inDepartment(departmentId, () => statements.issue(ids.slice(at, at + atOnce), through))
    for (const one of outcomes) if (!('statementId' in one)) throw new Error(`${one.contractId} got no statement: ${one.refused.message}`)
  }
  for (let at = 0; at < ids.length; at += atOnce) {
    for (const paper of await rooms.inDepartment(departmentId, () => statements.papers(ids.slice(at, at + atOnce), 'asItStands', through))) {
      const { bytes, number } = await rooms.inDepartment(departmentId, () => statements.print(paper))
      if (number !== 1) throw new Error('an issued statement was printed as a draft')
      digests.push(digestOf(bytes))
    }
  }
  return digests
}

const digestOf = (/** @type {Uint8Array} */ bytes) => createHash('sha256').update(bytes).digest('hex')

/** What the server's typesetter is asked to set, in its order. @param {any} typesetter @returns {{ sheet: unknown, at: number }[]} */
function sheetsThrough(typesetter) {
  /** @type {{ sheet: unknown, at: number }[]} */
  const sheets = []
  const set = typesetter.set.bind(typesetter)
  typesetter.set = (/** @type {string} */ template, /** @type {unknown} */ sheet, /** @type {number} */ at) => {
    sheets.push({ sheet, at })
    return set(template, sheet, at)
  }
  return sheets
}

/** @param {import('./stage.mjs').Stage} stage */
function aloneTypesetter(stage) {
  const worker = new Worker(pathToFileURL(join(checkout, '.build/server/platform/typesetting/typeset.worker.js')))
  stage.onClose(async () => void (await worker.terminate()))
  /** @param {unknown} data @param {number} createdAtSeconds @returns {Promise<Uint8Array>} */
  return (data, createdAtSeconds) => new Promise((done, fail) => {
    worker.once('message', ({ pdf, error }) => (pdf === null ? fail(new Error(error)) : done(pdf)))
    worker.postMessage({ id: 1, template: 'performance', data, createdAtSeconds })
  })
}
