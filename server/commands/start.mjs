/** `npm start`: database, migrations, demo season, build and server, with one command and one port. */
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { createInterface } from 'node:readline/promises'
import pg from 'pg'
import { backupBeforeMigrating } from './backup.mjs'
import { build, checkout } from './build.mjs'
import { openDatabase } from './database.mjs'
import { demoSignIns, demoSponsorPage, emptyEmbedded, emptyHalfTold, isEmpty, tellDemo } from './demo.mjs'
import { migrate } from './migrate.mjs'
import { isFree, portFrom, startServer } from './server-process.mjs'
import { WayOut, command, sinceStart, step, wait } from './terminal.mjs'

/** @typedef {import('./database.mjs').Database} Database */

const help = `npm start                    start Rafterline with its own database
npm start -- --reset-demo    the same with a fresh demo season; deletes what is there, after asking
npm start -- --yes           answers the question beforehand
npm start -- --demo          tells the demo season into an empty database named by DATABASE_URL

PORT=8080                    another port than 3000
RAFTERLINE_DATA=folder       another data folder than .data, for a second copy beside this one
DATABASE_URL, DATABASE_OWNER_URL   a PostgreSQL 15 or newer of your own: the login that runs, the login that owns
`
const known = ['--reset-demo', '--yes', '--demo', '--help']
const oneStart = 7_203_346

/** @param {string} word */
const asked = (word) => process.argv.slice(2).includes(word)

function wantedPort() {
  const text = process.env['PORT'] || '3000'
  const port = Number(text)
  if (Number.isInteger(port) && port > 0 && port < 65_536) return port
  throw new WayOut(`PORT is "${text}"; it must be a number from 1 to 65535.`)
}

/** @param {string} folder */
async function confirmReset(folder) {
  if (asked('--yes')) return
  if (!process.stdin.isTTY) throw new WayOut('--reset-demo deletes everything in the database. Without a terminal to ask at, add --yes.')
  const question = createInterface({ input: process.stdin, output: process.stdout })
  const answer = await question.question(`\nThis deletes every department, contract and invoice in ${folder}. Type "yes" to go on: `)
  question.close()
  if (answer.trim().toLowerCase() !== 'yes') throw new WayOut('Nothing was changed.')
}

/** One start a data folder; the lock ends with this process, however it ends. @param {Database} database */
async function holdAlone(database) {
  if (!database.embedded) return async () => {}
  const client = new pg.Client({ connectionString: database.embedded.adminUrl, application_name: 'rafterline start', keepAlive: true })
  client.on('error', () => {})
  await client.connect()
  for (const until = Date.now() + 8000; ; await wait(200)) {
    const { rows } = await client.query('select pg_try_advisory_lock($1) as held', [oneStart])
    if (rows[0].held) return () => client.end()
    if (Date.now() > until) break
  }
  await client.end()
  const { address, pid } = runningStart(database.folder)
  throw new WayOut(
    `Rafterline already runs with the data in ${database.folder}${address ? `, at ${address} (process ${pid})` : ''}.\n` +
      'Use that one, stop it with Ctrl-C, or start a second copy beside it: RAFTERLINE_DATA=another-folder npm start',
  )
}

/** @param {string} folder @returns {{ address?: string, port?: number, pid?: number }} */
function runningStart(folder) {
  const file = join(folder, 'running.json')
  try {
    return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : {}
  } catch {
    return {}
  }
}

/** @param {Database} database */
async function prepare(database) {
  await emptyHalfTold(database)
  if (asked('--reset-demo')) {
    await confirmReset(database.folder)
    await step('Emptying the database', () => emptyEmbedded(database))
  }
  await step('Bringing the schema forward', (note) => migrate({ ...database, backup: backupBeforeMigrating(database), note }))
  if (await isEmpty(database)) {
    if (database.embedded || asked('--demo')) await step('Telling the demo season', (note) => tellDemo(database, note))
    else console.log('    The database is empty. npm start -- --demo tells the demo season into it.')
  }
}

/** @param {Database} database */
async function serve(database) {
  const wanted = wantedPort()
  const former = runningStart(database.folder)
  // The server of a killed start lets go of its port within seconds.
  if (former.port === wanted) for (const until = Date.now() + 5000; Date.now() < until && !(await isFree(wanted)); ) await wait(100)
  const pages = join(checkout, '.build/admin-ui')
  return step('Starting the server', async (note) => {
    const port = await portFrom(wanted)
    if (port !== wanted) note(`port ${wanted} is taken, using ${port}`)
    return startServer({
      port,
      environment: { DATABASE_URL: database.webUrl, RAFTERLINE_DATA: database.folder, ...(existsSync(pages) ? { RAFTERLINE_STATIC: pages } : {}) },
      // With a database of its own the terminal stays readable; elsewhere something collects what is printed.
      ...(database.embedded ? { logFile: join(database.folder, 'server.log') } : {}),
    })
  })
}

