import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { WIDTHS, aPage, open } from '../support/browser-page.ts'
import { theBrowser } from '../support/browser.ts'
import { aDepartment } from '../support/department.ts'
import { aHalfSeason } from '../support/half-season.ts'
import { TableDevice, aSignedContract } from '../support/season.ts'

const EARLY = { overrideReason: 'the test does not wait for the night' }

/** Half a season: one night given, one waiting for its sign-off, two to come; a contract on hold, one that is behind. */
async function aDirectorsDesk() {
  const department = await aDepartment({ checksBooks: false })
  const { director } = department
  const season = await aHalfSeason(department, [-14, -7, 7, 35])
  const { concession, gameBall } = season.readKinds
  const drawn = (title: string, readKindId: string, reads: number, rateCents: number) => aSignedContract(department, season, {
    title, priceCents: reads * rateCents, billingPlan: { kind: 'inFull', on: season.today }, term: { startsOn: season.startsOn, endsOn: season.endsOn },
    commitments: [{ readKindId, counting: 'perTerm', reads, rateCents }],
  })
  const contract = await drawn('Concession reads', concession, 8, 4_000)
  const held = await drawn('Game balls', gameBall, 4, 7_500)
  const device = new TableDevice()
  const [past, , coming] = season.games as [any, any, any]
  const commitmentId = contract.commitments[0].id
  await director.make(`/api/nights/${past.nightId}/log`, { deviceId: device.deviceId, entries: [1, 2].map((cue) => device.read(commitmentId, past.gameId, cue)) })
  await director.make(`/api/games/${past.gameId}/play`, { scores: [] })
  await director.make(`/api/nights/${past.nightId}/sign-off`, { ...EARLY, attendance: 412 })
  await director.make('/api/placements', { commitmentId, gameId: coming.gameId, windowKey: 'halftime' })
  await director.make(`/api/contracts/${held.id}/hold`, { on: season.today, reason: 'The first invoice is long unpaid' })
  return { department, season }
}

/** Words of a drawing that leave their drawing. */
const cutOff = (page: Page): Promise<string[]> =>
  page.evaluate(() => [...document.querySelectorAll('figure [role=img] svg')].flatMap((svg) => {
    const frame = svg.getBoundingClientRect()
    return [...svg.querySelectorAll('text')].filter((text) => {
      const { left, right, top, bottom } = text.getBoundingClientRect()
      return left < frame.left - 1 || right > frame.right + 1 || top < frame.top - 1 || bottom > frame.bottom + 1
    }).map((text) => text.textContent ?? '')
  }))

/** The ink of the largest piece of each series, once all color is taken out: its lightness, 0 to 255, between the stripes of paper that cross it. */
async function greysOf(page: Page): Promise<number[]> {
  await page.addStyleTag({ content: 'html { filter: grayscale(1) }' })
  const pieces = await page.evaluate(() => {
    const largest = new Map<string, { x: number; y: number; width: number; height: number }>()
    for (const bar of document.querySelectorAll('figure [role=img] svg:not([width="22"]) [fill^="url("]')) {
      const { x, y, width, height } = bar.getBoundingClientRect()
      const fill = bar.getAttribute('fill')!
      const before = largest.get(fill)
      if (width * height > (before ? before.width * before.height : 60)) largest.set(fill, { x: x + window.scrollX + 2, y: y + window.scrollY + 2, width: width - 4, height: height - 4 })
    }
    return [...largest.values()]
  })
  const greys: number[] = []
  const context = await (await theBrowser()).newContext()
  const canvas = await context.newPage()
  for (const clip of pieces) {
    const picture = (await page.screenshot({ fullPage: true, clip })).toString('base64')
    greys.push(await canvas.evaluate(async (encoded) => {
      const image = new Image()
      image.src = `data:image/png;base64,${encoded}`
      await image.decode()
      const drawn = Object.assign(document.createElement('canvas'), { width: image.width, height: image.height })
      const pen = drawn.getContext('2d')!
      pen.drawImage(image, 0, 0)
      const { data } = pen.getImageData(0, 0, image.width, image.height)
      const greys: number[] = []
      for (let at = 0; at < data.length; at += 4) {
        if (data[at] !== data[at + 1] || data[at] !== data[at + 2]) return Number.NaN
        greys.push(data[at]!)
      }
      return greys.sort((one, other) => one - other)[Math.floor(greys.length / 10)]!
    }, picture))
  }
  await context.close()
  return greys
}

