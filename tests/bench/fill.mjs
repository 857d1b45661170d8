/** Fills a database with departments of one full season each, by generated SQL; nothing of it is read back by a rule. */
import pg from 'pg'

/** @typedef {{ games: number, nights: number, contracts: number, commitmentsPerContract: number, readsPerCommitment: number, firstDay?: string, nightsBetweenReads?: number }} Held `firstDay` is SQL */

/** What one department's season holds, where nothing else is asked for. @type {Held} */
export const season = { games: 200, nights: 60, contracts: 12, commitmentsPerContract: 3, readsPerCommitment: 20 }

const departmentsAtOnce = 25

/** The same id for the same words, in the form of a UUID. @param {string} words SQL */
const id = (words) => `overlay(overlay(md5(${words}) placing '4' from 13) placing '8' from 17)::uuid`
/** @param {string} kind @param {string} [number] SQL */
const of = (kind, number) => id(`d || '/${kind}/'${number ? ` || ${number}` : ''}`)

const department = id(`'department/' || d`)
const count = (/** @type {string} */ alias, /** @type {number} */ last) => `generate_series(1, ${last}) as ${alias}`
const commitment = of('commitment', `(c * 100 + m)`)
const commitmentsOf = (/** @type {Held} */ held) => `${count('c', held.contracts)}, ${count('m', held.commitmentsPerContract)}`

/** @param {Held} held */
function tablesOf(held) {
  const contracts = count('c', held.contracts)
  const commitments = commitmentsOf(held)
  const reads = `${commitments}, ${count('r', held.readsPerCommitment)}`
  const read = `(c * 10000 + m * 100 + r)`
  const nightOf = (/** @type {string} */ game) => `(1 + (${game} - 1) % ${held.nights})`
  const heldOn = (/** @type {string} */ night) => `${held.firstDay ?? "date '2026-11-20'"} + (${night} * 110) / ${held.nights}`
  /** Each read falls on a night of its own, over the whole season where nothing else is asked for; game n is the first of night n. */
  const readAt = `(r * ${held.nightsBetweenReads ?? held.nights / held.readsPerCommitment})`
  const readOn = heldOn(readAt)

  /** Table → columns, values and where they come from; `d` is the department. */
  return [
    ['department', 'id, name, zone', `${department}, 'Athletics ' || d, 'America/Denver'`, ''],
    ['school', 'department_id, id, name, short_name, nickname, is_ours, first_colour, second_colour',
      `${department}, ${of('school', 's')}, 'High School ' || s, 'School ' || s, 'Team ' || s, s = 1, '#1F5C3A', '#B8632A'`, count('s', 9)],
    ['venue', 'department_id, id, name', `${department}, ${of('venue')}, 'Alder Fieldhouse'`, ''],
    ['season', 'department_id, id, name, sport, starts_on, ends_on', `${department}, ${of('season')}, 'Basketball 2026-27', 'basketball', '2026-11-20', '2027-03-13'`, ''],
    ['team', 'department_id, id, season_id, school_id, name, level', `${department}, ${of('team', 's')}, ${of('season')}, ${of('school', 's')}, 'Varsity', 'varsity'`, count('s', 9)],
    ['night', 'department_id, id, held_on, venue_id', `${department}, ${of('night', 'n')}, ${heldOn('n')}, ${of('venue')}`, count('n', held.nights)],
    ['game', 'department_id, id, season_id, sport, level, played_on, starts_at',
      `${department}, ${of('game', 'g')}, ${of('season')}, 'basketball', 'varsity', ${heldOn(nightOf('g'))}, (${heldOn(nightOf('g'))})::timestamptz + interval '26 hours'`, count('g', held.games)],
    ['game_participant', 'department_id, id, game_id, team_id, place, is_home',
      `${department}, ${of('participant', '(g * 2 + p)')}, ${of('game', 'g')}, ${of('team', `case when p = 1 then 1 else 2 + g % 8 end`)}, p, p = 1`,
      `${count('g', held.games)}, ${count('p', 2)}`],
    ['game_night', 'department_id, id, game_id, night_id', `${department}, ${of('game-night', 'g')}, ${of('game', 'g')}, ${of('night', nightOf('g'))}`, count('g', held.games)],
    ['sponsor_category', 'department_id, id, name', `${department}, ${of('category')}, 'Hardware'`, ''],
    ['seller', 'department_id, id, name, number_prefix', `${department}, ${of('seller')}, 'Athletics', 'TR'`, ''],
    ['read_kind', 'department_id, id, name, timing, windows', `${department}, ${of('kind', 'm')}, 'Read ' || m, 'scheduled', array['halftime']`, count('m', held.commitmentsPerContract)],
    ['sponsor', 'department_id, id, name, category_id, status', `${department}, ${of('sponsor', 'c')}, 'Sponsor ' || c, ${of('category')}, 'active'`, contracts],
    ['payer', 'department_id, id, sponsor_id, name', `${department}, ${of('payer', 'c')}, ${of('sponsor', 'c')}, 'Payer ' || c`, contracts],
    ['contract', 'department_id, id, number, sponsor_id, seller_id, payer_id, title',
      `${department}, ${of('contract', 'c')}, 'C-' || c, ${of('sponsor', 'c')}, ${of('seller')}, ${of('payer', 'c')}, 'Reads of the season'`, contracts],
    ['term', 'department_id, id, contract_id, season_id, starts_on, ends_on, price_cents, billing_plan, signed_on',
      `${department}, ${of('term', 'c')}, ${of('contract', 'c')}, ${of('season')}, '2026-11-20', '2027-03-13', 120000, '{"kind":"inFull","on":"2026-12-01"}', '2026-11-20'`, contracts],
    ['commitment', 'department_id, id, term_id, contract_id, read_kind_id, place, counting, reads, rate_cents',
      `${department}, ${commitment}, ${of('term', 'c')}, ${of('contract', 'c')}, ${of('kind', 'm')}, m, 'perTerm', ${held.readsPerCommitment}, 2000`, commitments],
    ['log_entry', 'department_id, id, night_id, game_id, number, device_id, sequence, kind, outcome, cue_key, commitment_id, window_key, occurred_at, content_digest',
      `${department}, ${of('log', read)}, ${of('night', readAt)}, ${of('game', readAt)}, c * 10 + m, ${of('device')}, c * 10 + m, 'read', 'given', 'game:' || ${of('game', readAt)} || '/halftime/' || m, ${commitment}, 'halftime', ${readOn}, md5(r::text)`, reads],
    ['ledger_event', 'department_id, id, cause, cause_id, contract_id, term_id, seller_id, place, happening, occurred_on, booked_on',
      `${department}, ${of('event', read)}, 'night', ${of('night', readAt)}, ${of('contract', 'c')}, ${of('term', 'c')}, ${of('seller')}, 100 * m + r,
       jsonb_build_object('kind', 'readCounted', 'readId', ${of('log', read)}, 'lineId', ${commitment}, 'gameId', ${of('game', readAt)}), ${readOn}, ${readOn}`, reads],
    ['ledger_entry', 'department_id, id, event_id, journal', `${department}, ${of('entry', `(${read} * 10 + j)`)}, ${of('event', read)}, case when j = 1 then 'reads' else 'money' end`, `${reads}, ${count('j', 2)}`],
    ['posting', 'department_id, id, entry_id, event_id, journal, from_account, to_account, amount, contract_id, term_id, commitment_id, game_id, seller_id, occurred_on, effective_on',
      `${department}, ${of('posting', `(${read} * 10 + j)`)}, ${of('entry', `(${read} * 10 + j)`)}, ${of('event', read)}, case when j = 1 then 'reads' else 'money' end, case when j = 1 then 'owed' else '4000' end,
       case when j = 1 then 'given' else '2100' end, case when j = 1 then 1 else 2000 end, ${of('contract', 'c')}, ${of('term', 'c')}, ${commitment}, ${of('game', readAt)}, ${of('seller')}, ${readOn}, ${readOn}`,
      `${reads}, ${count('j', 2)}`],
  ]
}

