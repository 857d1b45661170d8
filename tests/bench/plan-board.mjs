/** The plan board in Chromium: 120 games of football with their 11 windows and 1,500 reads, scrolled from end to end and a card dragged across; the longest frame of each. */
import { randomUUID } from 'node:crypto'
import { join } from 'node:path'
import pg from 'pg'
import { chromium } from 'playwright-core'
import { build, checkout } from '../../server/commands/build.mjs'
import { findChromium } from '../support/chromium.mjs'
import { figure, load, raw } from './figure.mjs'
import { signIn } from './stage.mjs'

const games = 120
const sponsors = 60
const reads = 1500
const rounds = 3

/** @param {import('./stage.mjs').Stage} stage */
export async function planBoard(stage) {
  await build(['admin-ui'])
  const { database, departmentId, seasonId, address, cookie } = await aFullSeason(stage)
  await placeReads(database, departmentId, seasonId)
  const browser = await chromium.launch({ executablePath: findChromium(console.log), args: ['--no-sandbox', '--disable-dev-shm-usage'] })
  stage.onClose(() => browser.close())
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, locale: 'en-US', timezoneId: 'America/Denver' })
  await context.addCookies([{ ...cookie, url: address, httpOnly: true, sameSite: 'Lax' }])
  const page = await context.newPage()
  page.setDefaultTimeout(60_000)
  const opened = performance.now()
  await page.goto(`${address}/#/plan?season=${seasonId}`)
  await page.locator('.plan-card').first().waitFor()
  console.log(`    the board stood after ${((performance.now() - opened) / 1000).toFixed(2)} s, ${await page.locator('.plan-card').count()} of its ${reads} cards drawn; processor not slowed; ${load()}`)
  await page.waitForTimeout(1500)
  /** @type {Record<'still' | 'scroll' | 'drag', number[]>} */
  const longest = { still: [], scroll: [], drag: [] }
  /** @type {number[]} */
  const scrollFrames = []
  /** @type {number[]} */
  const dragFrames = []
  for (let round = 0; round < rounds; round++) {
    longest.still.push(Math.max(...(await framesOf(page, () => page.waitForTimeout(800)))))
    const scrolled = await framesOf(page, () => scrollAcross(page, round % 2 === 0))
    await page.locator('[data-board]').evaluate((board) => board.scrollTo({ left: 4000, top: 0 }))
    await page.waitForTimeout(600)
    const dragged = await framesOf(page, () => dragAcross(page))
    scrollFrames.push(...scrolled)
    dragFrames.push(...dragged)
    longest.scroll.push(Math.max(...scrolled))
    longest.drag.push(Math.max(...dragged))
  }
  raw('longest frame with nothing done', longest.still, 'ms')
  raw('frames while scrolling', scrollFrames, 'ms')
  raw('longest frame while scrolling', longest.scroll, 'ms')
  raw('frames while dragging', dragFrames, 'ms')
  raw('longest frame while dragging', longest.drag, 'ms')
  const scrolls = figure('plan-board scrolling, longest frame', Math.min(...longest.scroll), { atMost: 50 }, 'ms')
  return figure('plan-board dragging, longest frame', Math.min(...longest.drag), { atMost: 50 }, 'ms') && scrolls
}

/** The times between the frames that the page drew while something was done. @param {import('playwright-core').Page} page @param {() => Promise<unknown>} act @returns {Promise<number[]>} */
async function framesOf(page, act) {
  await page.evaluate(() => {
    const kept = /** @type {any} */ (window)
    kept.frames = []
    kept.watching = true
    let last = performance.now()
    const next = (/** @type {number} */ now) => {
      kept.frames.push(now - last)
      last = now
      if (kept.watching) requestAnimationFrame(next)
    }
    requestAnimationFrame(next)
  })
  await act()
  const frames = await page.evaluate(() => {
    const kept = /** @type {any} */ (window)
    kept.watching = false
    return kept.frames
  })
  return frames.slice(2)
}

/** From the first game to the last, or back, with the wheel. @param {import('playwright-core').Page} page @param {boolean} isForward */
async function scrollAcross(page, isForward) {
  const box = await page.locator('[data-board]').boundingBox()
  if (!box) throw new Error('there is no board')
  await page.mouse.move(box.x + box.width / 2, box.y + 300)
  for (let turn = 0; turn < 90; turn++) {
    await page.mouse.wheel(isForward ? 240 : -240, 0)
    await page.waitForTimeout(16)
  }
}

/** A card in sight, over all windows in sight, and put back with Escape. @param {import('playwright-core').Page} page */
async function dragAcross(page) {
  const board = await page.locator('[data-board]').boundingBox()
  const cards = await page.locator('.plan-card:not(.stays)').evaluateAll((all) => all.map((one) => one.getBoundingClientRect().toJSON()))
  const card = cards.find((one) => board && one.left > board.x + 130 && one.right < board.x + board.width && one.top > board.y + 100 && one.bottom < Math.min(880, board.y + board.height))
  if (!board || !card) throw new Error('no card to drag is in sight')
  await page.mouse.move(card.left + 40, card.top + 12)
  await page.mouse.down()
  for (let step = 0; step < 120; step++) {
    const across = board.x + 140 + ((step * 37) % Math.floor(board.width - 180))
    const down = board.y + 110 + ((step * 23) % Math.floor(Math.min(board.height, 880 - board.y) - 150))
    await page.mouse.move(across, down)
    await page.waitForTimeout(16)
  }
  await page.mouse.move(card.left + 42, card.top + 14)
  await page.mouse.up()
}

