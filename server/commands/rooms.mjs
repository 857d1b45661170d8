/** What the commands share that work with the rooms of the server, without its port. */
import 'reflect-metadata'
import { NestFactory } from '@nestjs/core'
import pg from 'pg'
import { appliedMigrations, migrationFiles } from './migrate.mjs'
import { WayOut, option } from './terminal.mjs'

/** @typedef {{ departmentId: string, personId: null }} Scope */

/** @param {string[]} given @param {{ flags: string[], named: string[], help: string }} known */
export function refuseUnknown(given, { flags, named, help }) {
  for (let at = 0; at < given.length; at += 1) {
    const word = (given[at] ?? '').split('=')[0] ?? ''
    if (named.includes(word)) {
      if (!option(word, given) || option(word, given)?.startsWith('--')) throw new WayOut(`${word} needs a value.\n\n${help}`)
      if (!given[at]?.includes('=')) at += 1
    } else if (!flags.includes(word)) throw new WayOut(`"${given[at]}" is not known here.\n\n${help}`)
  }
}

/** The day given under a name; undefined where none is. @param {string} name @param {(text: string) => string} dayOf */
export function dayGiven(name, dayOf) {
  const text = option(name)
  if (text === undefined) return undefined
  try {
    return dayOf(text)
  } catch {
    throw new WayOut(`${name} ${text} is no day; write one such as 2026-12-04.`)
  }
}

/** @param {import('./database.mjs').Database} database @returns {Promise<{ id: string, name: string }>} */
async function departmentOf(database) {
  const client = new pg.Client({ connectionString: database.webUrl })
  await client.connect()
  try {
    const applied = await appliedMigrations(client)
    if (applied.length < migrationFiles().length) throw new WayOut('The database is not of this version yet. Start Rafterline once, or run its migrations, and try again.')
    const { rows } = await client.query('select id, name from department order by name')
    const wanted = option('--department')
    const found = wanted === undefined ? rows : rows.filter((row) => row.name === wanted)
    if (found.length === 1) return found[0]
    if (rows.length === 0) throw new WayOut('There is no department in this database yet.')
    throw new WayOut(`${wanted === undefined ? 'Say which department' : `There is no department "${wanted}"`}: --department "${rows.map((row) => row.name).join('" or "')}"`)
  } finally {
    await client.end()
  }
}

/**
 * The rooms of the server without its port, for the department that `--department` names or the only one there is.
 *
 * @param {import('./database.mjs').Database} database
 */
export async function openRooms(database) {
  const department = await departmentOf(database)
  const built = (/** @type {string} */ file) => import(`../../.build/server/${file}.js`)
  const [{ AppModule }, { readConfig }, { makeLog, NestLog }, { errands }] = await Promise.all(
    ['app.module', 'platform/config/config', 'platform/log/log', 'platform/database/scope'].map(built),
  )
  const log = makeLog('error')
  const config = readConfig({ ...process.env, DATABASE_URL: database.webUrl })
  const app = await NestFactory.createApplicationContext(AppModule.with(config, log), { logger: new NestLog(log), abortOnError: false })
  /** @type {Scope} */
  const scope = { departmentId: department.id, personId: null }
  return {
    department,
    scope,
    /** The service of this name in a built file. @param {string} file @param {string} name @returns {Promise<any>} */
    service: async (file, name) => app.get((await built(file))[name]),
    /** In the department's name; what is begun opens its units of work itself. @template T @param {() => Promise<T>} work @returns {Promise<T>} */
    begin: (work) => errands.run({ scope, manager: null }, work),
    close: () => app.close(),
  }
}
