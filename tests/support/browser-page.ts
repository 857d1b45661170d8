import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import type { Locator, Page } from 'playwright-core'
import { expect, onTestFinished } from 'vitest'
import { checkout } from '../../server/commands/build.mjs'
import { theBrowser } from './browser.ts'
import { baseUrl } from './database.ts'
import type { Visitor } from './visitor.ts'

/** The widths that the pages are looked at: a phone, a tablet held upright, a desk. */
export const WIDTHS = { phone: 360, tablet: 768, desk: 1440 } as const

interface Looking {
  width?: number
  /** Nobody is signed in without one. */
  visitor?: Visitor
}

/** A page in a browser of its own; what it throws fails the test. */
export async function aPage({ visitor, width = WIDTHS.desk }: Looking = {}): Promise<Page> {
  const context = await (await theBrowser()).newContext({ viewport: { width, height: 900 }, acceptDownloads: true, timezoneId: 'America/New_York', locale: 'en-US' })
  context.setDefaultTimeout(20_000)
  if (visitor) {
    const [name, value] = visitor.cookie.split('=') as [string, string]
    await context.addCookies([{ name, value, url: baseUrl, httpOnly: true, sameSite: 'Lax' }])
  }
  const page = await context.newPage()
  const thrown: string[] = []
  page.on('pageerror', (error) => thrown.push(error.message))
  onTestFinished(async ({ task }) => {
    if (task.result?.state === 'fail') await keepPicture(page, task.name)
    await context.close()
    if (thrown.length > 0) throw new Error(`the page threw: ${thrown.join('; ')}`)
  })
  return page
}

/** How the page looked when the test failed. */
async function keepPicture(page: Page, name: string): Promise<void> {
  const folder = join(checkout, '.build/tests')
  mkdirSync(folder, { recursive: true })
  await page.screenshot({ path: join(folder, `${name.replace(/[^a-z0-9]+/gi, '-').slice(0, 60)}.png`) }).catch(() => {})
}

/** Opens a page of the office and waits until it has been read. */
export async function open(page: Page, path: string, heading: string | RegExp): Promise<void> {
  const address = `${baseUrl}/#${path}`
  if (page.url().startsWith(`${baseUrl}/#`)) await page.evaluate((hash) => void (window.location.hash = hash), `#${path}`)
  else await page.goto(address)
  await settled(page, heading)
}

/** The heading stands there and nothing is being read any more. */
export async function settled(page: Page, heading: string | RegExp): Promise<void> {
  await page.getByRole('heading', { level: 1, name: heading, exact: typeof heading === 'string' }).waitFor()
  await page.waitForFunction(() => document.querySelector('[role=progressbar]') === null)
}

type Scope = Page | Locator
const named = (label: string) => new RegExp(`^${label.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(\\s*\\*)?$`)

/** A field by the words beside it. */
export const field = (scope: Scope, label: string): Locator => scope.getByLabel(named(label))

export async function write(scope: Scope, values: Record<string, string>): Promise<void> {
  for (const [label, value] of Object.entries(values)) await field(scope, label).last().fill(value)
}

/** Chooses from a list by the words of the choice; the last of several fields with one label. */
export async function choose(scope: Scope, choices: Record<string, string | RegExp>): Promise<void> {
  for (const [label, choice] of Object.entries(choices)) {
    const box = scope.getByRole('combobox', { name: named(label) }).last()
    // A box to type in opens when it gets the focus, and a click would close it again.
    const isTyped = await box.evaluate((element) => element.tagName === 'INPUT')
    await (isTyped && typeof choice === 'string' ? box.fill(choice) : box.click())
    const options = ('page' in scope ? scope.page() : scope).getByRole('option', { name: choice, exact: typeof choice === 'string' })
    await options.first().click()
  }
}

export const press = (scope: Scope, name: string | RegExp): Promise<void> => scope.getByRole('button', { name, exact: typeof name === 'string' }).click()

/** The numbers under their labels, once they are read: "Still owed" is "16". */
export async function figuresAre(scope: Scope, wanted: Record<string, string>): Promise<void> {
  await expect
    .poll(async () => Object.fromEntries(await Promise.all(Object.keys(wanted).map(async (label) => [label, await figure(scope, label)]))), { timeout: 20_000 })
    .toEqual(wanted)
}

async function figure(scope: Scope, label: string): Promise<string> {
  const value = scope.locator('dt', { hasText: new RegExp(`^\\s*${label}\\s*$`) }).first().locator('xpath=following-sibling::dd')
  return ((await value.evaluate((element) => element.firstChild?.textContent)) ?? '').trim()
}

/** The paper that a press brings. */
export async function paperFrom(page: Page, button: string | RegExp): Promise<{ name: string; path: string }> {
  const [download] = await Promise.all([page.waitForEvent('download', { timeout: 60_000 }), press(page, button)])
  return { name: download.suggestedFilename(), path: await download.path() }
}
