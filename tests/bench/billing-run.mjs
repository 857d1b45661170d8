/** A billing run over 1,000 contracts, against the same rows written by plain SQL in the same transactions. */
import pg from 'pg'
import { fillBilling, lines } from './billing-fill.mjs'
import { figure, ratioOf, raw } from './figure.mjs'
import { built, openRooms } from './office.mjs'

const contracts = 1000
const contractsAtOnce = 50
const rounds = 3
const through = '2026-12-31'

/** Table → whose rows belong to which contract; `$1` is the department. In the order in which a run writes them. */
const written = /** @type {const} */ ([
  ['ledger_event', `select e.*, e.contract_id as of from ledger_event e where e.department_id = $1 and e.cause = 'invoice'`],
  ['ledger_entry', `select t.*, e.contract_id as of from ledger_entry t join ledger_event e on e.department_id = $1 and e.id = t.event_id where t.department_id = $1 and e.cause = 'invoice'`],
  ['posting', `select t.*, t.contract_id as of from posting t join ledger_event e on e.department_id = $1 and e.id = t.event_id where t.department_id = $1 and e.cause = 'invoice'`],
  ['invoice', `select t.*, t.contract_id as of from invoice t where t.department_id = $1`],
  ['invoice_line', `select t.*, i.contract_id as of from invoice_line t join invoice i on i.department_id = $1 and i.id = t.invoice_id where t.department_id = $1`],
  ['billed_read', `select t.*, i.contract_id as of from billed_read t join invoice i on i.department_id = $1 and i.id = t.invoice_id where t.department_id = $1`],
  ['billing_run_line', `select t.*, t.contract_id as of from billing_run_line t where t.department_id = $1`],
])

/** @param {import('./stage.mjs').Stage} stage */
export async function billingRun(stage) {
  const ours = await stage.database('ours')
  const bare = await stage.database('bare')
  const departments = await fillBilling(ours.adminUrl, rounds + 1, contracts)
  await fillBilling(bare.adminUrl, rounds + 1, contracts)
  const rooms = await openRooms(stage, ours, 'billing-run')
  const [{ BillingRuns }, { UnitOfWork }] = await Promise.all(['billing/runs/billing-runs.service', 'platform/database/unit-of-work'].map(built))
  const runs = rooms.get(BillingRuns)
  const work = rooms.get(UnitOfWork)
  const admin = new pg.Client({ connectionString: ours.adminUrl })
  const plain = new pg.Client({ connectionString: bare.webUrl })
  const bareAdmin = new pg.Client({ connectionString: bare.adminUrl })
  for (const client of [admin, plain, bareAdmin]) {
    await client.connect()
    stage.onClose(() => client.end())
  }
  /** @type {[number[], number[]]} */
  const milliseconds = [[], []]
  for (const [round, departmentId] of departments.entries()) {
    const id = await rooms.inDepartment(departmentId, () => work.run(() => runs.start({ throughDay: through, issuedOn: through })))
    const from = performance.now()
    await rooms.inDepartment(departmentId, () => runs.drive(id))
    const oursTook = performance.now() - from
    const { batches, runRow } = await whatWasWritten(admin, departmentId, id)
    await insert(bareAdmin, 'billing_run', [runRow])
    const bareTook = await writePlainly(plain, departmentId, batches)
    if (round === 0) continue
    milliseconds[0].push(oursTook)
    milliseconds[1].push(bareTook)
  }
  console.log(`    ${contracts} contracts of ${lines} lines, ${contractsAtOnce} a transaction; in turns, on two databases of one PostgreSQL server`)
  raw('billing run', milliseconds[0], 'ms')
  raw('the same rows by plain SQL', milliseconds[1], 'ms')
  return figure('billing-run', ratioOf(milliseconds[0], milliseconds[1]), { atMost: 3 })
}

/** The rows of a run in the batches in which it wrote them. @param {pg.Client} client @param {string} departmentId @param {string} runId */
async function whatWasWritten(client, departmentId, runId) {
  const { rows: [runRow] } = await client.query('select * from billing_run where department_id = $1 and id = $2', [departmentId, runId])
  const place = new Map(runRow.contract_ids.map((/** @type {string} */ id, /** @type {number} */ at) => [id, Math.floor(at / contractsAtOnce)]))
  /** @type {{ table: string, rows: Record<string, unknown>[] }[][]} */
  const batches = Array.from({ length: Math.ceil(contracts / contractsAtOnce) }, () => [])
  for (const [table, sql] of written) {
    const { rows } = await client.query(sql, [departmentId])
    const expected = { invoice: contracts, invoice_line: contracts * lines, billed_read: contracts * lines }[table]
    if (expected !== undefined && rows.length !== expected) throw new Error(`the run wrote ${rows.length} rows of ${table}, not ${expected}`)
    for (const batch of batches) batch.push({ table, rows: [] })
    for (const { of, ...row } of rows) batches[place.get(of) ?? 0]?.at(-1)?.rows.push(row)
  }
  return { batches, runRow }
}

/** @param {pg.Client} client @param {string} departmentId @param {{ table: string, rows: Record<string, unknown>[] }[][]} batches */
async function writePlainly(client, departmentId, batches) {
  const from = performance.now()
  for (const batch of batches) {
    await client.query(`begin; set local app.department_id = '${departmentId}'; set local app.person_id = ''`)
    for (const { table, rows } of batch) await insert(client, table, rows)
    const invoice = batch.find(({ table }) => table === 'invoice')?.rows[0]
    await client.query(
      `insert into number_series (department_id, id, seller_id, kind, fiscal_year, last_number) values ($1, gen_random_uuid(), $2, 'invoice', $3, 50)
       on conflict (department_id, seller_id, kind, fiscal_year) do update set last_number = number_series.last_number + 50, version = number_series.version + 1`,
      [departmentId, invoice?.['seller_id'], invoice?.['fiscal_year']],
    )
    await client.query('commit')
  }
  return performance.now() - from
}

/** What the database sets by itself is left to it. */
const own = new Set(['recorded_at', 'digest'])

/** @param {pg.Client} client @param {string} table @param {Record<string, unknown>[]} rows */
async function insert(client, table, rows) {
  for (let from = 0; from < rows.length; from += 500) {
    const some = rows.slice(from, from + 500)
    const fields = Object.keys(some[0] ?? {}).filter((field) => !own.has(field) && some.some((row) => row[field] !== null))
    const places = some.map((_, row) => `(${fields.map((_field, column) => `$${row * fields.length + column + 1}`).join(', ')})`)
    await client.query(`insert into ${table} (${fields.join(', ')}) values ${places.join(', ')}`, some.flatMap((row) => fields.map((field) => valueOf(row[field]))))
  }
}

/** @param {unknown} value */
function valueOf(value) {
  if (value instanceof Date) return `${value.getFullYear()}-${String(value.getMonth() + 1).padStart(2, '0')}-${String(value.getDate()).padStart(2, '0')}`
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? JSON.stringify(value) : value
}
