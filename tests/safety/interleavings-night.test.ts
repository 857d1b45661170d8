import { expect, test } from 'vitest'
import { addDays } from '../../server/domain/day.ts'
import type { Day } from '../../server/domain/day.ts'
import { aDepartment } from '../support/department.ts'
import type { Department } from '../support/department.ts'
import { TableDevice, aNightInDays, aSeason, aSignedContract } from '../support/season.ts'
import { Visitor } from '../support/visitor.ts'
import type { Answer } from '../support/visitor.ts'

/** A step is named; what it does may be asked for once. */
type Steps = Readonly<Record<string, () => Promise<Answer>>>

/** How the steps come to meet: each after the answer to the one before, or all waiting for the night in this order, let go at once. */
const WAYS = ['one after the other', 'all at once'] as const

/** Every order of the steps in which each person's own steps stay in theirs. */
function ordersOf(people: readonly (readonly string[])[]): string[][] {
  if (people.every((steps) => steps.length === 0)) return [[]]
  return people.flatMap((steps, who) => {
    const [first, ...rest] = steps
    if (first === undefined) return []
    return ordersOf(people.map((one, place) => (place === who ? rest : one))).map((order) => [first, ...order])
  })
}

/** Until each step that was sent either waits for the night or has its answer. */
async function untilSettled(department: Department, sent: number, answered: () => number): Promise<void> {
  for (const until = Date.now() + 20_000; Date.now() < until; await new Promise((done) => setTimeout(done, 15))) {
    const { rows } = await department.pool.query(`select count(*)::int as waiting from pg_stat_activity where datname = current_database() and wait_event_type = 'Lock'`)
    if (rows[0].waiting + answered() >= sent) return
  }
  throw new Error(`${sent} steps were to wait for the night or be answered`)
}

/** Takes the steps in this order; all at once means that another connection holds the night until the last one waits. */
async function take(department: Department, nightId: string, steps: Steps, order: readonly string[], way: (typeof WAYS)[number]): Promise<Record<string, Answer>> {
  const answers: Record<string, Answer> = {}
  if (way === 'one after the other') {
    for (const name of order) answers[name] = await steps[name]!()
    return answers
  }
  const holder = await department.pool.connect()
  try {
    await holder.query(`begin; set local app.department_id = '${department.id}'`)
    await holder.query('select 1 from night where department_id = $1 and id = $2 for update', [department.id, nightId])
    const sent: Promise<void>[] = []
    for (const name of order) {
      sent.push(steps[name]!().then((answer) => void (answers[name] = answer)))
      await untilSettled(department, sent.length, () => Object.keys(answers).length)
    }
    await holder.query('commit')
    await Promise.all(sent)
  } finally {
    holder.release()
  }
  return answers
}

/** A department with as many home nights, one a day, and a signed contract whose reads are logged on them. */
async function nightsWithReads(count: number) {
  const department = await aDepartment()
  const season = await aSeason(department, 0)
  const contract = await aSignedContract(department, season)
  const commitmentId: string = contract.commitments[1].id
  const nights: { nightId: string; gameId: string }[] = []
  for (let place = 0; place < count; place += 1) {
    const game = await department.director.make('/api/games', {
      seasonId: season.seasonId, level: 'varsity', homeTeamId: season.teamId, visitorTeamIds: [season.opponentTeamId], playedOn: addDays('2026-12-01' as Day, place), startsAtClock: '19:00', venueId: season.venueId,
    })
    nights.push({ nightId: game.nightIds[0], gameId: game.id })
  }
  return { department, commitmentId, nights }
}

/** What the night's log holds, by id, and which entries are counted. */
async function foundIn({ ask, id }: Department, nightId: string) {
  const entries = await ask<{ id: string; number: number; kind: string; takes_back_entry_id: string | null }>(
    'select id, number, kind, takes_back_entry_id from log_entry where department_id = $1 and night_id = $2 order by number', [id, nightId])
  const counted = await ask<{ entry_id: string; cue_key: string }>('select entry_id, cue_key from counted_read where department_id = $1 and night_id = $2', [id, nightId])
  return { entries, counted }
}

