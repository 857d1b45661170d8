/** Trial balance and aging over 200,000 postings of one seller: over HTTP, against the bare SQL of the same report. */
import pg from 'pg'
import { figure, ratioOf, raw } from './figure.mjs'
import { fillDepartments, namesIn } from './fill.mjs'
import { signIn } from './stage.mjs'
import { Visits } from './visits.mjs'

const invoices = 41_000
/** Every tenth invoice is not paid in full, so that an aging has something to say. */
const unpaidEvery = 10
/** Each invoice is issued, paid, applied in two parts, earned. */
const postings = invoices * 5 - Math.floor(invoices / unpaidEvery)
const warmUp = 5
const measured = 25
const on = '2027-03-13'

/** @param {import('./stage.mjs').Stage} stage */
export async function trialBalance(stage) {
  const books = await fill(stage, 'trial_balance')
  return measure(stage, books, 'trial-balance', `/api/reports/trial-balance?on=${on}&sellerId=${books.sellerId}`, BARE_TRIAL_BALANCE, (view) => view.lines.length)
}

/** @param {import('./stage.mjs').Stage} stage */
export async function aging(stage) {
  const books = await fill(stage, 'aging')
  return measure(stage, books, 'aging', `/api/reports/aging?on=${on}&by=dueDay&sellerId=${books.sellerId}`, BARE_AGING, (view) => view.lines.length)
}

const BARE_TRIAL_BALANCE = `with moved as materialized (
    select from_account, to_account, sum(amount) as cents from posting
     where department_id = $1 and seller_id = $2 and journal = 'money' and effective_on <= $3 group by from_account, to_account)
  select account, sum(cents) as cents from (select to_account as account, cents from moved union all select from_account, -cents from moved) as side
  group by account having sum(cents) <> 0`

const BARE_AGING = `select payer.name, sum(cents) filter (where $3::date - due_on <= 0) as current, sum(cents) filter (where $3::date - due_on between 1 and 30) as first,
    sum(cents) filter (where $3::date - due_on between 31 and 60) as second, sum(cents) filter (where $3::date - due_on between 61 and 90) as third,
    sum(cents) filter (where $3::date - due_on > 90) as older, sum(cents) as total
  from (select invoice_id, sum(case when to_account = '1100' then amount else -amount end) as cents from posting
      where department_id = $1 and seller_id = $2 and journal = 'money' and effective_on <= $3 and '1100' in (from_account, to_account) group by invoice_id) as open
    join invoice on invoice.department_id = $1 and invoice.id = open.invoice_id join payer on payer.department_id = $1 and payer.id = invoice.payer_id
  where cents <> 0 group by payer.name
  union all
  select payer.name, 0, 0, 0, 0, 0, -cents from (select unapplied_id, sum(case when to_account = '2150' then amount else -amount end) as cents from posting
      where department_id = $1 and seller_id = $2 and journal = 'money' and effective_on <= $3 and '2150' in (from_account, to_account) group by unapplied_id) as credit
    join payment on payment.department_id = $1 and payment.id = credit.unapplied_id join payer on payer.department_id = $1 and payer.id = payment.payer_id
  where cents <> 0`

/** @typedef {{ database: import('./stage.mjs').Database, departmentId: string, sellerId: string }} Books */

/** Ours and the bare statement take turns, so that the noise of the machine falls on both.
 * @param {import('./stage.mjs').Stage} stage @param {Books} books @param {string} name @param {string} path @param {string} sql @param {(view: any) => number} linesOf */
