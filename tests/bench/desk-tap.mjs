/** From the finger on the button to the entry being stored on the device and shown: in Chromium, with 2,000 entries in the store and no network. */
import { deskPage } from './desk-page.mjs'
import { figure, load, raw } from './figure.mjs'

const stored = 2000
const warmUp = 5
const most = 120
/** The desk takes a second tap that comes sooner for the bounce of a finger. */
const betweenTapsMilliseconds = 600

/** @param {import('./stage.mjs').Stage} stage */
export async function deskTap(stage) {
  const { night, address, device } = await deskPage(stage, 'desk_tap')
  const context = await device(412)
  const page = await context.newPage()
  page.setDefaultTimeout(60_000)
  await page.goto(`${address}/night/#open/${night.id}`)
  await page.locator('.desk-counts').waitFor()
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => {}))
  await page.evaluate(fillStore, { nightId: night.id, count: stored })
  await context.setOffline(true)
  await page.goto(`${address}/night/#night/${night.id}`)
  await page.reload()
  await page.locator('.desk-counts b').nth(1).filter({ hasText: new RegExp(`^${stored}$`) }).waitFor()
  await page.evaluate(watchTaps)
  /** @type {number[]} */
  const milliseconds = []
  for (let taps = 0; taps < most; taps++) {
    const button = page.locator('.desk-now-main')
    if (await button.isDisabled()) break
    const label = (await button.textContent()) ?? ''
    if (!/^Read\b/.test(label)) {
      // Nothing is logged by going on to the next cue.
      if (!label.startsWith('Next open cue')) break
      await button.click()
      await page.waitForTimeout(betweenTapsMilliseconds)
      continue
    }
    const box = await button.boundingBox()
    if (!box) break
    await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2)
    const shown = await page.evaluate(() => /** @type {any} */ (window).tapShown)
    if (shown === null) throw new Error(`after ${milliseconds.length} taps "${label}" was tapped and nothing was logged; the page says: ${await page.locator('.desk-status').textContent()}`)
    milliseconds.push(shown)
    await page.evaluate(watchTaps)
    await page.waitForTimeout(betweenTapsMilliseconds)
  }
  const measured = milliseconds.slice(warmUp)
  if (measured.length < 20) throw new Error(`only ${measured.length} taps could be measured`)
  const p95 = measured.toSorted((a, b) => a - b)[Math.ceil(measured.length * 0.95) - 1] ?? NaN
  console.log(`    ${measured.length} cues logged as read one after the other, ${stored} entries in the store before; processor not slowed; ${load()}`)
  raw('tap to "On this device"', measured, 'ms')
  return figure('desk-tap', p95, { atMost: 50 }, 'ms')
}

/** In the page: entries of this device that are on the server already, as its store keeps them. @param {{ nightId: string, count: number }} told */
async function fillStore({ nightId, count }) {
  /** @type {IDBDatabase} */
  const db = await new Promise((done, fail) => {
    const asked = indexedDB.open('rafterline-table')
    asked.onsuccess = () => done(asked.result)
    asked.onerror = () => fail(asked.error)
  })
  const transaction = db.transaction(['device', 'entries', 'sequences'], 'readwrite')
  /** @type {{ value: string }} */
  const device = await new Promise((done) => {
    const asked = transaction.objectStore('device').get('deviceId')
    asked.onsuccess = () => done(asked.result)
  })
  for (let number = 1; number <= count; number++) {
    const id = crypto.randomUUID()
    const entry = {
      id, deviceId: device.value, sequence: number, kind: 'note', outcome: null, reason: `kept before ${number}`, gameId: null, cueKey: null, placementId: null, commitmentId: null, windowKey: null,
      teamId: null, playerNumber: null, period: null, clock: null, detail: null, happeningEntryId: null, takesBackEntryId: null, occurredAt: new Date().toISOString(),
    }
    transaction.objectStore('entries').add({ id, nightId, entry, place: 'onServer', number, sentence: null })
  }
  transaction.objectStore('sequences').put({ nightId, last: count })
  await new Promise((done, fail) => {
    transaction.oncomplete = () => done(undefined)
    transaction.onerror = () => fail(transaction.error)
  })
  db.close()
}

/** In the page: the next tap, from the moment the browser had it to the frame in which the count of this device is one more. */
function watchTaps() {
  const count = /** @type {HTMLElement} */ (document.querySelector('.desk-counts b'))
  const before = Number(count.textContent)
  /** @type {any} */ ;(window).tapShown = new Promise((done) => {
    let from = 0
    document.addEventListener('pointerdown', (event) => (from = event.timeStamp), { capture: true, once: true })
    const watcher = new MutationObserver(() => {
      if (Number(document.querySelector('.desk-counts b')?.textContent) !== before + 1) return
      watcher.disconnect()
      requestAnimationFrame(() => done(performance.now() - from))
    })
    watcher.observe(document.body, { subtree: true, childList: true, characterData: true })
    setTimeout(() => done(null), 10_000)
  })
}
