/** Fills departments with signed contracts of four lines, each with one read given and not billed; by generated SQL. */
import pg from 'pg'

export const lines = 4

const id = (/** @type {string} */ words) => `overlay(overlay(md5(${words}) placing '4' from 13) placing '8' from 17)::uuid`
/** @param {string} kind @param {string} [number] SQL */
const of = (kind, number) => id(`d || '/${kind}/'${number ? ` || ${number}` : ''}`)
const department = id(`'department/' || d`)
const line = of('commitment', '(c * 10 + m)')
const line1 = `jsonb_build_object('kind', 'reads', 'lineId', ${line}, 'name', 'Read ' || m, 'counting', 'perTerm', 'pricing', 'fixed', 'reads', 20, 'rateCents', 1500)`

/** @param {number} contracts */
const tables = (contracts) => {
  const each = `generate_series(1, ${contracts}) as c`
  const perLine = `${each}, generate_series(1, ${lines}) as m`
  return /** @type {const} */ ([
    ['department', 'id, name, zone', `${department}, 'Athletics ' || d, 'America/Denver'`, ''],
    ['season', 'department_id, id, name, sport, starts_on, ends_on', `${department}, ${of('season')}, 'Basketball 2026-27', 'basketball', '2026-11-20', '2027-03-13'`, ''],
    ['sponsor_category', 'department_id, id, name', `${department}, ${of('category')}, 'Hardware'`, ''],
    ['seller', 'department_id, id, name, number_prefix, tax_basis_points', `${department}, ${of('seller')}, 'Athletics', 'TR', 500`, ''],
    ['read_kind', 'department_id, id, name, timing, windows', `${department}, ${of('kind', 'm')}, 'Read ' || m, 'scheduled', array['halftime']`, `generate_series(1, ${lines}) as m`],
    ['sponsor', 'department_id, id, name, category_id, status', `${department}, ${of('sponsor', 'c')}, 'Sponsor ' || c, ${of('category')}, 'active'`, each],
    ['payer', 'department_id, id, sponsor_id, name', `${department}, ${of('payer', 'c')}, ${of('sponsor', 'c')}, 'Payer ' || c`, each],
    ['contract', 'department_id, id, number, sponsor_id, seller_id, payer_id, title', `${department}, ${of('contract', 'c')}, 'C-' || c, ${of('sponsor', 'c')}, ${of('seller')}, ${of('payer', 'c')}, 'Reads of the season'`, each],
    ['term', 'department_id, id, contract_id, season_id, starts_on, ends_on, price_cents, billing_plan, signed_on',
      `${department}, ${of('term', 'c')}, ${of('contract', 'c')}, ${of('season')}, '2026-11-20', '2027-03-13', 120000, '{"kind":"perReadInArrears"}', '2026-11-20'`, each],
    ['commitment', 'department_id, id, term_id, contract_id, read_kind_id, place, counting, reads, rate_cents',
      `${department}, ${line}, ${of('term', 'c')}, ${of('contract', 'c')}, ${of('kind', 'm')}, m, 'perTerm', 20, 1500`, perLine],
    ['ledger_event', 'department_id, id, cause, cause_id, contract_id, term_id, seller_id, place, happening, occurred_on, booked_on',
      `${department}, ${of('event', '(c * 10)')}, 'contract', ${of('contract', 'c')}, ${of('contract', 'c')}, ${of('term', 'c')}, ${of('seller')}, 1,
       jsonb_build_object('kind', 'signed', 'terms', jsonb_build_object('contractId', ${of('contract', 'c')}, 'priceCents', 120000, 'cancelledGame', 'credit',
         'lines', (select jsonb_agg(${line1} order by m) from generate_series(1, ${lines}) as m))), '2026-11-20', '2026-11-20'`, each],
    ['ledger_event', 'department_id, id, cause, cause_id, contract_id, term_id, seller_id, place, happening, occurred_on, booked_on',
      `${department}, ${of('event', '(c * 10 + m)')}, 'night', ${of('night')}, ${of('contract', 'c')}, ${of('term', 'c')}, ${of('seller')}, 1 + m,
       jsonb_build_object('kind', 'readCounted', 'readId', ${of('read', '(c * 10 + m)')}, 'lineId', ${line}), '2026-12-04', '2026-12-04'`, perLine],
  ])
}

/** @param {string} adminUrl the database, as its superuser: filling goes past walls and triggers @param {number} departments @param {number} contracts of each */
export async function fillBilling(adminUrl, departments, contracts) {
  const client = new pg.Client({ connectionString: adminUrl })
  await client.connect()
  try {
    await client.query('set session_replication_role = replica')
    for (const [table, columns, values, source] of tables(contracts)) {
      await client.query(`insert into ${table} (${columns}) select ${values} from ${[`generate_series(1, ${departments}) as d`, source].filter(Boolean).join(', ')}`)
    }
    await client.query('vacuum analyze')
    const { rows } = await client.query(`select ${department} as id from generate_series(1, ${departments}) as d order by d`)
    return rows.map((row) => /** @type {string} */ (row.id))
  } finally {
    await client.end()
  }
}