/** @param {Database} database @param {string} address */
function welcome(database, address) {
  const signIns = demoSignIns(database.folder)
  const width = Math.max(0, ...signIns.map(({ email }) => email.length))
  const people = signIns.map(({ email, password, name, roles }) => `    ${email.padEnd(width)}  ${password}  ${[name, roles].flat().filter(Boolean).join(', ')}`)
  const shown = demoSponsorPage(database.folder)
  console.log(
    [
      `\nRafterline is ready at ${address} (after ${sinceStart()})`,
      ...(people.length > 0 ? ['\n  Demo sign-ins:', ...people] : []),
      ...(shown ? [`\n  What ${shown.sponsorName} sees by its link, without an account:`, `    ${address}/#/for-sponsors/${shown.sponsorPage}`] : []),
      `\n  Data: ${database.embedded ? database.folder : 'the PostgreSQL server named by DATABASE_URL'}`,
      ...(database.embedded ? [`  Log:  ${join(database.folder, 'server.log')}`] : []),
      '\n  Ctrl-C stops it.\n',
    ].join('\n'),
  )
}

/** Resolves when somebody asks to stop. @returns {Promise<string>} */
function stopAsked() {
  return new Promise((done) => {
    let first = 0
    for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP'])) {
      process.on(signal, () => {
        // npm passes on the Ctrl-C that the terminal also sent us; only a later one means impatience.
        if (first && Date.now() - first > 1500) process.exit(130)
        first ||= Date.now()
        done(signal)
      })
    }
    const parents = parentsNow()
    if (process.env['npm_lifecycle_event']) setInterval(() => parentsNow() !== parents && done('npm ended'), 1000).unref()
  })
}

/** npm starts us through a shell that outlives it, so both are watched where the system tells. */
function parentsNow() {
  try {
    const status = readFileSync(`/proc/${process.ppid}/status`, 'utf8')
    return `${process.ppid} ${/^PPid:\s*(\d+)/m.exec(status)?.[1]}`
  } catch {
    return String(process.ppid)
  }
}

async function main() {
  const stranger = process.argv.slice(2).find((word) => !known.includes(word))
  if (stranger) throw new WayOut(`npm start does not know "${stranger}".\n\n${help}`)
  if (asked('--help')) return void console.log(help)
  const stop = stopAsked()
  const stopped = stop.then(() => 'stopped')
  console.log('\nRafterline\n')
  wantedPort()
  await build()
  await refuseUnknownSettings()
  const database = await step('Opening the database', (note) => openDatabase(note))
  /** @type {import('./server-process.mjs').ServerProcess | null} */
  let server = null
  let release = async () => {}
  let code = 0
  let ours = false
  try {
    release = await holdAlone(database)
    ours = true
    await prepare(database)
    if ((await Promise.race([stopped, wait(0)])) === 'stopped') return 0
    server = await serve(database)
    const address = process.env['RAFTERLINE_PUBLIC_URL'] || `http://localhost:${server.port}`
    writeFileSync(join(database.folder, 'running.json'), JSON.stringify({ address, port: server.port, pid: process.pid }))
    welcome(database, address)
    const ended = await Promise.race([stopped, server.exited])
    if (ended === 'stopped') console.log('\nStopping: finishing what is under way …')
    else {
      console.error(`\nThe server ended by itself (${ended ?? 'killed'}).`)
      code = 1
    }
  } finally {
    if (ours) await closeAll(database, server, release)
  }
  return code
}

/** @param {Database} database @param {import('./server-process.mjs').ServerProcess | null} server @param {() => Promise<void>} release */
async function closeAll(database, server, release) {
  await server?.stop()
  await release().catch(() => {})
  await database.embedded?.stop()
  rmSync(join(database.folder, 'running.json'), { force: true })
  console.log('Stopped; everything is saved.')
}

/** What the server would refuse is refused before a database is opened. */
async function refuseUnknownSettings() {
  const { readConfig } = await import('../../.build/server/platform/config/config.js')
  try {
    readConfig({ ...process.env, DATABASE_URL: 'postgres://checked-later' })
  } catch (refused) {
    throw new WayOut(`Rafterline does not start: ${/** @type {Error} */ (refused).message}.`)
  }
}

await command(main)
process.exit()
