import { mkdirSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { WIDTHS } from './browser-page.ts'

/** Pictures of a page at every width for whoever looks at them: `PICTURES=/tmp/pictures npm test -- …`. */
export async function picture(page: Page, name: string): Promise<void> {
  const folder = process.env['PICTURES']
  if (!folder) return
  mkdirSync(folder, { recursive: true })
  for (const width of Object.values(WIDTHS)) {
    await page.setViewportSize({ width, height: 900 })
    await page.waitForTimeout(400)
    await page.screenshot({ path: `${folder}/${name}-${width}.png`, fullPage: true })
  }
  await page.setViewportSize({ width: WIDTHS.desk, height: 900 })
}
