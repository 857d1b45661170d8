/** `npm run crash -- --seed 7 --faults 100`, or `npm run crash -- --bugs`: the harness's own test. */
import { randomInt } from 'node:crypto'
import { WayOut, command, option } from '../../../server/commands/terminal.mjs'
import { BUGS } from './bugs.mjs'
import { crash } from './crash.mjs'

const FAULTS = 100
const FAULTS_FOR_A_BUG = 20

/** @param {string} name @param {number} otherwise */
function wholeNumber(name, otherwise) {
  const text = option(name)
  const value = text === undefined ? otherwise : Number(text)
  if (!Number.isSafeInteger(value) || value < 1) throw new WayOut(`${name} is a whole number above zero, not "${text}".`)
  return value
}

/** @param {string} word @param {number} count */
const many = (count, word) => `${count.toLocaleString('en-US')} ${word}${count === 1 ? '' : word.endsWith('y') ? '' : 's'}`

/** @param {import('./crash.mjs').Verdict} verdict */
export function figuresOf({ seed, faults, clients, entries, payments, invoices, violations }) {
  const acknowledged = `${entries.toLocaleString('en-US')} acknowledged ${entries === 1 ? 'entry' : 'entries'}`
  return `crash: seed ${seed}, ${many(faults, 'fault')}, ${many(clients, 'client')}, ${acknowledged}, ${many(payments, 'payment')}, ${many(invoices, 'invoice')}, ${many(violations.length, 'violation')}`
}

/** @param {number} seed @param {number} faults */
async function oneRun(seed, faults) {
  console.log(`Seed ${seed}`)
  const from = Date.now()
  const verdict = await crash({ seed, faults, says: (text) => console.log(`  ${((Date.now() - from) / 1000).toFixed(1).padStart(6)} s  ${text}`) })
  console.log(`  answers: ${[...verdict.answers].toSorted(([, a], [, b]) => b - a).map(([what, times]) => `${times} x ${what}`).join(', ')}`)
  for (const violation of verdict.violations) console.log(`  VIOLATION: ${violation}`)
  console.log(figuresOf(verdict))
  return verdict.violations.length > 0 ? 1 : 0
}

/** @param {number} seed */
async function allBugs(seed) {
  const asked = option('--bugs')
  const names = /** @type {(keyof typeof BUGS)[]} */ (Object.keys(BUGS)).filter((name) => !asked || asked.startsWith('--') || name === asked)
  if (names.length === 0) throw new WayOut(`There is no bug "${asked}". There are: ${Object.keys(BUGS).join(', ')}.`)
  console.log(`Seed ${seed}`)
  let caught = 0
  for (const bug of names) {
    const verdict = await crash({ seed, faults: FAULTS_FOR_A_BUG, bug })
    if (verdict.violations.length > 0) caught += 1
    console.log(`${verdict.violations.length > 0 ? 'caught' : 'MISSED'} ${bug} (${BUGS[bug].what}) within ${many(verdict.faults, 'fault')}: ${verdict.violations[0] ?? 'no violation'}`)
  }
  console.log(`${caught} of ${names.length} caught`)
  return caught === names.length ? 0 : 1
}

await command(async () => {
  const seed = wholeNumber('--seed', randomInt(1, 1_000_000))
  return process.argv.includes('--bugs') ? allBugs(seed) : oneRun(seed, wholeNumber('--faults', FAULTS))
})
