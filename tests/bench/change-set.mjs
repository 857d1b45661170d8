/** A late change: the packet issued again and its change set printed, against printing the whole packet. */
import { figure, median, ratioOf, raw } from './figure.mjs'
import { toldDemo } from './told-demo.mjs'

const warmUp = 2
const rounds = 11

/** @param {import('./stage.mjs').Stage} stage */
export async function changeSet(stage) {
  const demo = await toldDemo(stage, 'change_set')
  const { id, games } = await nextNight(demo)
  const { participants } = await demo.ask('GET', `/games/${games.at(-1)?.id}`)
  const teamId = participants.find((/** @type {{ isHome: boolean }} */ one) => one.isHome).teamId
  const first = await demo.ask('POST', `/nights/${id}/packet-issues`)
  /** @type {Record<'issue' | 'print' | 'both' | 'whole', number[]>} */
  const milliseconds = { issue: [], print: [], both: [], whole: [] }
  let pages = 0
  for (let round = -warmUp; round < rounds; round++) {
    await turnStarter(demo, teamId)
    const from = performance.now()
    const { number, changes } = await demo.ask('POST', `/nights/${id}/packet-issues`)
    const issued = performance.now()
    await demo.paper(`/nights/${id}/change-set.pdf?issue=${number}`)
    const printed = performance.now()
    await demo.paper(`/nights/${id}/packet.pdf?issue=${number}`)
    const whole = performance.now()
    pages = changes.swap.length + changes.add.length
    if (pages === 0) throw new Error('a change of the roster changed no page')
    if (round < 0) continue
    milliseconds.issue.push(issued - from)
    milliseconds.print.push(printed - issued)
    milliseconds.both.push(printed - from)
    milliseconds.whole.push(whole - printed)
  }
  console.log(`    the next night of the demo, ${first.pageCount} pages; one starter more or fewer changes ${pages} of them`)
  raw('issued again: composed, pages planned, stored', milliseconds.issue, 'ms')
  raw('change set printed', milliseconds.print, 'ms')
  raw('whole packet printed', milliseconds.whole, 'ms')
  console.log(`    issued and printed against printing the whole: ${ratioOf(milliseconds.both, milliseconds.whole).toFixed(2)} x; the change set alone: ${ratioOf(milliseconds.print, milliseconds.whole).toFixed(2)} x`)
  return figure('change-set', median(milliseconds.both) / 1000, { atMost: 1 }, 's')
}

/** @param {import('./told-demo.mjs').Demo} demo */
async function nextNight(demo) {
  const night = (await demo.nights()).findLast((one) => one.packetIssued !== null && one.games.length > 0)
  if (!night) throw new Error('the demo has no issued packet')
  return night
}

/** @param {import('./told-demo.mjs').Demo} demo @param {string} teamId */
async function turnStarter(demo, teamId) {
  const { roster, version } = await demo.ask('GET', `/teams/${teamId}`)
  const fields = ['id', 'playerId', 'number', 'name', 'sayAs', 'announce', 'position', 'grade', 'isStarter']
  const players = roster.map((/** @type {Record<string, unknown>} */ row) => Object.fromEntries(fields.map((field) => [field, row[field]])))
  players.at(-1).isStarter = !players.at(-1).isStarter
  await demo.ask('PUT', `/teams/${teamId}/roster`, { players }, version)
}
