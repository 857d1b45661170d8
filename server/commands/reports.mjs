/** `npm run reports -- --out DIR`: the statements of performance of all sponsors as PDF files. It gives out no numbers unless it is told to. */
import { existsSync, statSync } from 'node:fs'
import { resolve } from 'node:path'
import { build } from './build.mjs'
import { openDatabase } from './database.mjs'
import { PaperFolder, because, counted, makeFolder, progress } from './paper-files.mjs'
import { dayGiven, openRooms, refuseUnknown } from './rooms.mjs'
import { WayOut, command, option, sinceStart } from './terminal.mjs'

const help = `npm run reports -- --out DIR     every signed contract's statement of performance as a PDF in DIR: the latest issued where the books still say the same, else a draft

--season NAME            only contracts of this season
--through DAY            the last day of which anything is said, as in 2027-03-20; without it, today
--department NAME        where the database holds several
--draft                  drafts only, even where a statement is issued
--issue                  issues the next statement first, where anything has changed since the last; without it nothing is issued
--overwrite              replaces files that are there and say something else

It works while the server runs. What it issues is in nobody's name.
Exit code 0: every statement is in DIR. 1: not all of them, or nothing was done.
`
const flags = ['--draft', '--issue', '--overwrite', '--help']
const named = ['--out', '--season', '--through', '--department']
const atOnce = 20

/** @typedef {{ contractId: string, title: string, sponsorName: string }} Contract */
/** @typedef {{ departmentName: string, run: <T>(work: () => Promise<T>) => Promise<T>, statements: any, close: () => Promise<void> }} Office */

/** @param {import('./database.mjs').Database} database @returns {Promise<Office>} */
async function openOffice(database) {
  const { department, begin, service, close } = await openRooms(database)
  return { departmentName: department.name, run: begin, statements: await service('reports/performance/statements-of-season.service', 'StatementsOfSeason'), close }
}

const nameOf = (/** @type {Contract} */ { sponsorName, title }) => `${sponsorName}, ${title}`

/** Gives the next numbers, some contracts under one seal. @param {Office} office @param {readonly Contract[]} contracts @param {string | null} through @param {() => boolean} isStopped */
async function issueAll(office, contracts, through, isStopped) {
  const bar = progress(contracts.length)
  let issued = 0
  /** @type {Set<string>} */
  const failed = new Set()
  for (let from = 0; from < contracts.length && !isStopped(); from += atOnce) {
    const some = contracts.slice(from, from + atOnce)
    bar.show(from, 'issuing')
    const issue = (/** @type {string[]} */ ids) => office.run(() => office.statements.issue(ids, through))
    for (const outcome of await together(some, issue, (contractId, failure) => ({ contractId, refused: { code: 'failed', message: because(failure) } }))) {
      if ('statementId' in outcome) issued += 1
      else if (outcome.refused.code !== 'statement-says-the-same') {
        failed.add(outcome.contractId)
        const contract = some.find((one) => one.contractId === outcome.contractId)
        bar.line(from, `${contract ? nameOf(contract) : outcome.contractId}  NOT ISSUED: ${outcome.refused.message}`)
      }
    }
  }
  bar.end()
  return { issued, failed }
}

/** Where some cannot be dealt with together, they go one by one, so that one of them holds up no other.
 * @param {readonly Contract[]} some @param {(ids: string[]) => Promise<any[]>} ask @param {(contractId: string, failure: unknown) => any} insteadOf @returns {Promise<any[]>} */
async function together(some, ask, insteadOf) {
  try {
    return await ask(some.map((one) => one.contractId))
  } catch (failure) {
    const [only] = some
    if (some.length === 1 && only) return [insteadOf(only.contractId, failure)]
    const answers = []
    for (const one of some) answers.push(...(await together([one], ask, insteadOf)))
    return answers
  }
}

