/** `npm run billing -- --preview|--run --through DAY`: bills everything that is due through a day, or says what that would be. */
import { build } from './build.mjs'
import { openDatabase } from './database.mjs'
import { dayGiven, openRooms, refuseUnknown } from './rooms.mjs'
import { WayOut, command, option, sinceStart } from './terminal.mjs'

const help = `npm run billing -- --preview --through DAY     who would be billed for how much, and who is skipped and why; changes nothing
npm run billing -- --run --through DAY         issues the invoices, one for each contract that has something due

--through DAY            as in 2026-11-30
--issued-on DAY          the day of the invoices; without it, today
--seller NAME            only contracts of this seller of record
--department NAME        where the database holds several
--continue               with --run: goes on with the latest run of that day that broke off, instead of a new one

A run may be stopped at any moment and continued; nothing is billed twice. It is in nobody's name.
Exit code 0: the preview is shown, or the run is through. 1: it is not, or nothing was done.
`
const flags = ['--preview', '--run', '--continue', '--help']
const named = ['--through', '--issued-on', '--seller', '--department']

/** @typedef {{ name: string, run: <T>(work: () => Promise<T>) => Promise<T>, outside: <T>(work: () => Promise<T>) => Promise<T>, previews: any, runs: any, views: any, work: any, close: () => Promise<void> }} Office */

/** @param {import('./database.mjs').Database} database @returns {Promise<Office>} */
async function openOffice(database) {
  const { department, scope, begin, service, close } = await openRooms(database)
  const work = await service('platform/database/unit-of-work', 'UnitOfWork')
  return {
    name: department.name,
    work,
    run: (inside) => work.runAs(scope, inside),
    outside: begin,
    previews: await service('billing/runs/billing-preview.service', 'BillingPreview'),
    runs: await service('billing/runs/billing-runs.service', 'BillingRuns'),
    views: await service('billing/runs/billing-run-views.service', 'BillingRunViews'),
    close,
  }
}

/** @param {Office} office @returns {Promise<string | undefined>} */
async function sellerOf(office) {
  const name = option('--seller')
  if (name === undefined) return undefined
  const rows = await office.run(() => office.work.sql('select id, name from seller where department_id = $1 order by name'))
  const found = rows.find((/** @type {{ name: string }} */ row) => row.name === name)
  if (!found) throw new WayOut(`There is no seller of record "${name}". There are: ${rows.map((/** @type {{ name: string }} */ row) => row.name).join(', ')}.`)
  return found.id
}

/** @param {number} cents */
const money = (cents) => (cents / 100).toLocaleString('en-US', { minimumFractionDigits: 2 })
/** @param {number} number @param {string} one */
const counted = (number, one) => `${number} ${one}${number === 1 ? '' : 's'}`

/** @param {{ sellerName: string, invoices: number, grossCents: number }[]} totals */
function printTotals(totals) {
  for (const { sellerName, invoices, grossCents } of totals) console.log(`${sellerName}: ${counted(invoices, 'invoice')}, ${money(grossCents)} to pay`)
}

/** @param {any} preview */
function printPreview({ contracts, totals }) {
  for (const { sponsorName, contractTitle, isSkipped, why, grossCents } of contracts) {
    console.log(`  ${isSkipped ? 'skipped' : money(grossCents).padStart(12)}  ${sponsorName}, ${contractTitle}${isSkipped ? `: ${why}` : ''}`)
  }
  printTotals(totals)
  const billed = contracts.filter((/** @type {{ isSkipped: boolean }} */ one) => !one.isSkipped).length
  console.log(`${counted(billed, 'contract')} would be billed, ${contracts.length - billed} skipped. Nothing was changed.`)
}

/** A bar on a terminal, nothing elsewhere. @param {number} done @param {number} of */
function showProgress(done, of) {
  if (!process.stdout.isTTY) return
  const width = 24
  const filled = of === 0 ? width : Math.round((width * done) / of)
  process.stdout.write(`\r\x1b[2K  [${'#'.repeat(filled)}${'-'.repeat(width - filled)}] ${done} of ${of} contracts${done === of ? '\r\x1b[2K' : ''}`)
}

/** @param {Office} office @param {{ throughDay: string, issuedOn?: string, sellerId?: string }} form @returns {Promise<string>} */
async function runToDrive(office, form) {
  if (!process.argv.includes('--continue')) return office.run(() => office.runs.start(form))
  const { data } = await office.run(() => office.views.list({ ...(form.sellerId ? { sellerId: form.sellerId } : {}), perPage: 100 }))
  const broken = data.find((/** @type {{ isFinished: boolean, throughDay: string }} */ run) => !run.isFinished && run.throughDay === form.throughDay)
  if (!broken) throw new WayOut(`No run through ${form.throughDay} broke off.`)
  return broken.id
}

await command(async () => {
  const given = process.argv.slice(2)
  if (given.includes('--help')) return void console.log(help)
  refuseUnknown(given, { flags, named, help })
  const isRun = given.includes('--run')
  if (isRun === given.includes('--preview')) throw new WayOut(`Say one of --preview and --run.\n\n${help}`)
  if (!option('--through')) throw new WayOut(`Say through which day: --through DAY\n\n${help}`)
  await build(['server'])
  const { dayOf } = await import('../../.build/server/domain/day.js')
  const throughDay = /** @type {string} */ (dayGiven('--through', dayOf))
  const issuedOn = dayGiven('--issued-on', dayOf)
  const database = await openDatabase()
  /** @type {Office | null} */
  let office = null
  try {
    office = await openOffice(database)
    const { runs, views, previews, name, run, outside } = office
    const sellerId = await sellerOf(office)
    console.log(`${name}, through ${throughDay}`)
    const days = { ...(issuedOn ? { issuedOn } : {}), ...(sellerId ? { sellerId } : {}) }
    if (!isRun) {
      printPreview(await run(() => previews.preview({ through: throughDay, ...days })))
      return 0
    }
    const id = await runToDrive(office, { throughDay, ...days })
    process.once('SIGINT', () => void runs.onModuleDestroy())
    await outside(() => runs.drive(id, showProgress))
    const done = await run(() => views.one(id))
    for (const line of done.lines) if (line.outcome === 'skipped') console.log(`  skipped  ${line.sponsorName}, ${line.contractTitle}: ${line.why}`)
    printTotals(done.totals)
    console.log(`${counted(done.issued, 'invoice')} issued, ${done.skipped} skipped${done.isFinished ? '' : `, ${done.contracts - done.done} left: say --run --continue`}, in ${sinceStart()}.`)
    return done.isFinished ? 0 : 1
  } finally {
    await office?.close()
    await database.close()
  }
})
process.exit()
