import { chromium } from 'playwright-core'
import type { Browser } from 'playwright-core'
import { findChromium } from './chromium.mjs'

const quiet = [
  '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync',
]

const kept = globalThis as { theBrowser?: Promise<Browser> }

/** One browser for all tests of a process; each test takes a context of its own: `(await theBrowser()).newContext()`. */
export function theBrowser(): Promise<Browser> {
  kept.theBrowser ??= chromium.launch({ executablePath: findChromium(console.log), headless: true, args: quiet })
  return kept.theBrowser
}
