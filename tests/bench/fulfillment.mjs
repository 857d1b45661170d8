/** One contract's delivery statement over HTTP, against the same statements through `pg` behind a bare `node:http` server; its fulfillment beside them. */
import pg from 'pg'
import { bareProgram, statementsOf } from './bare.mjs'
import { figure, ratioOf, raw } from './figure.mjs'
import { fillDepartments, namesIn, season } from './fill.mjs'
import { signIn } from './stage.mjs'
import { Visits } from './visits.mjs'

const warmUp = 100
const measured = 400
const reads = season.commitmentsPerContract * season.readsPerCommitment

/** @param {import('./stage.mjs').Stage} stage */
export async function fulfillment(stage) {
  const database = await stage.database('fulfillment')
  await fillDepartments(database.adminUrl, 1, 1)
  await signAndCount(database.adminUrl)
  const { departmentId, contractId } = await namesIn(database.adminUrl)
  const person = await signIn(database, departmentId)
  const path = `/api/contracts/${contractId}/delivery-statement`
  const statements = await statementsOf(stage, database, person.token, path)
  const ours = new Visits((await stage.server(database)).port, person.token, 1)
  const bare = new Visits(await bareProgram(stage, './bare-statement.mjs', { webUrl: database.webUrl, departmentId, contractId, personId: person.personId, tokenHash: person.tokenHash, statements }), undefined, 1)
  stage.onClose(() => ours.close())
  stage.onClose(() => bare.close())
  const sides = [() => ours.send(path), () => bare.send('/'), () => ours.send(`/api/contracts/${contractId}/fulfillment`)]
  const [statement, rows, proof] = (await Promise.all(sides.map((ask) => ask()))).map((answer) => JSON.parse(String(answer)))
  if (statement.lines.length !== reads || rows.lines.length !== reads || proof.sum.given !== reads) throw new Error(`${statement.lines.length} lines, ${rows.lines.length} bare, ${proof.sum.given} given, where there are ${reads}`)
  /** @type {number[][]} */
  const milliseconds = sides.map(() => [])
  for (let round = -warmUp; round < measured; round++) {
    // Whoever comes second finds the machine warmer, so they take turns at it.
    for (const place of round % 2 === 0 ? [0, 1, 2] : [2, 1, 0]) {
      const from = performance.now()
      await sides[place]?.()
      if (round >= 0) milliseconds[place]?.push(performance.now() - from)
    }
  }
  const [delivery = [], sql = [], whole = []] = milliseconds
  console.log(`    a contract of ${reads} reads, asked in turns; the bare side sends the same ${statements.length} statements: session, begin with the scope, the lines, their names, commit`)
  raw('delivery statement', delivery, 'ms')
  raw('bare, same statements', sql, 'ms')
  raw('fulfillment by line, night and window, with its forecast (no target)', whole, 'ms')
  console.log(`    fulfillment against the bare delivery statement: ${ratioOf(whole, sql).toFixed(2)} x`)
  return figure('fulfillment', ratioOf(delivery, sql), { atMost: 1.5 })
}

/** What the filled season lacks for a proof: the contracts signed, the nights signed off, the reads claimed. @param {string} adminUrl the database, as its superuser */
async function signAndCount(adminUrl) {
  const client = new pg.Client({ connectionString: adminUrl })
  await client.connect()
  try {
    await client.query('set session_replication_role = replica')
    await client.query(`insert into ledger_event (department_id, id, cause, cause_id, contract_id, term_id, seller_id, place, happening, occurred_on, booked_on)
      select contract.department_id, gen_random_uuid(), 'contract', contract.id, contract.id, term.id, contract.seller_id, 1,
        jsonb_build_object('kind', 'signed', 'terms', jsonb_build_object('contractId', contract.id, 'priceCents', term.price_cents, 'cancelledGame', 'credit', 'lines',
          (select jsonb_agg(jsonb_build_object('kind', 'reads', 'lineId', commitment.id, 'name', read_kind.name, 'counting', 'perTerm', 'pricing', 'fixed', 'reads', commitment.reads, 'rateCents', commitment.rate_cents))
             from commitment join read_kind on read_kind.department_id = commitment.department_id and read_kind.id = commitment.read_kind_id
            where commitment.department_id = contract.department_id and commitment.contract_id = contract.id))), '2026-11-20', '2026-11-20'
      from contract join term on term.department_id = contract.department_id and term.contract_id = contract.id`)
    await client.query(`insert into sign_off (department_id, id, night_id, signed_off_by_person_id) select department_id, gen_random_uuid(), night_id, gen_random_uuid() from (select distinct department_id, night_id from log_entry) as night`)
    await client.query(`insert into counted_read (department_id, id, night_id, game_id, cue_key, occurrence, entry_id, commitment_id, event_id)
      select entry.department_id, gen_random_uuid(), entry.night_id, entry.game_id, 'entry:' || entry.id, 0, entry.id, entry.commitment_id, event.id
      from log_entry as entry join ledger_event as event on event.department_id = entry.department_id and event.happening ->> 'readId' = entry.id::text`)
    await client.query(`update game set status = 'played' where exists (select from log_entry where log_entry.department_id = game.department_id and log_entry.game_id = game.id)`)
    await client.query('vacuum analyze')
  } finally {
    await client.end()
  }
}