/** A department with sponsors under signed contracts and games to come, made as a director would. @param {import('./stage.mjs').Stage} stage */
async function aFullSeason(stage) {
  const database = await stage.database('plan_board')
  const departmentId = randomUUID()
  await asOwner(database, (client) => client.query(`insert into department (id, name, zone) values ($1, 'Tamarack Ridge Athletics', 'America/Denver')`, [departmentId]))
  const { token } = await signIn(database, departmentId)
  const { port } = await stage.server(database, { RAFTERLINE_STATIC: join(checkout, '.build/admin-ui') })
  const address = `http://localhost:${port}`
  /** @param {string} path @param {unknown} [body] @returns {Promise<any>} */
  const make = async (path, body = {}) => {
    const headers = { 'x-rafterline': '1', 'content-type': 'application/json', 'idempotency-key': randomUUID(), cookie: `rafterline-${port}=${token}` }
    const answer = await fetch(`${address}/api${path}`, { method: 'POST', headers, body: JSON.stringify(body) })
    if (!answer.ok) throw new Error(`${path} answered ${answer.status}: ${(await answer.text()).slice(0, 400)}`)
    return answer.json()
  }
  const day = (/** @type {number} */ days) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10)
  const colours = { firstColour: '#1F5C3A', secondColour: '#B8632A' }
  const school = await make('/schools', { name: 'Tamarack Ridge High School', shortName: 'Tamarack Ridge', nickname: 'Kestrels', isOurs: true, ...colours })
  const opponent = await make('/schools', { name: 'Port Ansel High School', shortName: 'Port Ansel', nickname: 'Herons', firstColour: '#14213D', secondColour: '#C9A227' })
  const venue = await make('/venues', { name: 'Alder Fieldhouse', isOurs: true, floors: [{ name: 'the Perch' }], exitsText: 'North doors.', evacuationText: 'Please walk to the nearest exit.' })
  const season = await make('/seasons', { name: 'Football', sport: 'football', startsOn: day(-10), endsOn: day(games + 10) })
  const [team, other] = [await make('/teams', { seasonId: season.id, schoolId: school.id, name: 'Varsity', level: 'varsity' }), await make('/teams', { seasonId: season.id, schoolId: opponent.id, name: 'Varsity', level: 'varsity' })]
  for (let game = 1; game <= games; game++) {
    await make('/games', { seasonId: season.id, level: 'varsity', homeTeamId: team.id, visitorTeamIds: [other.id], playedOn: day(game + 1), startsAtClock: '19:00', venueId: venue.id, floorId: venue.floors[0].id })
  }
  const seller = await make('/sellers', { name: 'Tamarack Ridge Athletics', numberPrefix: 'TR', taxBasisPoints: 500 })
  const kind = await make('/read-kinds', { name: 'Sponsor read', timing: 'scheduled', windows: ['pregame', 'betweenPeriods', 'timeOut', 'halftime', 'postgame'], sponsorsPerGame: 20 })
  const category = await make('/sponsor-categories', { name: 'Hardware' })
  for (let number = 1; number <= sponsors; number++) {
    const sponsor = await make('/sponsors', { name: `Juniper & Pike Hardware ${number}`, categoryId: category.id })
    const payer = await make('/payers', { name: sponsor.name, sponsorId: sponsor.id })
    const contract = await make('/contracts', {
      sponsorId: sponsor.id, sellerId: seller.id, payerId: payer.id, title: 'Reads of the season', benefits: [],
      term: { seasonId: season.id, startsOn: day(-5), endsOn: day(games + 5), pricing: 'fixed', priceCents: 100_000, billingPlan: { kind: 'inFull', on: day(1) } },
      commitments: [{ readKindId: kind.id, counting: 'perTerm', reads: reads / sponsors, rateCents: 4_000, separation: 'none' }],
    })
    await make(`/contracts/${contract.id}/sign`, { signedOn: day(-5), signedByName: 'Hazel Juniper' })
  }
  return { database, departmentId, seasonId: season.id, address, cookie: { name: `rafterline-${port}`, value: token } }
}

/** Twelve or thirteen reads in each game, sponsor after sponsor, from the first place of its first window on. @param {import('./stage.mjs').Database} database @param {string} departmentId @param {string} seasonId */
async function placeReads(database, departmentId, seasonId) {
  const places = [['pregame', 3], ['betweenPeriods1', 1], ['betweenPeriods2', 1], ['timeOut1', 2], ['timeOut2', 2], ['timeOut3', 2], ['halftime', 3]].flatMap(([key, count]) => Array.from({ length: Number(count) }, (_, at) => [key, at + 1]))
  await asOwner(database, async (client) => {
    const { rows: all } = await client.query('select game.id, game_night.night_id from game join game_night on game_night.department_id = $1 and game_night.game_id = game.id where game.department_id = $1 and season_id = $2 order by played_on', [departmentId, seasonId])
    const { rows: owed } = await client.query('select id from commitment where department_id = $1 order by id', [departmentId])
    for (let number = 0; number < reads; number++) {
      const game = all[Math.floor((number * games) / reads)]
      const [key, place] = places[number - Math.ceil((Math.floor((number * games) / reads) * reads) / games)] ?? []
      await client.query('insert into placement (department_id, id, commitment_id, game_id, night_id, window_key, place) values ($1, $2, $3, $4, $5, $6, $7)', [departmentId, randomUUID(), owed[number % sponsors].id, game.id, game.night_id, key, place])
    }
  })
}

/** @template T @param {import('./stage.mjs').Database} database @param {(client: pg.Client) => Promise<T>} work @returns {Promise<T>} */
async function asOwner(database, work) {
  const client = new pg.Client({ connectionString: database.adminUrl })
  await client.connect()
  try {
    await client.query('set session_replication_role = replica')
    return await work(client)
  } finally {
    await client.end()
  }
}
