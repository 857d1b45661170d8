/** `npm test`: everything, or what is asked for, as in `npm test -- --project api season`. */
import { statSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { parseCLI, startVitest } from 'vitest/node'
import { findChromium } from './chromium.mjs'
import { chosenDatabase, postgresImage } from './engine.mjs'

const config = fileURLToPath(new URL('../vitest.config.ts', import.meta.url))

/** Installing packages as root has replaced it by a file before. */
function checkNull() {
  if (process.platform !== 'win32' && !statSync('/dev/null').isCharacterDevice()) throw new Error('/dev/null is no longer a device. Repair it: rm -f /dev/null; mknod -m 666 /dev/null c 1 3')
}

async function run() {
  const { filter, options } = parseCLI(['vitest', 'run', ...process.argv.slice(2)])
  const asked = [options.project ?? []].flat()
  const wants = (/** @type {string} */ project) => asked.length === 0 || asked.includes(project)
  checkNull()
  if (['api', 'browser', 'safety'].some(wants)) {
    const database = chosenDatabase()
    process.env.TEST_DATABASE = database
    console.log(`Database: ${database === 'container' ? `container (testcontainers, ${postgresImage})` : 'embedded (a private PostgreSQL server)'}`)
  }
  if (wants('browser')) {
    process.env.CHROMIUM_PATH = findChromium(console.log)
    console.log(`Browser:  ${process.env.CHROMIUM_PATH}`)
  }
  const tally = await import('./report.mjs').then(({ Tally }) => new Tally())
  const vitest = await startVitest('test', filter, {
    ...options, config, watch: false, run: true, passWithNoTests: true, reporters: [options.reporters ?? 'default', tally].flat(),
  })
  await vitest?.close()
  checkNull()
  console.log(`\n${tally.lines().join('\n')}\n`)
  console.log(`${tally.passed} passed, ${tally.failed} failed, ${tally.skipped} skipped`)
  return vitest && tally.failed === 0 && tally.passed > 0 ? 0 : 1
}

const code = await run().catch((failure) => {
  console.error(failure instanceof Error ? failure.message : failure)
  console.log('0 passed, 1 failed, 0 skipped')
  return 1
})
process.exit(code)
