import { execFile } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { checkout } from '../../server/commands/build.mjs'
import { setTypeParsers } from '../../server/platform/database/types.ts'
import { checkBooks } from '../../server/reports/books.ts'
import { anApplication } from '../support/database.ts'
import type { Application } from '../support/database.ts'
import { Visitor } from '../support/visitor.ts'

const program = join(checkout, '.build/server/seeds/main.js')
setTypeParsers()

let application: Application
let signIns: { email: string; password: string; roles: string[] }[]
let everything: Visitor
let sponsorPage: string

function tell(): Promise<{ stdout: string }> {
  const { PATH } = process.env
  return promisify(execFile)(process.execPath, [program], { env: { PATH, DATABASE_URL: application.webUrl, RAFTERLINE_DATA: application.folder } })
}

async function signedIn({ email, password }: { email: string; password: string }): Promise<Visitor> {
  const answer = await new Visitor('', null, application.baseUrl).post('/api/sign-in', { email, password })
  const token = /^[^=]+=([^;]+)/.exec(answer.headers.get('set-cookie') ?? '')?.[1] ?? null
  return new Visitor(answer.body.person.id, token, application.baseUrl)
}

beforeAll(async () => {
  application = await anApplication()
  const { stdout } = await tell()
  const told = stdout.trim().split('\n').map((line) => JSON.parse(line))
  signIns = told.filter(({ email }) => email)
  sponsorPage = told.find((line) => line.sponsorPage).sponsorPage
  everything = await signedIn(signIns.find(({ email }) => email.startsWith('everything'))!)
}, 120_000)

afterAll(() => application?.stop())

test('every demo person signs in, one of them as everything', async () => {
  const roles = await Promise.all(signIns.map(async (signIn) => (await (await signedIn(signIn)).look('/api/me')).roles.length))
  expect(roles.toSorted()).toEqual([1, 1, 1, 3])
})

test('the demo shows a department in mid-season', async () => {
  const contracts: any[] = (await everything.look('/api/contracts?perPage=50')).data
  expect(contracts.filter((one) => one.standing.behind > 0).map((one) => one.sponsorName)).toEqual(['Halvorsen Orthodontics'])
  expect(contracts.filter((one) => one.standing.extra > 0).map((one) => one.sponsorName)).toEqual(["Mirabel's Kitchen"])
  expect(contracts.filter((one) => one.standing.credited > 0).map((one) => one.sponsorName)).toEqual(['Juniper & Pike Hardware'])
  expect(contracts.some((one) => one.standing.given > 0 && one.standing.loggedNotSignedOff > 0)).toBe(true)
  expect(new Set(contracts.map((one) => one.sellerName))).toEqual(new Set(['Tamarack Ridge Athletics', 'Kestrel Boosters']))
  const games: any[] = (await everything.look('/api/games?perPage=100')).data
  expect(games.filter((game) => game.status === 'cancelled')).toHaveLength(1)
  expect(games.filter((game) => game.movedFromOn !== null)).toHaveLength(1)
  const invoices: any[] = (await everything.look('/api/invoices?perPage=50')).data
  expect(new Set(invoices.map((invoice) => invoice.state))).toEqual(new Set(['paid', 'partlyPaid', 'open', 'overdue']))
  const { nights } = await everything.look('/api/home')
  expect(nights[0]).toMatchObject({ packetIssued: 1, packetOutOfDate: false, readiness: { ready: true } })
  expect(nights[0].games.map((game: { level: string }) => game.level)).toEqual(['juniorVarsity', 'varsity'])
  expect(nights[1].readiness.missing).toEqual(['Nobody is down to announce.'])
})

test('the demo has offers in every state of a sale, and calls to make this week', async () => {
  const offers: any[] = (await everything.look('/api/offers?perPage=50')).data
  expect(offers.map((offer) => offer.state).toSorted()).toEqual(['declined', 'draft', 'open', 'open'])
  const { calls } = await everything.look('/api/calls')
  expect(calls[0]).toMatchObject({ sponsorName: "Mirabel's Kitchen", group: 'overdue' })
  expect(calls.map((call: { sponsorName: string }) => call.sponsorName)).toContain('Halvorsen Orthodontics')
})

test('the season of the demo is planned from signed contracts and open offers, with nothing left without a place unless it is proven', async () => {
  const [season] = (await everything.look('/api/seasons?perPage=1')).data
  const [proposal] = (await everything.look(`/api/plan-proposals?seasonId=${season.id}`)).data
  expect(proposal.state).toBe('accepted')
  const { result } = await everything.look(`/api/plan-proposals/${proposal.id}`)
  expect(result.totals.held).toBeGreaterThan(0)
  expect(result.shortfallReads === 0 || result.isProven).toBe(true)
  expect((await everything.look('/api/packages')).data).toHaveLength(2)
})

test('the demo proves what was given: a remedy agreed, one that waits for the sponsor, questions of sponsors, and statements that were overtaken', async () => {
  const proposals: any[] = (await everything.look('/api/makegood-proposals')).data
  expect(proposals.map(({ sponsorName, remedy, standing }) => [sponsorName, remedy, standing]).toSorted()).toEqual([
    ['Halvorsen Orthodontics', 'credit', 'waitingForAnswer'],
    ['Halvorsen Orthodontics', 'moreReads', expect.stringMatching(/^toBe(Given|Placed)$/)],
  ])
  const questions: any[] = (await everything.look('/api/read-disputes')).data
  expect(questions.map(({ sponsorName, state }) => [sponsorName, state]).toSorted()).toEqual([['Okafor Family Insurance', 'answered'], ['Snowmelt Creamery', 'open']])
  const statements: any[] = (await everything.look('/api/performance-statements')).data
  expect(statements.map(({ sponsorName, number, replacedBy }) => [sponsorName, number, replacedBy?.number ?? null]).toSorted()).toEqual([
    ['Juniper & Pike Hardware', 1, null], ['Snowmelt Creamery', 1, 2], ['Snowmelt Creamery', 2, null],
  ])
})

test('the way to a sponsor’s page that the demo gives out shows that sponsor and no other', async () => {
  const sponsor = await Visitor.byLink(sponsorPage, application.baseUrl)
  const page = JSON.stringify(await sponsor.look('/api/sponsor-page'))
  expect(page).toContain('Halvorsen Orthodontics')
  expect(page).not.toContain('Snowmelt')
})

test('the example files change nothing of the demo and add what they name as new', async () => {
  const [{ id: seasonId }] = (await everything.look('/api/seasons')).data
  const created = { rosters: 1, schedule: 1, contracts: 2 }
  for (const [kind, create] of Object.entries(created)) {
    const csv = readFileSync(join(application.folder, 'examples', `${kind}.csv`), 'utf8')
    const { summary } = await everything.make(`/api/imports/${kind}`, { csv, seasonId, confirm: false })
    expect(summary, kind).toMatchObject({ create, change: 0, move: 0, drop: 0, refuse: 0 })
  }
})

test('the books of the demo hold, and it is told once only', async () => {
  const { rows } = await application.ownerPool.query('select id from department')
  const client = await application.webPool.connect()
  try {
    await client.query(`set timezone = 'UTC'; begin isolation level repeatable read read only; set local app.department_id = '${rows[0].id}'`)
    const findings = await checkBooks(async (sql, parameters) => (await client.query(sql, parameters as unknown[])).rows, rows[0].id)
    expect(findings.flatMap((finding) => finding.broken)).toEqual([])
  } finally {
    await client.query('rollback')
    client.release()
  }
  await expect(tell()).rejects.toThrow(/only told into an empty database/)
})
