/** What every command says on screen, in one form. */

const started = Date.now()

/** @param {number} milliseconds */
export function inSeconds(milliseconds) {
  return `${(milliseconds / 1000).toFixed(1)} s`
}

/** Shows a step, runs it, and says how long it took.
 * @template T
 * @param {string} what what is done, as a person would say it
 * @param {(note: (text: string) => void) => Promise<T> | T} run
 * @returns {Promise<T>}
 */
export async function step(what, run) {
  const from = Date.now()
  /** @type {string[]} */
  const notes = []
  const moving = process.stdout.isTTY
  if (moving) process.stdout.write(`  … ${what}`)
  const clock = moving ? setInterval(() => process.stdout.write(`\r  … ${what} ${inSeconds(Date.now() - from)}`), 500) : null
  try {
    const done = await run((text) => notes.push(text))
    closeLine('✓', what, from, notes)
    return done
  } catch (failure) {
    closeLine('✗', what, from, notes)
    throw failure
  } finally {
    if (clock) clearInterval(clock)
  }
}

/** @param {string} mark @param {string} what @param {number} from @param {string[]} notes */
function closeLine(mark, what, from, notes) {
  const before = process.stdout.isTTY ? '\r\x1b[2K' : ''
  console.log(`${before}  ${mark} ${what}${notes.length > 0 ? `: ${notes.join(', ')}` : ''} (${inSeconds(Date.now() - from)})`)
}

/** A reason to stop that a person can act on; shown without a stack. */
export class WayOut extends Error {}

/** Runs a command; a WayOut is printed as a sentence, anything else with its stack.
 * @param {() => Promise<number | void>} run
 */
export async function command(run) {
  try {
    process.exitCode = (await run()) ?? 0
  } catch (failure) {
    if (failure instanceof WayOut) console.error(`\n${failure.message}\n`)
    else console.error(failure)
    process.exitCode = 1
  }
}

export function sinceStart() {
  return inSeconds(Date.now() - started)
}

/** @param {string} name as in `--out FILE` or `--out=FILE` @param {string[]} [given] */
export function option(name, given = process.argv.slice(2)) {
  const at = given.findIndex((word) => word === name || word.startsWith(`${name}=`))
  if (at < 0) return undefined
  const word = given[at] ?? ''
  return word.includes('=') ? word.slice(name.length + 1) : given[at + 1]
}

/** @param {number} milliseconds */
export function wait(milliseconds) {
  return new Promise((done) => setTimeout(done, milliseconds))
}
