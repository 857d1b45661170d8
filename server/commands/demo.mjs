/** The demo season: told once, into an empty database only. */
import { spawn } from 'node:child_process'
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import pg from 'pg'
import { checkout } from './build.mjs'
import { createDatabase, databaseName } from './logins.mjs'
import { holdsData } from './migrate.mjs'
import { WayOut } from './terminal.mjs'

/**
 * @typedef {import('./database.mjs').Database} Database
 * @typedef {{ email: string, password: string, name?: string, roles?: string[] | string }} SignIn
 * @typedef {{ sponsorName: string, sponsorPage: string }} SponsorPage
 */

const program = join(checkout, '.build/server/seeds/main.js')
const signInsFile = (/** @type {string} */ folder) => join(folder, 'sign-ins.json')
const sponsorPageFile = (/** @type {string} */ folder) => join(folder, 'sponsor-page.json')
const half = (/** @type {string} */ folder) => join(folder, 'half-told')

/** The embedded database made empty. @param {Database} database */
export async function emptyEmbedded(database) {
  if (!database.embedded) throw new WayOut('--reset-demo only empties the embedded database, never the one DATABASE_URL names.')
  const client = new pg.Client({ connectionString: database.embedded.adminUrl })
  await client.connect()
  try {
    await client.query(`drop database if exists ${databaseName} with (force)`)
    await createDatabase(client, databaseName)
  } finally {
    await client.end()
  }
  for (const name of ['files', 'sign-ins.json', 'sponsor-page.json', 'half-told']) rmSync(join(database.folder, name), { recursive: true, force: true })
}

/** A demo whose telling was broken off is no demo. @param {Database} database */
export async function emptyHalfTold(database) {
  if (database.embedded && existsSync(half(database.folder))) await emptyEmbedded(database)
}

/** @param {Database} database */
export async function isEmpty(database) {
  const client = new pg.Client({ connectionString: database.ownerUrl })
  await client.connect()
  try {
    return !(await holdsData(client))
  } finally {
    await client.end()
  }
}

/** @param {Database} database @param {(note: string) => void} note */
export async function tellDemo(database, note) {
  if (!existsSync(program)) {
    note('this checkout has no demo season')
    return
  }
  writeFileSync(half(database.folder), 'The demo season was being told; the next start tells it again from the beginning.\n')
  const { signIns, sponsorPage } = await runSeeds(database)
  writeFileSync(signInsFile(database.folder), JSON.stringify(signIns, null, 2), { mode: 0o600 })
  if (sponsorPage) writeFileSync(sponsorPageFile(database.folder), JSON.stringify(sponsorPage, null, 2), { mode: 0o600 })
  rmSync(half(database.folder))
}

/** The seeds print one JSON object a line; those with an e-mail address are sign-ins. @param {Database} database @returns {Promise<{ signIns: SignIn[], sponsorPage: SponsorPage | null }>} */
function runSeeds(database) {
  const child = spawn(process.execPath, ['--enable-source-maps', program], {
    cwd: checkout,
    env: { ...process.env, DATABASE_URL: database.webUrl, DATABASE_OWNER_URL: database.ownerUrl, RAFTERLINE_DATA: database.folder },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  /** @type {SignIn[]} */
  const signIns = []
  /** @type {SponsorPage | null} */
  let sponsorPage = null
  let said = ''
  createInterface({ input: child.stdout }).on('line', (line) => {
    const told = parsed(line)
    if (told?.email) signIns.push(told)
    else if (told?.sponsorPage) sponsorPage = told
    else said += `${line}\n`
  })
  child.stderr.on('data', (part) => (said += part))
  return new Promise((done, fail) => {
    child.on('error', fail)
    child.on('close', (code) => (code === 0 ? done({ signIns, sponsorPage }) : fail(new WayOut(`The demo season could not be told:\n${said.trim().slice(-4000)}`))))
  })
}

/** @param {string} line */
function parsed(line) {
  try {
    return JSON.parse(line)
  } catch {
    return null
  }
}

/** @param {string} folder @returns {SignIn[]} */
export function demoSignIns(folder) {
  return existsSync(signInsFile(folder)) ? JSON.parse(readFileSync(signInsFile(folder), 'utf8')) : []
}

/** The token of a link is kept nowhere else: only its hash is in the database. @param {string} folder @returns {SponsorPage | null} */
export function demoSponsorPage(folder) {
  return existsSync(sponsorPageFile(folder)) ? JSON.parse(readFileSync(sponsorPageFile(folder), 'utf8')) : null
}