const resultsOf = (answer: Answer): { id: string; status: string; number?: number; code?: string }[] => answer.body.results

/** Every entry acknowledged is there under its number, every entry refused is not, and the numbers have no gap. */
async function whatWasToldIsTrue(department: Department, nightId: string, batches: readonly Answer[]) {
  const { entries, counted } = await foundIn(department, nightId)
  const numberOf = new Map(entries.map((entry) => [entry.id, entry.number]))
  for (const result of batches.flatMap(resultsOf)) {
    if (result.status === 'refused') expect(result.code).toBe('night-already-signed-off')
    expect(numberOf.get(result.id)).toBe(result.status === 'refused' ? undefined : result.number)
  }
  expect(entries.map((entry) => entry.number)).toEqual(entries.map((_, place) => place + 1))
  const takenBack = new Set(entries.map((entry) => entry.takes_back_entry_id))
  return { standing: entries.filter((entry) => entry.kind === 'read' && !takenBack.has(entry.id)), counted }
}

test.each(WAYS)('two announcers log one cue, one takes it back, the night is signed off: in every order, %s, the cue counts once or not at all', async (way) => {
  const orders = ordersOf([['first logs the cue', 'first takes it back'], ['second logs the cue'], ['director signs off']])
  const { department, commitmentId, nights } = await nightsWithReads(orders.length)
  const { announcer, director } = department
  for (const [place, order] of orders.entries()) {
    const { nightId, gameId } = nights[place]!
    const [first, second] = [new TableDevice(), new TableDevice()]
    const [mine, theirs] = [first.read(commitmentId, gameId, 1), second.read(commitmentId, gameId, 1)]
    const undo = first.entry({ kind: 'takenBack', takesBackEntryId: mine.id })
    const log = (device: TableDevice, entry: unknown) => announcer.post(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries: [entry] })
    const answers = await take(department, nightId, {
      'first logs the cue': () => log(first, mine),
      'first takes it back': () => log(first, undo),
      'second logs the cue': () => log(second, theirs),
      'director signs off': () => director.post(`/api/nights/${nightId}/sign-off`, { overrideReason: 'the test does not wait for the night' }),
    }, order, way)
    expect(answers['director signs off']!.status, order.join(', ')).toBe(200)
    const batches = ['first logs the cue', 'first takes it back', 'second logs the cue'].map((name) => answers[name]!)
    const { entries } = await foundIn(department, nightId)
    const refused = batches.flatMap(resultsOf).filter((result) => result.status === 'refused')
    expect(refused.map((result) => result.code), order.join(', ')).toEqual(refused.map(() => 'night-already-signed-off'))
    expect(entries).toHaveLength(3 - refused.length)
    const { standing, counted } = await whatWasToldIsTrue(department, nightId, batches)
    expect(counted.map((one) => one.cue_key), order.join(', ')).toEqual(standing.length > 0 ? [mine['cueKey']] : [])
  }
})

test.each(WAYS)('a device syncs and sends again while the night is signed off: in every order, %s, what was stored counts and what was refused is not there', async (way) => {
  const orders = ordersOf([['device sends'], ['device sends again, with more'], ['other device sends'], ['director signs off']])
  const { department, commitmentId, nights } = await nightsWithReads(orders.length)
  const { announcer, director } = department
  for (const [place, order] of orders.entries()) {
    const { nightId, gameId } = nights[place]!
    const [device, other] = [new TableDevice(), new TableDevice()]
    const reads = [1, 2, 3, 4].map((cue) => device.read(commitmentId, gameId, cue))
    const theirs = [5, 6].map((cue) => other.read(commitmentId, gameId, cue))
    const log = (from: TableDevice, entries: unknown[]) => announcer.post(`/api/nights/${nightId}/log`, { deviceId: from.deviceId, entries })
    const answers = await take(department, nightId, {
      'device sends': () => log(device, reads.slice(0, 2)),
      'device sends again, with more': () => log(device, reads),
      'other device sends': () => log(other, theirs),
      'director signs off': () => director.post(`/api/nights/${nightId}/sign-off`, { overrideReason: 'the test does not wait for the night' }),
    }, order, way)
    expect(answers['director signs off']!.status, order.join(', ')).toBe(200)
    const { entries } = await foundIn(department, nightId)
    const { standing, counted } = await whatWasToldIsTrue(department, nightId, truestOf(['device sends', 'device sends again, with more', 'other device sends'].map((name) => answers[name]!)))
    expect(counted.map((one) => one.entry_id).sort(), order.join(', ')).toEqual(standing.map((one) => one.id).sort())
    expect(standing).toHaveLength(entries.length)
  }
})