async function measure(stage, { database, departmentId, sellerId }, name, path, sql, linesOf) {
  const { token } = await signIn(database, departmentId)
  const visits = new Visits((await stage.server(database)).port, token, 1)
  stage.onClose(() => visits.close())
  const client = new pg.Client({ connectionString: database.webUrl })
  await client.connect()
  stage.onClose(() => client.end())
  const bare = async () => {
    await client.query(`begin; set local app.department_id = '${departmentId}'`)
    const { rows } = await client.query({ name, text: sql, values: [departmentId, sellerId, on] })
    await client.query('commit')
    return rows
  }
  const ours = () => visits.send(path)
  const lines = linesOf(JSON.parse(String(await ours())))
  const rows = (await bare()).length
  if (lines === 0 || rows === 0) throw new Error(`the report has ${lines} lines, the bare statement ${rows}`)
  /** @type {[number[], number[]]} */
  const milliseconds = [[], []]
  for (let round = -warmUp; round < measured; round++) {
    const turn = /** @type {const} */ ([[0, ours], [1, bare]])
    for (const [place, ask] of round % 2 === 0 ? turn : turn.toReversed()) {
      const from = performance.now()
      await ask()
      if (round >= 0) milliseconds[place].push(performance.now() - from)
    }
  }
  console.log(`    ${lines} lines out of ${postings} postings, asked in turns on one PostgreSQL server`)
  raw('Rafterline', milliseconds[0], 'ms')
  raw('bare SQL', milliseconds[1], 'ms')
  return figure(name, ratioOf(milliseconds[0], milliseconds[1]), { atMost: 1.5 })
}

/** @param {import('./stage.mjs').Stage} stage @param {string} name @returns {Promise<Books>} */
async function fill(stage, name) {
  const database = await stage.database(name)
  await fillDepartments(database.adminUrl, 1, 1)
  const { departmentId } = await namesIn(database.adminUrl)
  const client = new pg.Client({ connectionString: database.adminUrl })
  await client.connect()
  try {
    await client.query('set session_replication_role = replica')
    const { rows } = await client.query('select id from seller where department_id = $1', [departmentId])
    const sellerId = rows[0].id
    await client.query('delete from posting where department_id = $1', [departmentId])
    for (const statement of FILLING) await client.query(statement, [departmentId, sellerId])
    await client.query('vacuum analyze')
    return { database, departmentId, sellerId }
  } finally {
    await client.end()
  }
}

const id = (/** @type {string} */ kind) => `overlay(overlay(md5('${kind}/' || n) placing '4' from 13) placing '8' from 17)::uuid`
const day = `(date '2026-08-03' + n % 200)`
const payers = `(select array_agg(id order by id) from payer where department_id = $1)`
const contracts = `(select array_agg(id order by id) from contract where department_id = $1)`
const one = (/** @type {string} */ list) => `(${list})[1 + n % cardinality(${list})]`
const series = `generate_series(1, ${invoices}) as n`

/** @param {number} place @param {string} from @param {string} to @param {number} cents @param {string} keys invoice, then credit @param {string} [where] */
const posting = (place, from, to, cents, keys, where = 'true') => `insert into posting (department_id, id, entry_id, event_id, journal, from_account, to_account, amount, contract_id, seller_id,
    invoice_id, unapplied_id, occurred_on, effective_on)
  select $1, ${id(`posting ${place}`)}, ${id(`entry ${place}`)}, ${id(`event ${place}`)}, 'money', '${from}', '${to}', ${cents}, ${one('contracts')}, $2, ${keys}, ${day}, ${day}
  from ${series}, (select ${contracts} as contracts) as known where ${where}`

const FILLING = [
  `insert into invoice (department_id, id, number, fiscal_year, series_number, seller_id, payer_id, issued_on, due_on, net_cents, tax_cents, gross_cents, snapshot)
   select $1, ${id('invoice')}, 'TR-2027-' || n, 2027, n, $2, ${one('payers')}, ${day}, ${day} + 30, 10000, 0, 10000, '{}' from ${series}, (select ${payers} as payers) as known`,
  `insert into payment (department_id, id, number, seller_id, payer_id, received_on, method, amount_cents)
   select $1, ${id('payment')}, 'TR-P-' || n, $2, ${one('payers')}, ${day}, 'check', 10000 from ${series}, (select ${payers} as payers) as known`,
  posting(1, '2100', '1100', 10_000, `${id('invoice')}, null::uuid`),
  posting(2, '2150', '1000', 10_000, `null::uuid, ${id('payment')}`),
  posting(3, '1100', '2150', 6_000, `${id('invoice')}, ${id('payment')}`),
  posting(4, '1100', '2150', 4_000, `${id('invoice')}, ${id('payment')}`, `n % ${unpaidEvery} <> 0`),
  posting(5, '4000', '2100', 5_000, `null::uuid, null::uuid`),
]
