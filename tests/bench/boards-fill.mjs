/** What the boards look at besides a filled season: signed terms, counted reads, nights signed off, reads placed to come. */
import pg from 'pg'
import { fillDepartments, namesIn } from './fill.mjs'

/** Half a season: sixty sponsors with three commitments, of each of which a read was logged on fifty-six nights: 10,080 entries. As many nights are to come. */
export const busySeason = { games: 112, nights: 112, contracts: 60, commitmentsPerContract: 3, readsPerCommitment: 56, firstDay: '(current_date - 56)', nightsBetweenReads: 1 }
const promised = 120

const steps = [
  `update season set starts_on = current_date - 60, ends_on = current_date + 60 where department_id = $1`,
  `update term set starts_on = current_date - 60, ends_on = current_date + 60 where department_id = $1`,
  `update commitment set reads = ${promised} where department_id = $1`,
  `update game set status = 'played' where department_id = $1 and played_on < current_date`,
  `insert into sign_off (department_id, id, night_id, signed_off_by_person_id, attendance) select department_id, gen_random_uuid(), id, id, 400 from night where department_id = $1 and held_on < current_date`,
  `insert into counted_read (department_id, id, night_id, game_id, cue_key, occurrence, entry_id, commitment_id, event_id)
     select department_id, gen_random_uuid(), night_id, game_id, cue_key || '/' || commitment_id, 0, id, commitment_id, id from log_entry where department_id = $1`,
  `insert into ledger_event (department_id, id, cause, cause_id, contract_id, term_id, seller_id, place, happening, occurred_on, booked_on)
     select term.department_id, gen_random_uuid(), 'contract', term.contract_id, term.contract_id, term.id, contract.seller_id, 1,
       jsonb_build_object('kind', 'signed', 'terms', jsonb_build_object('contractId', term.contract_id, 'priceCents', term.price_cents, 'cancelledGame', 'credit', 'lines', (
         select jsonb_agg(jsonb_build_object('kind', 'reads', 'lineId', commitment.id, 'name', 'Read', 'counting', 'perTerm', 'pricing', 'fixed', 'reads', ${promised}, 'rateCents', 2000) order by commitment.place)
         from commitment where commitment.department_id = $1 and commitment.term_id = term.id))), date '2026-11-20', date '2026-11-20'
     from term join contract on contract.department_id = $1 and contract.id = term.contract_id where term.department_id = $1`,
  `insert into placement (department_id, id, commitment_id, game_id, night_id, window_key, place)
     select $1, gen_random_uuid(), commitment.id, game.id, game_night.night_id, 'halftime', 1 + (commitment.number % 6)
     from (select id, row_number() over (order by id) as number from commitment where department_id = $1) as commitment
       join (select id, row_number() over (order by id) as number from game where department_id = $1 and played_on >= current_date) as game on game.number = 1 + (commitment.number / 6)
       join game_night on game_night.department_id = $1 and game_night.game_id = game.id`,
]

/** One department with sixty sponsors. @param {string} adminUrl @param {number} number @returns {Promise<{ departmentId: string, entries: number }>} */
export async function fillBusyDepartment(adminUrl, number) {
  await fillDepartments(adminUrl, number, number, busySeason)
  const { departmentId } = await namesIn(adminUrl, number)
  const client = new pg.Client({ connectionString: adminUrl })
  await client.connect()
  try {
    await client.query('set session_replication_role = replica')
    for (const step of steps) await client.query(step, [departmentId])
    await client.query('vacuum analyze')
    const { rows } = await client.query('select count(*)::int as entries from log_entry where department_id = $1', [departmentId])
    return { departmentId, entries: rows[0].entries }
  } finally {
    await client.end()
  }
}