/** Reads some papers, then sets each when its turn comes. @param {Office} office @param {readonly Contract[]} contracts @param {string | null} through @returns {AsyncGenerator<{ contract: Contract, paper: any }>} */
async function* papersOf(office, contracts, through) {
  const kind = process.argv.includes('--draft') ? 'draft' : 'asItStands'
  for (let from = 0; from < contracts.length; from += atOnce) {
    const some = contracts.slice(from, from + atOnce)
    const papers = await together(some, (ids) => office.run(() => office.statements.papers(ids, kind, through)), (contractId, failure) => ({ contractId, failure }))
    const byContract = new Map(papers.map((paper) => [paper.contractId, paper]))
    for (const contract of some) yield { contract, paper: byContract.get(contract.contractId) ?? { failure: 'it is no longer there' } }
  }
}

/** @param {Office} office @param {readonly Contract[]} contracts @param {{ out: string, through: string | null, failed: Set<string>, isStopped: () => boolean }} how */
async function printAll(office, contracts, { out, through, failed, isStopped }) {
  const bar = progress(contracts.length)
  const folder = new PaperFolder(out)
  folder.sum.failed = failed.size
  let place = failed.size
  for await (const { contract, paper } of papersOf(office, contracts.filter((one) => !failed.has(one.contractId)), through)) {
    if (isStopped()) break
    bar.show(place, nameOf(contract))
    place += 1
    try {
      if (paper.failure !== undefined) throw paper.failure
      const { bytes, name, number, pageCount } = await office.run(() => office.statements.print(paper))
      bar.line(place, folder.put(name, bytes, { pageCount, isDraft: number === null }))
    } catch (failure) {
      bar.line(place, folder.fail(nameOf(contract), failure))
    }
  }
  bar.end()
  return { ...folder.sum, isWhole: !isStopped() && folder.isWhole() }
}

/** @param {Office} office @param {string | undefined} name @returns {Promise<string | null>} */
async function seasonOf(office, name) {
  if (name === undefined) return null
  const seasons = /** @type {{ id: string, name: string }[]} */ (await office.run(() => office.statements.seasons()))
  const found = seasons.find((season) => season.name === name)
  if (!found) throw new WayOut(`There is no season "${name}". There are: ${seasons.map((season) => season.name).join(', ') || 'none yet'}.`)
  return found.id
}

await command(async () => {
  const given = process.argv.slice(2)
  if (given.includes('--help')) return void console.log(help)
  refuseUnknown(given, { flags, named, help })
  const target = option('--out')
  if (!target) throw new WayOut(`Say where to: --out DIR\n\n${help}`)
  if (given.includes('--draft') && given.includes('--issue')) throw new WayOut('--draft prints drafts and --issue gives numbers; choose one.')
  const out = resolve(target)
  if (existsSync(out) && !statSync(out).isDirectory()) throw new WayOut(`${out} is a file, not a folder.`)
  await build(['server'])
  const { dayOf } = await import('../../.build/server/domain/day.js')
  const through = dayGiven('--through', dayOf) ?? null
  const database = await openDatabase()
  /** @type {Office | null} */
  let office = null
  try {
    office = await openOffice(database)
    const { run, statements, departmentName } = office
    const seasonId = await seasonOf(office, option('--season'))
    const contracts = await run(() => statements.contracts(seasonId))
    if (contracts.length === 0) throw new WayOut('No contract is signed here, so there is nothing to prove yet.')
    makeFolder(out)
    console.log(`${departmentName}: ${counted(contracts.length, 'contract')} into ${out}`)
    let isStopped = false
    process.once('SIGINT', () => (isStopped = true))
    const stopped = () => isStopped
    const numbers = given.includes('--issue') ? await issueAll(office, contracts, through, stopped) : { issued: 0, failed: new Set() }
    const { written, same, other, failed, drafts, pages, isWhole } = await printAll(office, contracts, { out, through, failed: numbers.failed, isStopped: stopped })
    const parts = [numbers.issued > 0 && `${numbers.issued} issued`, `${counted(written, 'statement')} written`, same > 0 && `${same} there already`, drafts > 0 && `${drafts} of them drafts`, other > 0 && `${other} not written`, failed > 0 && `${failed} failed`]
    console.log(`${parts.filter(Boolean).join(', ')}; ${counted(pages, 'page')} in ${sinceStart()}.`)
    return isWhole ? 0 : 1
  } finally {
    await office?.close()
    await database.close()
  }
})
process.exit()