/** @param {string} adminUrl the database, as its superuser: filling goes past walls and triggers @param {number} from first department @param {number} to last @param {Held} [held] */
export async function fillDepartments(adminUrl, from, to, held = season) {
  const tables = tablesOf(held)
  const client = new pg.Client({ connectionString: adminUrl })
  await client.connect()
  try {
    await client.query('set session_replication_role = replica')
    for (let first = from; first <= to; first += departmentsAtOnce) {
      const series = `generate_series(${first}, ${Math.min(to, first + departmentsAtOnce - 1)}) as d`
      for (const [table, columns, values, source] of tables) {
        await client.query(`insert into ${table} (${columns}) select ${values} from ${[series, source].filter(Boolean).join(', ')}`)
      }
    }
    // What the server would do by itself some time later, in the middle of the measuring.
    await client.query('vacuum analyze')
  } finally {
    await client.end()
  }
}

/** What a benchmark has to name in department `number`. @param {string} adminUrl @param {number} [number] */
export async function namesIn(adminUrl, number = 1) {
  const client = new pg.Client({ connectionString: adminUrl })
  await client.connect()
  try {
    const { rows } = await client.query(`select ${department} as "departmentId", ${of('contract', '1')} as "contractId",
      array(select ${commitment} from ${commitmentsOf(season)}) as "commitmentIds",
      array(select jsonb_build_object('nightId', ${of('night', 'n')}, 'gameId', ${of('game', 'n')}) from ${count('n', season.nights)}
        where n % ${season.nights / season.readsPerCommitment} <> 0) as "nightsWithoutLog"
      from generate_series(${number}, ${number}) as d`)
    return rows[0]
  } finally {
    await client.end()
  }
}
