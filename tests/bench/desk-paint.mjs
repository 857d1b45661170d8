/** The first paint of the page at the table on a slow phone in a thin net that never saw it before: processor four times slower, 1.6 Mbit/s, 150 ms there and back. */
import { deskPage } from './desk-page.mjs'
import { figure, load, median, raw } from './figure.mjs'

const rounds = 5

/** @param {import('./stage.mjs').Stage} stage */
export async function deskPaint(stage) {
  const { night, address, device } = await deskPage(stage, 'desk_paint')
  /** @type {number[]} */
  const first = []
  /** @type {number[]} */
  const desk = []
  for (let round = 0; round < rounds; round++) {
    const context = await device(412)
    const page = await context.newPage()
    page.setDefaultTimeout(60_000)
    const session = await context.newCDPSession(page)
    await session.send('Network.enable')
    await session.send('Network.emulateNetworkConditions', { offline: false, latency: 150, downloadThroughput: 1_600_000 / 8, uploadThroughput: 750_000 / 8 })
    await session.send('Emulation.setCPUThrottlingRate', { rate: 4 })
    await page.goto(`${address}/night/#open/${night.id}`)
    await page.locator('.desk-counts').waitFor()
    const { paint, ready } = await page.evaluate(() => ({ paint: performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? NaN, ready: performance.now() }))
    first.push(paint)
    desk.push(ready)
    await context.close()
  }
  console.log(`    412 px wide, nothing stored before; ${load()}`)
  raw('first paint', first, 'ms')
  raw('the desk open and stored', desk, 'ms')
  return figure('desk-paint', median(first), { atMost: 1000 }, 'ms')
}