test.each(WAYS)('a link is revoked while its device syncs: in every order, %s, a batch is stored whole or not at all, and nothing gets in after the answer to the revoking', async (way) => {
  const department = await aDepartment()
  const { director, announcer } = department
  const { nightId } = await aNightInDays(department, 0)
  const log = `/api/nights/${nightId}/log`
  const orders = ordersOf([['device sends', 'device sends again, with more'], ['other device sends'], ['director revokes']])
  for (const order of orders) {
    const link = await director.make(`/api/nights/${nightId}/table-links`, { label: 'Odell, substitute', maySignOff: false })
    const substitute = await Visitor.atTable(link)
    const [device, other] = [new TableDevice(), new TableDevice()]
    const notes = [1, 2, 3].map((place) => device.entry({ kind: 'note', detail: { words: `${order.join(', ')}: ${place}` } }))
    const answers = await take(department, nightId, {
      'device sends': () => substitute.post(log, { deviceId: device.deviceId, entries: notes.slice(0, 2) }),
      'device sends again, with more': () => substitute.post(log, { deviceId: device.deviceId, entries: notes }),
      'other device sends': () => announcer.post(log, { deviceId: other.deviceId, entries: [other.entry({ kind: 'note', detail: { words: 'somebody else' } })] }),
      'director revokes': () => director.post(`/api/nights/${nightId}/table-links/${link.id}/revoke`),
    }, order, way)
    expect([answers['director revokes']!.status, answers['other device sends']!.status], order.join(', ')).toEqual([200, 200])
    const batches = ['device sends', 'device sends again, with more'].map((name) => [name, answers[name]!] as const)
    for (const [name, answer] of batches) {
      const isAfter = way === 'one after the other' && order.indexOf(name) > order.indexOf('director revokes')
      if (isAfter || answer.status !== 200) expect([answer.status, answer.body.code], `${name} in ${order.join(', ')}`).toEqual([403, 'table-link-revoked'])
    }
    const stored = batches.flatMap(([, answer]) => (answer.status === 200 ? resultsOf(answer).map((result) => result.id) : []))
    const { entries } = await foundIn(department, nightId)
    const found = new Set(entries.map((entry) => entry.id))
    expect(notes.filter((note) => found.has(note.id)).map((note) => note.id), order.join(', ')).toEqual(notes.filter((note) => stored.includes(note.id)).map((note) => note.id))
    const late = await substitute.post(log, { deviceId: device.deviceId, entries: [device.entry({ kind: 'note', detail: { words: 'too late' } })] })
    expect([late.status, late.body.code]).toEqual([403, 'table-link-revoked'])
  }
  const { entries } = await foundIn(department, nightId)
  expect(entries.map((entry) => entry.number)).toEqual(entries.map((_, place) => place + 1))
})

/** An entry that came twice may be refused late and known early; then it is there. */
function truestOf(batches: readonly Answer[]): Answer[] {
  const known = new Set(batches.flatMap(resultsOf).filter((result) => result.status !== 'refused').map((result) => result.id))
  return batches.map((answer) => ({ ...answer, body: { results: resultsOf(answer).filter((result) => result.status !== 'refused' || !known.has(result.id)) } }))
}
