/** `npm run department`: sets up a department in its first director's hands. Asks for what is not given. */
import { createInterface } from 'node:readline/promises'
import pg from 'pg'
import { build } from './build.mjs'
import { openDatabase } from './database.mjs'
import { migrate } from './migrate.mjs'
import { WayOut, command, option } from './terminal.mjs'

const QUESTIONS = /** @type {const} */ ([
  ['name', 'Name of the department (Tamarack Ridge Athletics)'],
  ['zone', 'Time zone (America/Denver)'],
  ['director', 'Name of its first director'],
  ['email', 'E-mail address the director signs in with'],
  ['password', 'Password, 15 characters or more (a short sentence is easiest to keep)'],
])

/** @returns {Promise<Record<'name' | 'zone' | 'director' | 'email' | 'password', string>>} */
async function answers() {
  const given = Object.fromEntries(QUESTIONS.map(([name]) => [name, name === 'password' ? process.env['DIRECTOR_PASSWORD'] : option(`--${name}`)]))
  if (QUESTIONS.some(([name]) => !given[name])) {
    if (!process.stdin.isTTY) throw new WayOut('Give --name, --zone, --director and --email, and the password in DIRECTOR_PASSWORD, or run this at a terminal.')
    const asking = createInterface({ input: process.stdin, output: process.stdout })
    for (const [name, question] of QUESTIONS) given[name] ||= (await asking.question(`${question}: `)).trim()
    asking.close()
  }
  return /** @type {any} */ (given)
}

await command(async () => {
  await build(['server'])
  const form = await answers()
  const { isZone } = await import('../../.build/server/domain/instant.js')
  const { newPasswordHash } = await import('../../.build/server/access/sign-in.service.js')
  const { newId } = await import('../../.build/server/platform/database/ids.js')
  if (!isZone(form.zone)) throw new WayOut(`${form.zone} is no time zone; write one such as America/Denver.`)
  if (!/^[^@\s]+@[^@\s.]+(\.[^@\s.]+)+$/.test(form.email)) throw new WayOut(`${form.email} is no e-mail address.`)
  const passwordHash = await newPasswordHash(form.password, 'password').catch((/** @type {Error} */ refused) => {
    throw new WayOut(refused.message)
  })
  const database = await openDatabase()
  await migrate(database)
  const client = new pg.Client({ connectionString: database.webUrl })
  await client.connect()
  try {
    const [department, person] = [newId(), newId()]
    await client.query('begin')
    await client.query('insert into department (id, name, zone) values ($1, $2, $3)', [department, form.name, form.zone])
    await client.query('insert into person (id, email, name, password_hash) values ($1, $2, $3, $4)', [person, form.email.toLowerCase(), form.director, passwordHash])
    await client.query(`set local app.department_id = '${department}'`)
    await client.query(`insert into membership (department_id, id, person_id, roles) values ($1, $2, $3, '{director,bookkeeper,announcer}')`, [department, newId(), person])
    await client.query('commit')
    console.log(`\n${form.name} is set up. ${form.director} signs in with ${form.email.toLowerCase()} and may do everything.\n`)
  } catch (failure) {
    await client.query('rollback')
    if (/** @type {any} */ (failure).constraint === 'email-taken') throw new WayOut('Somebody already signs in with this e-mail address.')
    throw failure
  } finally {
    await client.end()
    await database.close()
  }
})
