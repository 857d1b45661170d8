/** Fills a department with signed contracts whose reads were given night by night, logged, signed off and booked; by generated SQL. */
import pg from 'pg'

export const nights = 30
export const lines = 2
const readsOfLine = nights / lines

const id = (/** @type {string} */ words) => `overlay(overlay(md5(${words}) placing '4' from 13) placing '8' from 17)::uuid`
/** @param {string} kind @param {string} [number] SQL */
const of = (kind, number) => id(`'${kind}/'${number ? ` || ${number}` : ''}`)
const department = of('department')
const count = (/** @type {string} */ alias, /** @type {number} */ last) => `generate_series(1, ${last}) as ${alias}`
const line = of('commitment', '(c * 10 + m)')
const heldOn = (/** @type {string} */ night) => `(date '2025-11-20' + ${night} * 3)`
/** Read r of line m falls on night (r - 1) * lines + m, so that each night has one. */
const night = `((r - 1) * ${lines} + m)`
const read = `(c * 1000 + ${night})`

/** @param {number} contracts */
const tables = (contracts) => {
  const each = count('c', contracts)
  const perLine = `${each}, ${count('m', lines)}`
  const perRead = `${perLine}, ${count('r', readsOfLine)}`
  const term = `jsonb_build_object('kind', 'reads', 'lineId', ${line}, 'name', 'Read ' || m, 'counting', 'perTerm', 'pricing', 'fixed', 'reads', ${readsOfLine + 3}, 'rateCents', 1500)`
  const posting = 'department_id, id, entry_id, event_id, journal, from_account, to_account, amount, contract_id, term_id, commitment_id, seller_id, occurred_on, effective_on'
  return /** @type {const} */ ([
    ['department', 'id, name, zone', `${department}, 'Athletics', 'America/Denver'`, ''],
    ['school', 'department_id, id, name, short_name, nickname, is_ours, first_colour, second_colour',
      `${department}, ${of('school', 's')}, 'High School ' || s, 'School ' || s, 'Team ' || s, s = 1, '#1F5C3A', '#B8632A'`, count('s', 6)],
    ['venue', 'department_id, id, name', `${department}, ${of('venue')}, 'Alder Fieldhouse'`, ''],
    ['season', 'department_id, id, name, sport, starts_on, ends_on', `${department}, ${of('season')}, 'Basketball 2025-26', 'basketball', '2025-11-20', '2026-03-13'`, ''],
    ['team', 'department_id, id, season_id, school_id, name, level', `${department}, ${of('team', 's')}, ${of('season')}, ${of('school', 's')}, 'Varsity', 'varsity'`, count('s', 6)],
    ['night', 'department_id, id, held_on, venue_id', `${department}, ${of('night', 'n')}, ${heldOn('n')}, ${of('venue')}`, count('n', nights)],
    ['game', 'department_id, id, season_id, sport, level, played_on, starts_at, status',
      `${department}, ${of('game', 'n')}, ${of('season')}, 'basketball', 'varsity', ${heldOn('n')}, ${heldOn('n')}::timestamptz + interval '26 hours', 'played'`, count('n', nights)],
    ['game_participant', 'department_id, id, game_id, team_id, place, is_home',
      `${department}, ${of('participant', '(n * 2 + p)')}, ${of('game', 'n')}, ${of('team', 'case when p = 1 then 1 else 2 + n % 5 end')}, p, p = 1`, `${count('n', nights)}, ${count('p', 2)}`],
    ['game_night', 'department_id, id, game_id, night_id', `${department}, ${of('game-night', 'n')}, ${of('game', 'n')}, ${of('night', 'n')}`, count('n', nights)],
    ['sign_off', 'department_id, id, night_id, signed_off_by_person_id, attendance', `${department}, ${of('sign-off', 'n')}, ${of('night', 'n')}, ${of('person')}, case when n % 5 > 0 then 300 + n end`, count('n', nights)],
    ['sponsor_category', 'department_id, id, name', `${department}, ${of('category')}, 'Hardware'`, ''],
    ['seller', 'department_id, id, name, number_prefix', `${department}, ${of('seller')}, 'Athletics', 'TR'`, ''],
    ['read_kind', 'department_id, id, name, timing, windows', `${department}, ${of('kind', 'm')}, 'Read ' || m, 'scheduled', array['halftime']`, count('m', lines)],
    ['sponsor', 'department_id, id, name, category_id, status', `${department}, ${of('sponsor', 'c')}, 'Sponsor ' || c, ${of('category')}, 'active'`, each],
    ['payer', 'department_id, id, sponsor_id, name', `${department}, ${of('payer', 'c')}, ${of('sponsor', 'c')}, 'Payer ' || c`, each],
    ['contract', 'department_id, id, number, sponsor_id, seller_id, payer_id, title', `${department}, ${of('contract', 'c')}, 'C-' || c, ${of('sponsor', 'c')}, ${of('seller')}, ${of('payer', 'c')}, 'Reads of the season'`, each],
    ['term', 'department_id, id, contract_id, season_id, starts_on, ends_on, price_cents, billing_plan, signed_on',
      `${department}, ${of('term', 'c')}, ${of('contract', 'c')}, ${of('season')}, '2025-11-20', '2026-03-13', 54000, '{"kind":"perReadInArrears"}', '2025-11-20'`, each],
    ['commitment', 'department_id, id, term_id, contract_id, read_kind_id, place, counting, reads, rate_cents',
      `${department}, ${line}, ${of('term', 'c')}, ${of('contract', 'c')}, ${of('kind', 'm')}, m, 'perTerm', ${readsOfLine + 3}, 1500`, perLine],
    ['log_entry', 'department_id, id, night_id, game_id, number, device_id, sequence, kind, outcome, cue_key, commitment_id, window_key, occurred_at, content_digest',
      `${department}, ${of('log', read)}, ${of('night', night)}, ${of('game', night)}, c, ${of('device')}, ${read}, 'read', 'given', 'game:' || ${of('game', night)} || '/halftime/' || c, ${line}, 'halftime',
       ${heldOn(night)}::timestamptz + interval '26 hours 40 minutes', md5(r::text)`, perRead],
    ['ledger_event', 'department_id, id, cause, cause_id, contract_id, term_id, seller_id, place, happening, occurred_on, booked_on',
      `${department}, ${of('signing', 'c')}, 'contract', ${of('contract', 'c')}, ${of('contract', 'c')}, ${of('term', 'c')}, ${of('seller')}, 1,
       jsonb_build_object('kind', 'signed', 'terms', jsonb_build_object('contractId', ${of('contract', 'c')}, 'priceCents', 54000, 'cancelledGame', 'credit',
         'lines', (select jsonb_agg(${term} order by m) from ${count('m', lines)}))), '2025-11-20', '2025-11-20'`, each],
    ['ledger_event', 'department_id, id, cause, cause_id, contract_id, term_id, seller_id, place, happening, occurred_on, booked_on',
      `${department}, ${of('event', read)}, 'night', ${of('night', night)}, ${of('contract', 'c')}, ${of('term', 'c')}, ${of('seller')}, 1 + ${night},
       jsonb_build_object('kind', 'readCounted', 'readId', ${of('log', read)}, 'lineId', ${line}, 'gameId', ${of('game', night)}), ${heldOn(night)}, ${heldOn(night)}`, perRead],
    ['counted_read', 'department_id, id, night_id, game_id, cue_key, entry_id, commitment_id, event_id',
      `${department}, ${of('counted', read)}, ${of('night', night)}, ${of('game', night)}, 'game:' || ${of('game', night)} || '/halftime/' || c, ${of('log', read)}, ${line}, ${of('event', read)}`, perRead],
    ['ledger_entry', 'department_id, id, event_id, journal', `${department}, ${of('entry', 'c')}, ${of('signing', 'c')}, 'reads'`, each],
    ['ledger_entry', 'department_id, id, event_id, journal', `${department}, ${of('entry', read)}, ${of('event', read)}, 'reads'`, perRead],
    ['posting', posting,
      `${department}, ${of('promise', '(c * 10 + m)')}, ${of('entry', 'c')}, ${of('signing', 'c')}, 'reads', 'promised', 'owed', ${readsOfLine + 3}, ${of('contract', 'c')}, ${of('term', 'c')}, ${line}, ${of('seller')}, '2025-11-20', '2025-11-20'`, perLine],
    ['posting', posting,
      `${department}, ${of('posting', read)}, ${of('entry', read)}, ${of('event', read)}, 'reads', 'owed', 'given', 1, ${of('contract', 'c')}, ${of('term', 'c')}, ${line}, ${of('seller')}, ${heldOn(night)}, ${heldOn(night)}`, perRead],
  ])
}

/** @param {string} adminUrl the database, as its superuser: filling goes past walls and triggers @param {number} contracts */
export async function fillReports(adminUrl, contracts) {
  const client = new pg.Client({ connectionString: adminUrl })
  await client.connect()
  try {
    await client.query('set session_replication_role = replica')
    for (const [table, columns, values, source] of tables(contracts)) await client.query(`insert into ${table} (${columns}) select ${values}${source ? ` from ${source}` : ''}`)
    await client.query('vacuum analyze')
    return /** @type {string} */ ((await client.query(`select ${department} as id`)).rows[0].id)
  } finally {
    await client.end()
  }
}
