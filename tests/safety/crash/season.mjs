/** The season the clients work on: nights with a game each, contracts whose reads are logged, contracts whose installments are billed. */
import { createHash, randomUUID } from 'node:crypto'
import pg from 'pg'

/**
 * @typedef {{ nightId: string, gameId: string }} Night
 * @typedef {{ departmentId: string, token: string, sellerId: string, payerId: string, teamId: string, nights: Night[],
 *   commitmentIds: string[], arrearsIds: string[], installmentIds: string[], installmentDays: string[] }} Season
 */

const INSTALLMENTS = 16
const CONTRACTS_IN_ARREARS = 3
const COLOURS = { firstColour: '#1F5C3A', secondColour: '#B8632A' }

/** @param {{ adminUrl: string, port: number, nights: number, contracts: number, chance: import('./random.mjs').Chance }} told @returns {Promise<Season>} */
export async function aCrashSeason({ adminUrl, port, nights, contracts, chance }) {
  const { departmentId, token } = await aDepartment(adminUrl, chance)
  const make = maker(port, token)
  const school = await make('/schools', { name: 'Tamarack Ridge High School', shortName: 'Tamarack Ridge', nickname: 'Kestrels', isOurs: true, ...COLOURS })
  const opponent = await make('/schools', { name: 'Port Ansel High School', shortName: 'Port Ansel', nickname: 'Herons', ...COLOURS })
  const venue = await make('/venues', { name: 'Alder Fieldhouse', isOurs: true })
  const season = await make('/seasons', { name: 'Basketball 2026-27', sport: 'basketball', startsOn: '2026-08-01', endsOn: '2027-06-30' })
  const team = await make('/teams', { seasonId: season.id, schoolId: school.id, name: 'Varsity boys', level: 'varsity' })
  const visitors = await make('/teams', { seasonId: season.id, schoolId: opponent.id, name: 'Varsity boys', level: 'varsity' })
  const category = await make('/sponsor-categories', { name: 'Hardware' })
  const sponsor = await make('/sponsors', { name: 'Juniper & Pike Hardware', categoryId: category.id })
  const seller = await make('/sellers', { name: 'Tamarack Ridge Athletics', numberPrefix: 'TR', taxBasisPoints: 500 })
  const payer = await make('/payers', { name: 'Juniper & Pike Hardware', sponsorId: sponsor.id })
  const kind = await make('/read-kinds', { name: 'Concession read', timing: 'scheduled', windows: ['halftime'], sponsorsPerGame: 3 })
  const parties = { sponsorId: sponsor.id, sellerId: seller.id, payerId: payer.id }
  const contract = async (/** @type {Record<string, unknown>} */ term, reads = 400) => {
    const draft = await make('/contracts', {
      ...parties, title: 'Concession reads', benefits: [],
      term: { seasonId: season.id, startsOn: '2026-08-01', endsOn: '2027-06-30', ...term },
      commitments: [{ readKindId: kind.id, counting: 'perTerm', reads, rateCents: 1500 }],
    })
    await make(`/contracts/${draft.id}/sign`, { signedOn: '2026-08-01', signedByName: 'Hazel Juniper' })
    return /** @type {{ id: string, commitmentId: string }} */ ({ id: draft.id, commitmentId: draft.commitments[0].id })
  }
  const installmentDays = Array.from({ length: INSTALLMENTS }, (_, place) => dayAfter('2026-08-03', place * 14))
  const installments = installmentDays.map((on) => ({ on, share: 1 }))
  /** @type {{ id: string, commitmentId: string }[]} */
  const arrears = []
  for (let place = 0; place < CONTRACTS_IN_ARREARS; place++) arrears.push(await contract({ pricing: 'perRead', priceCents: 0, billingPlan: { kind: 'perReadInArrears' } }))
  /** @type {{ id: string, commitmentId: string }[]} */
  const inParts = []
  for (let place = 0; place < contracts; place++) inParts.push(await contract({ pricing: 'fixed', priceCents: 96_000, billingPlan: { kind: 'installments', installments } }, 64))
  /** @type {Night[]} */
  const played = []
  for (let place = 0; place < nights; place++) {
    const game = await make('/games', {
      seasonId: season.id, level: 'varsity', homeTeamId: team.id, visitorTeamIds: [visitors.id], playedOn: dayAfter('2026-08-04', place), startsAtClock: '19:00', venueId: venue.id,
    })
    played.push({ nightId: game.nightIds[0], gameId: game.id })
  }
  return {
    departmentId, token, sellerId: seller.id, payerId: payer.id, teamId: team.id, nights: played, installmentDays,
    commitmentIds: [...arrears, ...inParts.slice(0, 3)].map((one) => one.commitmentId),
    arrearsIds: arrears.map((one) => one.id),
    installmentIds: inParts.map((one) => one.id),
  }
}

/** @param {string} day @param {number} days */
function dayAfter(day, days) {
  return new Date(Date.parse(`${day}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10)
}

/** A department with somebody signed in who may do everything. @param {string} adminUrl @param {import('./random.mjs').Chance} chance */
async function aDepartment(adminUrl, chance) {
  const [departmentId, personId, membershipId] = [chance.id(), chance.id(), chance.id()]
  const token = `${chance.id()}${chance.id()}`.replaceAll('-', '')
  const client = new pg.Client({ connectionString: adminUrl })
  await client.connect()
  try {
    await client.query(`insert into department (id, name, zone) values ($1, 'Tamarack Ridge Athletics', 'America/Denver')`, [departmentId])
    await client.query(`insert into person (id, email, name, password_hash) values ($1, 'director@tamarack.example', 'Director', 'nobody signs in with it')`, [personId])
    await client.query(`insert into membership (department_id, id, person_id, roles) values ($1, $2, $3, '{director,bookkeeper}')`, [departmentId, membershipId, personId])
    await client.query(`insert into session (token_hash, person_id, department_id, expires_at) values ($1, $2, $3, now() + interval '12 hours')`, [
      createHash('sha256').update(token).digest('hex'), personId, departmentId,
    ])
  } finally {
    await client.end()
  }
  return { departmentId, token }
}

/** @param {number} port @param {string} token */
function maker(port, token) {
  /** @param {string} path @param {unknown} body @returns {Promise<any>} */
  return async (path, body) => {
    const headers = { 'x-rafterline': '1', cookie: `rafterline-${port}=${token}`, 'content-type': 'application/json', 'idempotency-key': randomUUID() }
    const answer = await fetch(`http://127.0.0.1:${port}/api${path}`, { method: 'POST', headers, body: JSON.stringify(body) })
    if (!answer.ok) throw new Error(`${path} answered ${answer.status}: ${(await answer.text()).slice(0, 400)}`)
    return answer.json()
  }
}
