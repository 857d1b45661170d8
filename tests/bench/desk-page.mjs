/** The built page at the scorer's table in a real browser, served by the real server, the demo's next night before it. */
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { build, checkout } from '../../server/commands/build.mjs'
import { findChromium } from '../support/chromium.mjs'
import { toldDemo } from './told-demo.mjs'

/** @param {import('./stage.mjs').Stage} stage @param {string} name */
export async function deskPage(stage, name) {
  await build(['night'])
  const demo = await toldDemo(stage, name, { RAFTERLINE_STATIC: join(checkout, '.build/admin-ui') })
  const night = (await demo.nights()).findLast((one) => one.packetIssued !== null && one.games.length > 0)
  if (!night) throw new Error('the demo has no issued packet')
  const browser = await chromium.launch({ executablePath: findChromium(console.log), args: ['--no-sandbox', '--disable-dev-shm-usage'] })
  stage.onClose(() => browser.close())
  const address = `http://localhost:${demo.port}`
  /** A device that nobody used before. @param {number} width */
  const device = async (width) => {
    const context = await browser.newContext({ viewport: { width, height: 800 }, hasTouch: true, locale: 'en-US', timezoneId: 'America/Denver' })
    await context.addCookies([{ name: `rafterline-${demo.port}`, value: demo.token, url: address, httpOnly: true, sameSite: 'Lax' }])
    return context
  }
  return { night, address, device }
}
