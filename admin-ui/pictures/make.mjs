/** `npm run pictures`: the pictures of the README, made from a fresh demo season that is thrown away afterwards. */
import { spawn } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { chromium } from 'playwright-core'
import { findChromium } from '../../tests/support/chromium.mjs'

const here = fileURLToPath(new URL('.', import.meta.url))
const checkout = resolve(here, '../..')
const patienceSeconds = 300
const reader = 'http://reader.example'

/** Starts Rafterline as a newcomer does. @param {string} folder */
async function startDemo(folder) {
  const { DATABASE_URL: _url, DATABASE_OWNER_URL: _owner, npm_lifecycle_event: _event, ...environment } = process.env
  const child = spawn(process.execPath, [join(checkout, 'server/commands/start.mjs')], {
    cwd: checkout,
    env: { ...environment, RAFTERLINE_DATA: folder, PORT: '3900' },
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  const ended = new Promise((done) => child.on('close', done))
  let said = ''
  child.stdout.on('data', (part) => {
    said += part
    process.stdout.write(part)
  })
  for (const until = Date.now() + patienceSeconds * 1000; Date.now() < until && child.exitCode === null; ) {
    const address = /ready at (\S+)/.exec(said)?.[1]
    if (address) return { address, stop: () => (child.kill('SIGTERM'), ended) }
    await new Promise((done) => setTimeout(done, 100))
  }
  child.kill('SIGTERM')
  await ended
  throw new Error('Rafterline did not start, so there is nothing to take a picture of.')
}

/** @param {import('playwright-core').Page} page @param {string} address @param {string} folder */
async function signIn(page, address, folder) {
  const people = JSON.parse(readFileSync(join(folder, 'sign-ins.json'), 'utf8'))
  const director = people.find((/** @type {{ roles: string[] }} */ person) => person.roles.includes('director'))
  await page.goto(address)
  await page.getByLabel('E-mail').fill(director.email)
  await page.getByLabel('Password').fill(director.password)
  await page.getByRole('button', { name: 'Sign in' }).click()
  await page.getByText('Which nights are next').waitFor()
  await page.waitForLoadState('networkidle')
}

/** The plan of the season, at a laptop's size. @param {import('playwright-core').Page} page @param {string} address */
async function showBoard(page, address) {
  await page.setViewportSize({ width: 1440, height: 900 })
  await page.goto(`${address}/#/plan`)
  await page.locator('[data-spot]').first().waitFor()
  await page.waitForTimeout(1000)
}

/** The packet of the next night that has one, and the change set after a starter of it changed, as bytes.
 * @param {import('playwright-core').Page} page @param {string} address */
async function nextPacket(page, address) {
  const asked = { headers: { 'x-rafterline': '1' } }
  const home = await (await page.request.get(`${address}/api/home`, asked)).json()
  const night = home.nights.find((/** @type {{ packetIssued: number | null }} */ one) => one.packetIssued !== null) ?? home.nights[0]
  const packet = await paper(page, `${address}/api/nights/${night.id}/packet.pdf`)
  const { participants } = await (await page.request.get(`${address}/api/games/${night.games.at(-1).id}`, asked)).json()
  const teamAt = `${address}/api/teams/${participants.find((/** @type {{ isHome: boolean }} */ one) => one.isHome).teamId}`
  const { roster, version } = await (await page.request.get(teamAt, asked)).json()
  const fields = ['id', 'playerId', 'number', 'name', 'sayAs', 'announce', 'position', 'grade', 'isStarter']
  const players = roster.map((/** @type {Record<string, unknown>} */ row) => Object.fromEntries(fields.map((field) => [field, row[field]])))
  players.find((/** @type {{ isStarter: boolean }} */ one) => one.isStarter).isStarter = false
  const sent = { headers: { ...asked.headers, 'if-match': `"${version}"` }, data: { players } }
  for (const answer of [await page.request.put(`${teamAt}/roster`, sent), await page.request.post(`${address}/api/nights/${night.id}/packet-issues`, { ...asked, data: {} })]) {
    if (!answer.ok()) throw new Error(`The change could not be made: ${await answer.text()}`)
  }
  return { nightId: night.id, packet, changeSet: await paper(page, `${address}/api/nights/${night.id}/change-set.pdf`) }
}

/** @param {import('playwright-core').Page} page @param {string} address */
async function paper(page, address) {
  const answer = await page.request.get(address, { headers: { 'x-rafterline': '1' } })
  if (!answer.ok()) throw new Error(`The paper could not be made: ${await answer.text()}`)
  return answer.body()
}

/** The desk of the next night, a few cues in. @param {import('playwright-core').Page} page @param {string} address @param {string} nightId */
async function workTheTable(page, address, nightId) {
  await page.setViewportSize({ width: 1440, height: 900 })
  await page.goto(`${address}/night/#open/${nightId}`)
  for (let read = 0; read < 4; read += 1) {
    await page.getByRole('button', { name: /^Read/ }).click()
    // Longer than the bounce of a finger.
    await page.waitForTimeout(700)
  }
  await page.evaluate(() => void (document.documentElement.dataset['look'] = 'gym'))
  await page.waitForTimeout(1500)
}

const readerPage = `<!doctype html><meta charset="utf-8"><style>body { margin: 0; background: #d9d5cc; display: flex; gap: 24px; padding: 24px; width: max-content }
  canvas { background: #fff; box-shadow: 0 1px 6px #0006 }</style><script type="module">
  import { getDocument, GlobalWorkerOptions } from '/pdf.mjs'
  GlobalWorkerOptions.workerSrc = '/pdf.worker.mjs'
  const paper = await getDocument('/packet.pdf').promise
  const read = async (number) => (await (await paper.getPage(number)).getTextContent()).items.map((item) => item.str).join(' ')
  let script = 3
  while (script < paper.numPages && !/cut short/.test(await read(script))) script += 1
  for (const number of paper.numPages < 12 ? [1, 2] : [1, script]) {
    const sheet = await paper.getPage(number)
    const viewport = sheet.getViewport({ scale: 1.3 })
    const canvas = document.body.appendChild(document.createElement('canvas'))
    Object.assign(canvas, { width: viewport.width, height: viewport.height })
    await sheet.render({ canvas, viewport }).promise
  }
  document.title = 'read'
</script>`

/** Shows the first side of the table card and, beside it, the first page of the script with a read to tick; of a change set its first two pages.
 * @param {import('playwright-core').Page} page @param {Buffer} packet */
async function showPacket(page, packet) {
  const built = join(checkout, 'node_modules/pdfjs-dist/build')
  const answers = {
    '/': ['text/html', readerPage],
    '/pdf.mjs': ['text/javascript', readFileSync(join(built, 'pdf.mjs'))],
    '/pdf.worker.mjs': ['text/javascript', readFileSync(join(built, 'pdf.worker.mjs'))],
    '/packet.pdf': ['application/pdf', packet],
  }
  await page.route(`${reader}/**`, (route) => {
    const [contentType, body] = answers[/** @type {keyof typeof answers} */ (new URL(route.request().url()).pathname)] ?? []
    return body ? route.fulfill({ contentType: String(contentType), body }) : route.fulfill({ status: 404 })
  })
  await page.goto(`${reader}/`)
  await page.waitForFunction(() => document.title === 'read')
}

const folder = mkdtempSync(join(tmpdir(), 'rafterline-pictures-'))
try {
  const demo = await startDemo(folder)
  const browser = await chromium.launch({ executablePath: findChromium(console.log), args: ['--no-sandbox', '--disable-gpu'] })
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 }, locale: 'en-US' })
    await signIn(page, demo.address, folder)
    // The window is made as tall as the page, so that the menu beside it is shown whole.
    const height = await page.evaluate(() => document.documentElement.scrollHeight)
    await page.setViewportSize({ width: 1280, height })
    await page.screenshot({ path: join(here, 'home.png') })
    await showBoard(page, demo.address)
    await page.screenshot({ path: join(here, 'plan-board.png') })
    const { nightId, packet, changeSet } = await nextPacket(page, demo.address)
    for (const [name, bytes] of Object.entries({ packet, 'change-set': changeSet })) {
      const reading = await browser.newPage()
      await showPacket(reading, bytes)
      await reading.locator('body').screenshot({ path: join(here, `${name}.png`) })
      await reading.close()
    }
    await workTheTable(page, demo.address, nightId)
    await page.screenshot({ path: join(here, 'desk.png') })
    console.log('Made admin-ui/pictures/home.png, plan-board.png, packet.png, change-set.png and desk.png.')
  } finally {
    await browser.close()
    await demo.stop()
  }
} finally {
  rmSync(folder, { recursive: true, force: true })
}
