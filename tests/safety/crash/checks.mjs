/** Looks into the database for what the witness knows: everything acknowledged is there once, nothing is there that nobody sent, the books hold. */
import pg from 'pg'

/** A night's reads: what was given and stands, and what sign-off counted. */
const NIGHTS = `select sign_off.night_id as id, count(*) over (partition by sign_off.night_id)::int as "signOffs",
    (select count(*)::int from log_entry where log_entry.department_id = $1 and log_entry.night_id = sign_off.night_id and log_entry.recorded_at > sign_off.recorded_at) as late,
    (select count(*)::int from log_entry as given where given.department_id = $1 and given.night_id = sign_off.night_id and given.kind = 'read'
       and not exists (select from log_entry as undo where undo.department_id = $1 and undo.takes_back_entry_id = given.id)) as given,
    (select count(*)::int from counted_read where counted_read.department_id = $1 and counted_read.night_id = sign_off.night_id) as counted
  from sign_off where sign_off.department_id = $1`

const PAYMENT_GAPS = `select regexp_replace(number, '\\d+$', '') as series, count(*)::int as payments, max(substring(number from '\\d+$')::int) as last
    from payment where department_id = $1 group by 1 having count(*) <> max(substring(number from '\\d+$')::int)`

const INVOICES = `select invoice.id, idempotency_record.key from invoice
    left join idempotency_record on idempotency_record.department_id = $1 and idempotency_record.route = 'POST /api/invoices' and idempotency_record.body->>'id' = invoice.id::text
   where invoice.department_id = $1`

/**
 * @param {{ adminUrl: string, departmentId: string, witness: import('./witness.mjs').Witness,
 *   checkBooks: (ask: (sql: string, parameters: readonly unknown[]) => Promise<any[]>, departmentId: string) => Promise<{ id: string, sentence: string, broken: string[] }[]> }} told
 * @returns {Promise<void>} violations are told to the witness */
export async function look({ adminUrl, departmentId, witness, checkBooks }) {
  // What is acknowledged now must be in every later state of the database.
  const told = witness.acknowledged()
  const client = new pg.Client({ connectionString: adminUrl, options: '-c timezone=UTC', connectionTimeoutMillis: 5000 })
  client.on('error', () => {})
  await client.connect()
  try {
    await client.query('begin isolation level repeatable read read only')
    const ask = async (/** @type {string} */ sql, /** @type {readonly unknown[]} */ parameters = [departmentId]) => (await client.query(sql, [...parameters])).rows
    const found = {
      entries: await ask('select id, night_id as "nightId", number, device_id as "deviceId", sequence from log_entry where department_id = $1'),
      payments: await ask('select id, reference, amount_cents as "amountCents" from payment where department_id = $1'),
      invoices: await ask(INVOICES), nights: await ask(NIGHTS), gaps: await ask(PAYMENT_GAPS),
    }
    const findings = await checkBooks(ask, departmentId)
    lookForEntries(found.entries, told, witness)
    lookForPayments(found.payments, told, witness)
    lookForInvoices(found.invoices, told, witness)
    lookForNights(found.nights, told, witness)
    for (const { series, payments, last } of found.gaps) witness.violation(`${payments} payments are numbered ${series}, the last of them ${last}`)
    for (const { id, sentence, broken } of findings) if (broken.length > 0) witness.violation(`${id}, ${sentence}: ${broken[0]?.slice(0, 160)}${broken.length > 1 ? `, and ${broken.length - 1} more` : ''}`)
  } finally {
    await client.end().catch(() => {})
  }
}

/** @typedef {ReturnType<import('./witness.mjs').Witness['acknowledged']>} Told */

/** @param {any[]} rows @param {Told} told @param {import('./witness.mjs').Witness} witness */
function lookForEntries(rows, told, witness) {
  const found = new Map(rows.map((row) => [row.id, row]))
  for (const [id, number] of told.entries) {
    const row = found.get(id)
    if (!row) witness.violation(`log entry ${id} was acknowledged as number ${number} and is not there`)
    else if (row.number !== number) witness.violation(`log entry ${id} was acknowledged as number ${number} and is there as ${row.number}`)
  }
  for (const row of rows) {
    const sent = witness.sentEntries.get(row.id)
    const isSent = sent && sent.nightId === row.nightId && sent.deviceId === row.deviceId && sent.sequence === row.sequence
    if (!isSent) witness.violation(`log entry ${row.id} is there and nobody sent it`)
    if (told.refusedEntries.has(row.id)) witness.violation(`log entry ${row.id} was refused and is there`)
  }
}

/** @param {any[]} rows @param {Told} told @param {import('./witness.mjs').Witness} witness */
function lookForPayments(rows, told, witness) {
  /** @type {Map<string, string[]>} */
  const found = new Map()
  for (const { id, reference, amountCents } of rows) {
    found.set(reference, [...(found.get(reference) ?? []), id])
    if (witness.sentPayments.get(reference)?.amountCents !== amountCents) witness.violation(`payment ${reference} of ${amountCents} cents is there and nobody sent it`)
    if (told.refusedPayments.has(reference)) witness.violation(`payment ${reference} was refused and is there`)
  }
  for (const [reference, ids] of found) if (ids.length > 1) witness.violation(`payment ${reference} is there ${ids.length} times`)
  for (const [reference, id] of told.payments) {
    if (!found.get(reference)?.includes(id)) witness.violation(`payment ${reference} was acknowledged and is not there`)
  }
}

/** @param {any[]} rows @param {Told} told @param {import('./witness.mjs').Witness} witness */
function lookForInvoices(rows, told, witness) {
  const found = new Set(rows.map((row) => row.id))
  for (const [key, id] of told.invoices) if (!found.has(id)) witness.violation(`the invoice of run ${key} was acknowledged and is not there`)
  const acknowledged = new Set(witness.invoices.values())
  for (const { id, key } of rows) if (!acknowledged.has(id) && !witness.sentInvoiceRuns.has(key)) witness.violation(`invoice ${id} is there and no run that was sent made it`)
}

/** @param {any[]} rows @param {Told} told @param {import('./witness.mjs').Witness} witness */
function lookForNights(rows, told, witness) {
  const found = new Set(rows.map((row) => row.id))
  for (const id of told.signedOffNights) if (!found.has(id)) witness.violation(`the sign-off of night ${id} was acknowledged and is not there`)
  for (const { id, signOffs, late, given, counted } of rows) {
    if (signOffs !== 1) witness.violation(`night ${id} is signed off ${signOffs} times`)
    if (late > 0) witness.violation(`${late} entries reached night ${id} after its sign-off`)
    if (given !== counted) witness.violation(`night ${id}: ${given} reads were given and ${counted} are counted`)
  }
}
