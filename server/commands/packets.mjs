/** `npm run packets -- --out DIR`: the packets of a home season as PDF files. It gives out no numbers unless it is told to. */
import { existsSync, statSync } from 'node:fs'
import { resolve } from 'node:path'
import { build } from './build.mjs'
import { openDatabase } from './database.mjs'
import { PaperFolder, counted, makeFolder, progress } from './paper-files.mjs'
import { dayGiven, openRooms, refuseUnknown } from './rooms.mjs'
import { WayOut, command, option, sinceStart } from './terminal.mjs'

const help = `npm run packets -- --out DIR     every home night's packet as a PDF in DIR: the latest issue where it is current, else a draft

--from DAY --to DAY      only nights of these days, as in 2026-12-01
--season NAME            only nights of this season
--department NAME        where the database holds several
--draft                  drafts only, even where an issue is current
--issue                  issues each packet first, so that it has a number; without it nothing is issued
--overwrite              replaces files that are there and say something else

Exit code 0: every packet is in DIR. 1: not all of them, or nothing was done.
`
const flags = ['--draft', '--issue', '--overwrite', '--help']
const named = ['--out', '--from', '--to', '--season', '--department']

/** @typedef {{ nightId: string, heldOn: string, title: string | null, venueName: string }} Night */
/** @typedef {{ departmentId: string, departmentName: string, run: <T>(work: () => Promise<T>) => Promise<T>, packets: any, close: () => Promise<void> }} Office */

/** @param {import('./database.mjs').Database} database @returns {Promise<Office>} */
async function openOffice(database) {
  const { department, begin, service, close } = await openRooms(database)
  return { departmentId: department.id, departmentName: department.name, run: begin, packets: await service('packet/packets-of-season.service', 'PacketsOfSeason'), close }
}

/** @param {Office} office @param {readonly Night[]} nights @param {string} out */
async function printAll(office, nights, out) {
  const how = process.argv.includes('--issue') ? 'issue' : process.argv.includes('--draft') ? 'draft' : 'asItStands'
  const bar = progress(nights.length)
  const folder = new PaperFolder(out)
  let isStopped = false
  process.once('SIGINT', () => (isStopped = true))
  for (const [place, night] of nights.entries()) {
    if (isStopped) break
    bar.show(place, `${night.heldOn} ${night.title ?? night.venueName}`)
    try {
      const { pdf, fileName, number, pageCount } = await office.run(() => office.packets.print(night.nightId, how))
      const isDraft = number === null
      bar.line(place + 1, folder.put(isDraft ? fileName.replace(/\.pdf$/, '-draft.pdf') : fileName, pdf, { pageCount, isDraft }))
    } catch (failure) {
      bar.line(place + 1, folder.fail(`${night.heldOn} ${night.venueName}`, failure))
    }
  }
  bar.end()
  return { ...folder.sum, isWhole: !isStopped && folder.isWhole() }
}

await command(async () => {
  const given = process.argv.slice(2)
  if (given.includes('--help')) return void console.log(help)
  refuseUnknown(given, { flags, named, help })
  const target = option('--out')
  if (!target) throw new WayOut(`Say where to: --out DIR\n\n${help}`)
  if (given.includes('--draft') && given.includes('--issue')) throw new WayOut('--draft prints drafts and --issue prints numbers; choose one.')
  const out = resolve(target)
  if (existsSync(out) && !statSync(out).isDirectory()) throw new WayOut(`${out} is a file, not a folder.`)
  await build(['server'])
  const { dayOf } = await import('../../.build/server/domain/day.js')
  const wanted = { from: dayGiven('--from', dayOf) ?? null, to: dayGiven('--to', dayOf) ?? null, season: option('--season') ?? null }
  const database = await openDatabase()
  /** @type {Office | null} */
  let office = null
  try {
    office = await openOffice(database)
    const { run, packets, departmentName } = office
    const seasons = await run(() => packets.seasons())
    if (wanted.season !== null && !seasons.includes(wanted.season)) throw new WayOut(`There is no season "${wanted.season}". There are: ${seasons.join(', ')}.`)
    const nights = await run(() => packets.nights(wanted))
    if (nights.length === 0) throw new WayOut('No home night falls into these days.')
    makeFolder(out)
    console.log(`${departmentName}: ${counted(nights.length, 'home night')} into ${out}`)
    const { written, same, other, failed, drafts, pages, isWhole } = await printAll(office, nights, out)
    const parts = [`${counted(written, 'packet')} written`, same > 0 && `${same} there already`, drafts > 0 && `${drafts} of them drafts`, other > 0 && `${other} not written`, failed > 0 && `${failed} failed`]
    console.log(`${parts.filter(Boolean).join(', ')}; ${counted(pages, 'page')} in ${sinceStart()}.`)
    return isWhole ? 0 : 1
  } finally {
    await office?.close()
    await database.close()
  }
})
process.exit()