async function picture(page: Page, name: string): Promise<void> {
  const folder = process.env['PICTURES']
  if (folder) await page.screenshot({ path: `${folder}/${name}.png`, fullPage: true })
}

test('the boards are read at every width, no word of a chart is cut off, and its table is a click away', { timeout: 240_000 }, async () => {
  const { department, season } = await aDirectorsDesk()
  const page = await aPage({ visitor: department.director })
  for (const [name, width] of Object.entries(WIDTHS)) {
    await page.setViewportSize({ width, height: 900 })
    for (const [path, heading] of [['glance', 'Season at a glance'], ['at-risk', 'Promises at risk'], ['left-to-sell', 'Left to sell']] as const) {
      await open(page, `/${path}?seasonId=${season.seasonId}`, heading)
      if (path !== 'glance') {
        await page.locator('figure [role=img] svg text').first().waitFor()
        expect(await cutOff(page), `${path} at ${width}`).toEqual([])
        if (path === 'at-risk' && width > 1000) expect(await page.locator('figure [role=img] svg tspan').allTextContents()).toContain('Juniper & Pike Hardware')
      }
      await picture(page, `${path}-${name}`)
    }
  }
  const figure = page.getByRole('figure', { name: 'Places by month' })
  await figure.getByRole('img', { name: /^Chart: Places by month\. 2 reads given/ }).waitFor()
  await expect(figure.getByRole('table').isVisible()).resolves.toBe(false)
  await figure.getByRole('button', { name: 'Show as a table' }).click()
  await figure.getByRole('table').waitFor()
  const file = page.waitForEvent('download')
  await figure.getByRole('button', { name: 'CSV file' }).click()
  expect((await file).suggestedFilename()).toBe('places-sold-and-left.csv')
})

test('the director sees who is behind and goes where it is mended', { timeout: 120_000 }, async () => {
  const { department, season } = await aDirectorsDesk()
  const page = await aPage({ visitor: department.director })
  await open(page, `/at-risk?seasonId=${season.seasonId}`, 'Promises at risk')
  await page.getByText('On hold since').first().waitFor()
  await page.getByRole('link', { name: 'Lift the hold: Juniper & Pike Hardware, Sponsored game ball' }).click()
  await page.waitForURL(/lift-hold/)
  await open(page, `/glance?seasonId=${season.seasonId}`, 'Season at a glance')
  await page.getByRole('link', { name: /^Not signed off\. See to it: Sign-off/ }).first().click()
  await page.waitForURL(/tab=tidy/)
})

test('series differ once all color is taken out, and stand in the table on paper', { timeout: 120_000 }, async () => {
  const { department, season } = await aDirectorsDesk()
  const page = await aPage({ visitor: department.director })
  await open(page, `/left-to-sell?seasonId=${season.seasonId}`, 'Left to sell')
  await page.locator('figure [role=img] [fill^="url("]').first().waitFor()
  await page.emulateMedia({ media: 'print' })
  await page.getByRole('figure', { name: 'Places by month' }).getByRole('table').waitFor()
  await page.emulateMedia({ media: 'screen' })
  const greys = await greysOf(page)
  await picture(page, 'left-to-sell-grey')
  expect(greys.length).toBeGreaterThanOrEqual(3)
  const inOrder = greys.toSorted((one, other) => one - other)
  for (const [place, grey] of inOrder.entries()) if (place > 0) expect(grey - inOrder[place - 1]!, `greys ${greys.join(', ')}`).toBeGreaterThan(12)
})
